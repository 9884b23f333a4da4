import { describe, expect, test } from 'vitest'
import { changePhase, heatJ, lowerBound, moveTo, moving, newLump, onPlateau, recover, slopeJPerK, upperBound } from './lump.ts'

const range = { solidusRiseK: 160, liquidusRiseK: 190, latentJ: 3 }
const point = { solidusRiseK: 160, liquidusRiseK: 160, latentJ: 3 }

describe('a lump of copper and solder', () => {
  test('through a melting range and back', () => {
    const lump = newLump(0.06, range, 20)
    expect([lump.phase, slopeJPerK(lump), lowerBound(lump), upperBound(lump), onPlateau(lump)]).toEqual(['solid', 0.06, -Infinity, 160, false])
    moveTo(lump, 160)
    changePhase(lump, true)
    expect([lump.phase, lump.share, lowerBound(lump), upperBound(lump)]).toEqual(['melting', 0, 160, 190])
    expect(slopeJPerK(lump)).toBeCloseTo(0.06 + 0.1, 12)
    moveTo(lump, 175)
    expect(lump.share).toBe(0.5)
    expect(heatJ(lump)).toBeCloseTo(0.06 * 175 + 1.5, 12)
    changePhase(lump, true)
    expect([lump.phase, lump.share, lump.riseK, lowerBound(lump), upperBound(lump)]).toEqual(['liquid', 1, 190, 190, Infinity])
    changePhase(lump, false)
    expect([lump.phase, lump.share, lump.riseK]).toEqual(['melting', 1, 190])
    moveTo(lump, 200)
    expect(lump.share).toBe(1)
    moveTo(lump, 100)
    expect(lump.share).toBe(0)
    changePhase(lump, false)
    expect([lump.phase, lump.share, lump.riseK]).toEqual(['solid', 0, 160])
  })

  test('over a plateau the share moves and the temperature stands', () => {
    const lump = newLump(0.06, point, 20)
    expect(moving(lump)).toBe(20)
    changePhase(lump, true)
    expect([lump.phase, onPlateau(lump), moving(lump), slopeJPerK(lump), lowerBound(lump), upperBound(lump)]).toEqual(['melting', true, 0, 3, 0, 1])
    moveTo(lump, 0.25)
    expect([lump.share, lump.riseK]).toEqual([0.25, 160])
    changePhase(lump, true)
    expect([lump.phase, lump.share]).toEqual(['liquid', 1])
    expect(slopeJPerK(lump)).toBe(0.06)
  })

  test('a plateau without latent heat is passed at once, a lump without solder never', () => {
    const lump = newLump(0.06, { ...point, latentJ: 0 }, 160)
    changePhase(lump, true)
    expect(lump.phase).toBe('liquid')
    changePhase(lump, false)
    expect([lump.phase, lump.share]).toEqual(['solid', 0])
    const bare = newLump(0.06, null, 20)
    changePhase(bare, true)
    moveTo(bare, 500)
    expect([bare.phase, bare.riseK, lowerBound(bare), upperBound(bare), slopeJPerK(bare), heatJ(bare)]).toEqual(['solid', 500, -Infinity, Infinity, 0.06, 30])
  })
})

describe('a tube that recovers hands its ring to the joint', () => {
  const joint = (riseK: number) => newLump(0.05, { ...range, latentJ: 0 }, riseK)
  const total = (a: ReturnType<typeof joint>, extra: number): number => heatJ(a) + extra * a.riseK

  test.each([
    ['unmolten, on a cold joint', 0, 90, 'solid', 90],
    ['half molten, on a cold joint', 0.5, 90, 'solid', 90 + 1.5 / 0.06],
    ['molten, on a joint near the solidus', 1, 155, 'melting', undefined],
    ['unmolten, on a hot joint', 0, 185, 'melting', undefined],
    ['unmolten, on a very hot joint', 0, 300, 'liquid', 250],
    ['molten, on a molten joint', 1, 200, 'liquid', 200],
  ] as const)('%s', (_name, share, riseK, phase, ends) => {
    const tube = newLump(0.1, range, 100)
    tube.share = share
    tube.phase = 'melting'
    const one = joint(riseK)
    const before = 0.06 * riseK + 3 * share
    recover(tube, one, 0.01)
    expect(one.phase).toBe(phase)
    expect(one.melt).toBe(range)
    expect([tube.melt, tube.share, tube.phase]).toEqual([null, 0, 'solid'])
    expect(total(one, 0.01)).toBeCloseTo(before, 12)
    if (ends !== undefined) expect(one.riseK).toBeCloseTo(ends, 9)
    if (phase === 'melting') expect(one.riseK).toBeCloseTo(160 + 30 * one.share, 9)
  })

  test('a tube without a ring changes nothing', () => {
    const one = joint(90)
    recover(newLump(0.1, null, 100), one, 0.01)
    expect(one).toEqual(joint(90))
  })
})
