import { describe, expect, test } from 'vitest'
import { astmB33 } from './astmB33.ts'
import { awgTable } from './awgTable.ts'
import { faaAc4313 } from './faaAc4313.ts'
import { iec60228 } from './iec60228.ts'
import { iso6722 } from './iso6722.ts'
import { saeJ1128 } from './saeJ1128.ts'

/** Strictly falling or rising, which also excludes duplicates. */
function expectMonotone(values: readonly number[], direction: 'rising' | 'falling') {
  for (const [i, value] of values.entries()) {
    const before = values[i - 1]
    if (before !== undefined) expect(direction === 'rising' ? value > before : value < before, `${before} then ${value}`).toBe(true)
  }
}

describe('AWG table as data', () => {
  test('44 gauges from 4/0 to 40 without a gap; thinner wire resists more', () => {
    expect(awgTable.rows.map((row) => row.gauge)).toEqual(Array.from({ length: 44 }, (_, i) => i - 3))
    expectMonotone(
      awgTable.rows.map((row) => row.diameterMm),
      'falling',
    )
    expectMonotone(
      awgTable.rows.map((row) => row.resistanceOhmPer1000Ft),
      'rising',
    )
  })

  test('sizes from 1/0 on are written by their zeros', () => {
    for (const { gauge, size } of awgTable.rows) expect(size).toBe(gauge > 0 ? String(gauge) : `${1 - gauge}/0`)
  })

  test('its columns belong together: area of the diameter within 0.06 %, circular mils of the area within 0.06 %', () => {
    for (const row of awgTable.rows) {
      expect(Math.abs(((Math.PI / 4) * row.diameterMm ** 2) / row.areaMm2 - 1)).toBeLessThan(6e-4)
      expect(Math.abs(row.circularMils / (row.diameterMm / 0.0254) ** 2 - 1)).toBeLessThan(6e-4)
    }
  })
})

describe('IEC 60228 as data', () => {
  test.each([1, 2, 5, 6] as const)('class %d: 15 rising areas, falling resistance, coated above plain by up to 3.5 %', (conductorClass) => {
    const rows = iec60228.rows.filter((row) => row.conductorClass === conductorClass)
    expect(rows).toHaveLength(15)
    expectMonotone(
      rows.map((row) => row.areaMm2),
      'rising',
    )
    expectMonotone(
      rows.map((row) => row.plainOhmPerKm),
      'falling',
    )
    for (const { plainOhmPerKm, metalCoatedOhmPerKm } of rows) {
      if (metalCoatedOhmPerKm === null) continue
      expect(metalCoatedOhmPerKm / plainOhmPerKm).toBeGreaterThan(1.004)
      expect(metalCoatedOhmPerKm / plainOhmPerKm).toBeLessThan(1.035)
    }
  })

  test('a flexible conductor is allowed no less than a stranded one, but for 50 mm2, which the classes stagger', () => {
    const of = (conductorClass: number, areaMm2: number) =>
      iec60228.rows.find((row) => row.conductorClass === conductorClass && row.areaMm2 === areaMm2)?.plainOhmPerKm ?? Number.NaN
    for (const { areaMm2 } of iec60228.rows) {
      expect(of(1, areaMm2)).toBe(of(2, areaMm2))
      if (areaMm2 !== 50) expect(of(5, areaMm2)).toBeGreaterThan(of(2, areaMm2))
      expect(of(6, areaMm2)).toBe(of(5, areaMm2))
    }
    expect(of(5, 50)).toBeCloseTo(of(2, 50), 2)
  })

  test('every resistance was read in a reprint', () => {
    for (const row of iec60228.rows) expect([row.plainStatus, row.metalCoatedStatus]).toEqual(['published', 'published'])
  })
})

describe('ISO 6722-1 as data', () => {
  test('areas and diameters rise, resistance falls, everything is recalled', () => {
    expectMonotone(
      iso6722.rows.map((row) => row.areaMm2),
      'rising',
    )
    expectMonotone(
      iso6722.rows.map((row) => row.plainOhmPerKm),
      'falling',
    )
    expectMonotone(
      iso6722.rows.map((row) => row.conductorMaximumMm),
      'rising',
    )
    expect(iso6722.provenance.status).toBe('from memory')
  })

  test('resistance times nominal area stays within 17.6 to 19.1 ohm mm2/km: one metal throughout', () => {
    for (const { areaMm2, plainOhmPerKm } of iso6722.rows) {
      expect(areaMm2 * plainOhmPerKm).toBeGreaterThan(17.6)
      expect(areaMm2 * plainOhmPerKm).toBeLessThan(19.1)
    }
  })

  test('a cable is wider than its conductor, and the largest conductor is wider than a solid round of its area', () => {
    for (const row of iso6722.rows) {
      for (const outside of [row.thinWallMaximumMm, row.thickWallMaximumMm]) if (outside !== null) expect(outside).toBeGreaterThan(row.conductorMaximumMm)
      expect(row.conductorMaximumMm).toBeGreaterThan(Math.sqrt((4 * row.areaMm2) / Math.PI))
    }
  })
})

describe('SAE J1128 as data', () => {
  test('gauges fall in number from row to row, areas rise', () => {
    expectMonotone(
      saeJ1128.rows.map((row) => row.gauge),
      'falling',
    )
    expectMonotone(
      saeJ1128.rows.map((row) => row.minimumAreaMm2),
      'rising',
    )
  })

  test('mm2 are the circular mils within half a digit, and lie 2.5 to 11 % below the AWG area of the same number', () => {
    for (const row of saeJ1128.rows) {
      expect(Math.abs(row.minimumCircularMils * (Math.PI / 4) * 0.0254 ** 2 - row.minimumAreaMm2)).toBeLessThanOrEqual(6e-4)
      const awgArea = awgTable.rows.find((awg) => awg.gauge === row.gauge)?.areaMm2 ?? Number.NaN
      expect(row.minimumAreaMm2 / awgArea).toBeGreaterThan(0.89)
      expect(row.minimumAreaMm2 / awgArea).toBeLessThan(0.975)
    }
  })
})

describe('ASTM B33 as data', () => {
  test('spans follow on one another; finer strands may resist more', () => {
    for (const [i, row] of astmB33.rows.entries()) {
      expect(row.thickestMm).toBeGreaterThan(row.thinnestMm)
      if (i > 0) expect(row.thinnestMm).toBe(astmB33.rows[i - 1]?.thickestMm)
    }
    expectMonotone(
      astmB33.rows.map((row) => row.resistivity20OhmM),
      'falling',
    )
  })

  test('resistivity is mass resistivity over the density of copper, 2.3 to 7.4 % above the standard metal', () => {
    for (const row of astmB33.rows) {
      expect((row.massResistivityOhmGPerM2 / astmB33.densityGPerCm3) * 1e-6).toBeCloseTo(row.resistivity20OhmM, 13)
      expect(row.resistivity20OhmM / 1.7241e-8).toBeGreaterThan(1.023)
      expect(row.resistivity20OhmM / 1.7241e-8).toBeLessThan(1.074)
    }
  })
})

describe('aircraft wire as data', () => {
  test('gauges fall, areas rise, resistance falls; a higher rating carries more', () => {
    expectMonotone(
      faaAc4313.wires.map((row) => row.gauge),
      'falling',
    )
    expectMonotone(
      faaAc4313.wires.map((row) => row.circularMils),
      'rising',
    )
    expectMonotone(
      faaAc4313.wires.map((row) => row.tinnedOhmPer1000Ft),
      'falling',
    )
    for (const row of faaAc4313.wires) expectMonotone([row.limit105CA, row.limit150CA, row.limit200CA], 'rising')
  })

  test('largest resistance times area lies 8 to 31 % above plain copper: coating, lay and tolerance together', () => {
    for (const { circularMils, tinnedOhmPer1000Ft } of faaAc4313.wires) {
      const ratio = (circularMils * tinnedOhmPer1000Ft) / 1000 / 10.371
      // The thickest sizes are printed with one or two digits: half a unit in the last digit of 0.06 is 8 %.
      expect(ratio).toBeGreaterThan(tinnedOhmPer1000Ft < 0.2 ? 1.08 : 1.1)
      expect(ratio).toBeLessThan(1.31)
    }
  })

  test('a nicked strand is allowed sooner than a broken one, and more of both in more strands', () => {
    for (const row of faaAc4313.nickedStrands) {
      expect(row.nicked).toBeGreaterThanOrEqual(row.broken)
      expect(row.nicked / row.fromStrands).toBeLessThanOrEqual(4 / 37)
      expect(row.finestGauge).toBeGreaterThan(row.thickestGauge)
    }
  })
})
