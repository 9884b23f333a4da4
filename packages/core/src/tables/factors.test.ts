import { describe, expect, test } from 'vitest'
import { ambientFactors } from './ambientFactors.ts'
import type { AmbientRow, AmbientTable } from './ambientTable.ts'
import { cfr183425 } from './cfr183425.ts'
import { faaAc4313 } from './faaAc4313.ts'
import { type GroupingTable, groupingFactors } from './groupingFactors.ts'
import { iec60364Currents } from './iec60364Currents.ts'
import { iso10133 } from './iso10133.ts'
import { nec31016 } from './nec31016.ts'

const limits = [60, 70, 75, 90, 150, 200, 250] as const
const factorOf = (row: AmbientRow, limitC: (typeof limits)[number]): number | null | undefined => row[`limit${limitC}C`]
const law = (limitC: number, ambientC: number, referenceC: number) => Math.sqrt((limitC - ambientC) / (limitC - referenceC))

describe.each(Object.entries<AmbientTable>(ambientFactors))('ambient factors %s as data', (_name, table) => {
  test('spans rise and follow on one another, the first is open below only in name', () => {
    for (const [i, row] of table.rows.entries()) {
      if (row.fromC !== null) expect(row.toC).toBeGreaterThanOrEqual(row.fromC)
      const before = table.rows[i - 1]
      if (before !== undefined) {
        expect(row.toC).toBeGreaterThan(before.toC)
        expect(row.fromC).toBeGreaterThan(before.toC)
      }
    }
  })

  test.each(limits)('limit of %d °C: falling, and the square-root law at the hottest degree of each span within 0.011', (limitC) => {
    let before = Infinity
    for (const row of table.rows) {
      const factor = factorOf(row, limitC)
      if (factor === undefined) continue
      if (factor === null) {
        expect(row.toC, 'a factor is missing only where the limit is reached').toBeGreaterThan(limitC - 10)
        continue
      }
      expect(Math.abs(factor - law(limitC, row.toC, table.referenceC))).toBeLessThan(0.011)
      expect(factor).toBeLessThan(before)
      before = factor
    }
  })

  test('at the reference ambient the factor is 1', () => {
    const row = table.rows.find((candidate) => candidate.toC === table.referenceC)
    expect(row).toBeDefined()
    for (const limitC of limits) expect((row && factorOf(row, limitC)) ?? 1).toBe(1)
  })
})

describe.each(Object.entries<GroupingTable>(groupingFactors))('grouping factors %s as data', (_name, table) => {
  test('spans rise without overlap, factors never rise, the first is 1, only the last is open at its top', () => {
    expect(table.rows[0]?.factor).toBe(1)
    for (const [i, row] of table.rows.entries()) {
      if (row.to !== null) expect(row.to).toBeGreaterThanOrEqual(row.from)
      else expect(i).toBe(table.rows.length - 1)
      const before = table.rows[i - 1]
      if (before === undefined) continue
      expect(row.from).toBeGreaterThan(before.to ?? Infinity)
      expect(row.factor).toBeLessThanOrEqual(before.factor)
    }
  })

  test('n wires together give off at least the heat of one alone, so each keeps at least 1/sqrt(n) of the current', () => {
    for (const row of table.rows) expect(row.factor).toBeGreaterThanOrEqual(row.from ** -0.5)
  })
})

describe('currents as data', () => {
  const ladders: readonly (readonly [string, readonly (readonly number[])[]])[] = [
    ['33 CFR 183.425', cfr183425.rowsA.map((row) => [row.limit60C, row.limit75C, row.limit80C, row.limit90C, row.limit105C, row.limit125C, row.limit200C])],
    ['ISO 10133', iso10133.rowsA.map((row) => [row.limit60C, row.limit70C, row.limit90C, row.limit105C, row.limit125C, row.limit200C])],
    ['NFPA 70, table 310.16', nec31016.rowsA.map((row) => [row.limit60C, row.limit75C, row.limit90C])],
    ['IEC 60364-5-52, method B2', iec60364Currents.methodB2A.map((row) => [row.ambient55C, row.ambient50C, row.ambient45C, row.ambient40C, row.ambient30C])],
    ['IEC 60364-5-52, method C', iec60364Currents.methodCA.map((row) => [row.ambient55C, row.ambient50C, row.ambient45C, row.ambient40C, row.ambient30C])],
  ]

  test.each(ladders)('%s: thicker wire and hotter insulation (or cooler air) carry no less', (_name, rows) => {
    for (const [i, row] of rows.entries()) {
      for (const [j, currentA] of row.entries()) {
        if (j > 0) expect(currentA).toBeGreaterThanOrEqual(row[j - 1] ?? Number.NaN)
        if (i > 0) expect(currentA).toBeGreaterThan(rows[i - 1]?.[j] ?? Number.NaN)
      }
    }
  })

  test('IEC 60364-5-52: the hotter columns are the 30 °C column by the square-root law, rounded, within 1 A', () => {
    for (const row of [...iec60364Currents.methodB2A, ...iec60364Currents.methodCA]) {
      expect(Math.abs(row.ambient30C * law(70, 40, 30) - row.ambient40C)).toBeLessThan(1)
      expect(Math.abs(row.ambient30C * law(70, 45, 30) - row.ambient45C)).toBeLessThan(1)
      expect(Math.abs(row.ambient30C * law(70, 50, 30) - row.ambient50C)).toBeLessThan(1)
      expect(Math.abs(row.ambient30C * law(70, 55, 30) - row.ambient55C)).toBeLessThan(1)
    }
  })

  test('engine-space factors follow the square-root law at 50 °C within 0.006, but for the 200 °C entry, printed as 1', () => {
    for (const { limitC, factor } of [...cfr183425.engineSpace, ...iso10133.engineSpace]) {
      if (limitC === 70) expect(factor - law(70, 50, 30)).toBeCloseTo(0.043, 3)
      else if (limitC === 200) expect(factor).toBe(1)
      else expect(Math.abs(factor - law(limitC, cfr183425.engineSpaceC, cfr183425.referenceC))).toBeLessThan(0.006)
    }
  })

  test('curve points of the circular fall with altitude and with wires of equal loading', () => {
    expect(faaAc4313.altitude.map((point) => point.altitudeFt)).toEqual([20_000, 60_000])
    expect(faaAc4313.altitude[0].factor).toBeGreaterThan(faaAc4313.altitude[1].factor)
    for (const point of faaAc4313.bundle) expect(point.factor).toBeGreaterThan(0.3)
  })
})
