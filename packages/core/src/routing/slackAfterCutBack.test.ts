import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { slackAfterCutBack } from './slackAfterCutBack.ts'

const whole = fc.integer({ min: 0, max: 2000 })

describe('slackAfterCutBack', () => {
  test('enough slack: one joint and nothing put in', () => {
    expect(slackAfterCutBack({ slackMm: 120, cutBackMm: 70, jointConsumesMm: 10 })).toEqual({ leftMm: 40, insertMm: 0, joints: 1 })
  })

  test('exactly the service slack is enough; a millimetre less is not', () => {
    const i = { cutBackMm: 70, jointConsumesMm: 10, serviceSlackMm: 40 }
    expect(slackAfterCutBack({ ...i, slackMm: 120 })).toEqual({ leftMm: 40, insertMm: 0, joints: 1 })
    expect(slackAfterCutBack({ ...i, slackMm: 119 })).toEqual({ leftMm: 39, insertMm: 70 + 40 - 119 + 20, joints: 2 })
  })

  test('with the piece put in, what is there makes up for the cut, all joints and the service slack', () => {
    fc.assert(
      fc.property(whole, whole, whole, fc.integer({ min: 1, max: 4 }), whole, (slackMm, cutBackMm, jointConsumesMm, jointsIfInserted, serviceSlackMm) => {
        const got = slackAfterCutBack({ slackMm, cutBackMm, jointConsumesMm, jointsIfInserted, serviceSlackMm })
        expect(got.leftMm).toBe(slackMm - cutBackMm - jointConsumesMm)
        if (got.leftMm >= serviceSlackMm) expect(got).toMatchObject({ insertMm: 0, joints: 1 })
        else expect(slackMm - cutBackMm + got.insertMm - got.joints * jointConsumesMm).toBe(serviceSlackMm)
      }),
    )
  })

  test.each([
    [{ slackMm: -1 }, 'slackMm'],
    [{ slackMm: Number.NaN }, 'slackMm'],
    [{ cutBackMm: Number.POSITIVE_INFINITY }, 'cutBackMm'],
    [{ jointConsumesMm: -1 }, 'jointConsumesMm'],
    [{ jointsIfInserted: 0 }, 'jointsIfInserted'],
    [{ jointsIfInserted: 1.5 }, 'jointsIfInserted'],
    [{ serviceSlackMm: Number.NEGATIVE_INFINITY }, 'serviceSlackMm'],
    [{ cutBackMm: 1e308, jointConsumesMm: 1e308 }, 'cutBackMm'],
  ])('%o is refused by name', (change, parameter) => {
    const i = { slackMm: 10, cutBackMm: 5, jointConsumesMm: 2, ...change }
    expect(() => slackAfterCutBack(i)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })
})
