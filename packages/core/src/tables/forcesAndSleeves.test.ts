import { describe, expect, test } from 'vitest'
import { adiabatic } from './adiabatic.ts'
import { pullForce } from './pullForce.ts'
import type { PullForceRow, PullForceTable } from './pullForceTable.ts'
import { type SleeveSizeSet, sleeveSizes } from './sleeveSizes.ts'

/** Newtons in a pound-force, exact by definition of the pound and of standard gravity. */
const newtonPerLbf = 0.45359237 * 9.80665
/** Sort key, thin to thick: by area if given, else by gauge. */
const size = (row: PullForceRow) => row.areaMm2 ?? -(row.gauge ?? Number.NaN)

describe.each(Object.entries<PullForceTable>(pullForce))('pull forces of %s as data', (_name, table) => {
  const byContact = [...new Set(table.rows.map((row) => row.contactSize))]

  test.each(byContact)('contact size %s: no size twice, thicker wire holds no less', (contactSize) => {
    const rows = table.rows.filter((row) => row.contactSize === contactSize).toSorted((a, b) => size(a) - size(b))
    for (const [i, row] of rows.entries()) {
      expect(row.forceN).toBeGreaterThan(0)
      const before = rows[i - 1]
      if (before === undefined) continue
      expect(size(row)).toBeGreaterThan(size(before))
      expect(row.forceN).toBeGreaterThanOrEqual(before.forceN)
    }
  })

  test('newtons are the pounds converted, within 2 % and half a newton of the rounding that makers use', () => {
    for (const row of table.rows)
      if (row.forceLbf !== undefined) expect(Math.abs(row.forceN - row.forceLbf * newtonPerLbf)).toBeLessThan(0.02 * row.forceN + 0.5)
  })
})

describe('pull forces side by side', () => {
  test('misprints stay out: 2/0 is 1334.5 N, not the printed 1235.0, and 6 is 445.0, not 455.0', () => {
    const force = (gauge: number) => pullForce['UL 486A-486B'].rows.find((row) => row.gauge === gauge)?.forceN
    expect(force(-1)).toBe(1334.5)
    expect(force(6)).toBe(445)
  })

  test('a crimp must hold far more than a clamped wire of the same gauge', () => {
    for (const clamped of pullForce['UL 486E'].rows) {
      const crimped = pullForce['UL 486A-486B'].rows.find((row) => row.gauge === clamped.gauge)?.forceN ?? Number.NaN
      expect(crimped).toBeGreaterThan(1.4 * clamped.forceN)
    }
  })
})

describe.each(Object.entries<SleeveSizeSet>(sleeveSizes))('sleeves %s as data', (name, set) => {
  test('sizes rise, and every row names its set', () => {
    for (const [i, row] of set.rows.entries()) {
      expect(row.set).toBe(name)
      const before = set.rows[i - 1]
      if (before === undefined) continue
      expect(row.suppliedInsideMm).toBeGreaterThan(before.suppliedInsideMm)
      expect(row.recoveredInsideMm).toBeGreaterThan(before.recoveredInsideMm)
      if (row.recoveredWallMm !== null && before.recoveredWallMm !== null) expect(row.recoveredWallMm).toBeGreaterThanOrEqual(before.recoveredWallMm)
    }
  })

  test('recovery is that of its kind: 2:1 within 3 %, lined 3:1 within 6 %, semi-rigid dual wall between 2.3:1 and 5.6:1', () => {
    for (const row of set.rows) {
      const ratio = row.suppliedInsideMm / row.recoveredInsideMm
      if (name === 'AS23053/4') {
        expect(ratio).toBeGreaterThan(2.3)
        expect(ratio).toBeLessThan(5.6)
      } else {
        const nominal = name === 'metric 3:1 lined' ? 3 : 2
        expect(Math.abs(ratio / nominal - 1)).toBeLessThan(nominal === 3 ? 0.06 : 0.03)
      }
    }
  })
})

describe('adiabatic constants as data', () => {
  const k = (name: keyof typeof adiabatic.metals, initialC: number, finalC: number) => {
    const { betaC, heatCapacityJPerKMm3, resistivity20OhmMm } = adiabatic.metals[name]
    return Math.sqrt(((heatCapacityJPerKMm3 * (betaC + 20)) / resistivity20OhmMm) * Math.log((betaC + finalC) / (betaC + initialC)))
  }

  test('K = sqrt(Qc (beta + 20)/rho20) gives the printed K within half a unit', () => {
    for (const name of ['copper', 'aluminium', 'lead', 'steel'] as const) {
      const { betaC, heatCapacityJPerKMm3, resistivity20OhmMm, kFactor } = adiabatic.metals[name]
      expect(Math.abs(Math.sqrt((heatCapacityJPerKMm3 * (betaC + 20)) / resistivity20OhmMm) - kFactor)).toBeLessThan(0.5)
    }
  })

  test('every k row is reproduced within 0.7, the reach of two roundings', () => {
    for (const row of adiabatic.kInsulated) {
      expect(Math.abs(k('copper', row.initialC, row.finalC) - row.copper)).toBeLessThan(0.7)
      expect(Math.abs(k('aluminium', row.initialC, row.finalC) - row.aluminium)).toBeLessThan(0.7)
      if (row.steel !== null) expect(Math.abs(k('steel', row.initialC, row.finalC) - row.steel)).toBeLessThan(0.7)
    }
    for (const row of adiabatic.kBare) expect(Math.abs(k(row.material, row.initialC, row.finalC) - row.k)).toBeLessThan(0.7)
  })
})
