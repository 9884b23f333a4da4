import { describe, expect, test } from 'vitest'
import { bilgePumpFeed } from '../demo/index.ts'
import { JobError } from '../job/index.ts'
import { everyCause, meanOf, scoreCause } from './experiments.sample.ts'
import { faultyCircuit, readJob } from './faults.sample.ts'
import { diagnose, rankCauses } from './index.ts'
import { seeded, solveNodes } from './nodalCircuit.sample.ts'

describe('causes of the readings', () => {
  test('a drop that shows only while the lead is moved: a fracture leads, and the next reading tells it from a dry joint', () => {
    const { leading, next, causes } = rankCauses(bilgePumpFeed)
    expect(leading).toEqual(['fracture-in-contact', 'dry-joint'])
    expect(next?.probe.load).toBe('on')
    expect(Object.keys(next?.expected ?? {})).toEqual(['fracture-in-contact', 'dry-joint'])
    expect(causes.every(({ logLikelihood }) => Number.isFinite(logLikelihood))).toBe(true)
    expect(diagnose(bilgePumpFeed).leading).toEqual(leading)
  })
  test('without readings every cause is as likely, and the first reading is named', () => {
    const { leading, next, causes } = rankCauses({ ...bilgePumpFeed, readings: [] })
    expect(leading).toHaveLength(causes.length)
    expect(next).not.toBeNull()
  })
  test('an open motor and a failed load are not told apart: the tie stays', () => {
    const random = seeded(3)
    const { causes } = rankCauses(readJob(faultyCircuit('coil-open', random), random, 0.9))
    const open = causes.find(({ id }) => id === 'coil-open')
    expect(open?.tiedWith).toContain('load-failed')
  })
  test('what a cause predicts lies round the readings that it explains', () => {
    const { causes } = rankCauses(bilgePumpFeed)
    const moved = causes[0]?.predicted[1]
    expect(moved).toMatchObject({ kind: 'drop', from: 'joint-in', to: 'joint-out', when: 'moved' })
    expect(moved?.low).toBeLessThan(1.9)
    expect(moved?.high).toBeGreaterThan(1.9)
  })
  test('a larger coverage never leads with fewer causes', () => {
    const sizes = [0.5, 0.8, 0.95, 0.999].map((coverage) => rankCauses(bilgePumpFeed, { coverage }).leading.length)
    expect(sizes).toEqual(sizes.toSorted((one, other) => one - other))
  })
  test.each([0, 1, -1, 2, Number.NaN])('coverage %s is refused by its field', (coverage) => {
    expect(() => rankCauses(bilgePumpFeed, { coverage })).toThrow(JobError)
    expect(() => rankCauses(bilgePumpFeed, { coverage })).toThrow('options.coverage')
  })
})

describe('faults put into circuits that a nodal solver solves', () => {
  test('the solver itself: a divider by hand', () => {
    const at = solveNodes(
      [
        { from: 'a', to: 'b', ohm: 2 },
        { from: 'b', to: 'c', ohm: 4 },
      ],
      { plus: 'a', minus: 'c', volt: 12, ohm: 1e-6 },
    )
    expect((at.get('b') as number) - (at.get('c') as number)).toBeCloseTo(8, 4)
  })
  test('the true cause leads in 95 of 100, with four causes at most on average, and the next reading narrows it', () => {
    const scores = everyCause.map((cause, index) => scoreCause(cause, 6, 0.6, 100 + index))
    expect(meanOf(scores.map(({ covered }) => covered))).toBeGreaterThanOrEqual(0.95)
    expect(meanOf(scores.map(({ size }) => size))).toBeLessThanOrEqual(4)
    expect(meanOf(scores.map(({ sizeAfter }) => sizeAfter))).toBeLessThan(meanOf(scores.map(({ size }) => size)))
  }, 60_000)
})
