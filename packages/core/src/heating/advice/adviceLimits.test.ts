import { expect, test } from 'vitest'
import { heatJointAdviceDefaults } from './adviceLevers.ts'
import { readLimits } from './adviceLimits.ts'

test('each lever has the limits given, else the defaults', () => {
  const { setC, ...others } = heatJointAdviceDefaults.limits
  expect(readLimits()).toEqual(heatJointAdviceDefaults.limits)
  const given = readLimits({ setC: { low: 250, high: 380 } })
  expect(given).toEqual({ ...others, setC: { low: 250, high: 380 } })
  expect(given.setC).not.toEqual(setC)
})

test('a lever may be held where it is', () => {
  expect(readLimits({ toolOffS: { low: 3, high: 3 } }).toolOffS).toEqual({ low: 3, high: 3 })
})

test.each([
  ['stubMm', { low: -1, high: 3 }, 'limits.stubMm.low', 'out-of-range'],
  ['airC', { low: 20, high: 3001 }, 'limits.airC.high', 'out-of-range'],
  ['clip', { low: 5, high: 4.99 }, 'limits.clip.high', 'contradiction'],
  ['alloy', { low: 5 }, 'limits.alloy.high', 'missing'],
])('%s %j is refused as %s', (lever, interval, parameter, code) => {
  expect(() => readLimits({ [lever]: interval } as never)).toThrow(expect.objectContaining({ name: 'DomainError', parameter, code }))
})
