import { describe, expect, test } from 'vitest'
import { UnknownEntryError } from '../errors/index.ts'
import type { MetalName } from '../materials/index.ts'
import { anodicIndex } from './anodicIndex.ts'
import { galvanicDifferenceV } from './galvanicDifference.ts'

const known = Object.keys(anodicIndex) as MetalName[]

describe('galvanicDifferenceV', () => {
  test('a metal against the same metal is 0, and the order of the two does not matter', () => {
    for (const one of known) {
      expect(galvanicDifferenceV(one, one)).toBe(0)
      for (const other of known) expect(galvanicDifferenceV(one, other)).toBe(galvanicDifferenceV(other, one))
    }
  })

  test('three metals: the outer pair is as far apart as the two steps between', () => {
    for (const low of known)
      for (const mid of known)
        for (const high of known) {
          const sum = galvanicDifferenceV(low, mid) + galvanicDifferenceV(mid, high)
          expect(galvanicDifferenceV(low, high)).toBeLessThanOrEqual(sum + 1e-12)
        }
  })

  test('the plating that touches counts: tinned copper has the potential of tin', () => {
    expect(galvanicDifferenceV('tinned-copper', 'tin')).toBe(0)
    expect(galvanicDifferenceV('tinned-copper', 'annealed-copper')).toBeGreaterThan(0)
  })

  test('MIL-STD-889, order in sea water: aluminium is below tin, and tin below copper', () => {
    const aluminiumToTin = galvanicDifferenceV('aluminium-1350', 'tin')
    const tinToCopper = galvanicDifferenceV('tin', 'annealed-copper')
    expect(galvanicDifferenceV('aluminium-1350', 'annealed-copper')).toBeCloseTo(aluminiumToTin + tinToCopper, 12)
  })

  test.each([
    ['copper-clad-aluminium', 'tin', 'metal1'],
    ['tin', 'copper-clad-aluminium', 'metal2'],
    ['tin', 'toString', 'metal2'],
  ])('%s against %s: a metal outside the index is told with the known ones', (one, other, parameter) => {
    expect(() => galvanicDifferenceV(one as MetalName, other as MetalName)).toThrow(UnknownEntryError)
    expect(() => galvanicDifferenceV(one as MetalName, other as MetalName)).toThrow(expect.objectContaining({ parameter, known }))
  })
})

test('the index is in whole hundredths of a volt, none twice under one name, each with its source', () => {
  for (const [name, row] of Object.entries(anodicIndex)) {
    expect(Number.isInteger(row.hundredthsV), name).toBe(true)
    expect(row.provenance.source.length, name).toBeGreaterThan(0)
  }
})
