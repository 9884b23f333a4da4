import { expect, test } from 'vitest'
import { propagate } from './propagate.ts'
import type { Uncertain } from './uncertain.ts'

const draws = 40_000
/** Three standard errors of a standard deviation (relative), or of a mean in standard deviations, for so many draws. */
const noise = 3 / Math.sqrt(draws)

const inputs: Readonly<Record<'a' | 'b' | 'c' | 'd' | 'e', Uncertain>> = {
  a: { value: 10, standardUncertainty: 1 },
  b: { value: 3, halfWidth: 2, distribution: 'rectangular' },
  c: { value: -5, halfWidth: 3, distribution: 'triangular' },
  d: { value: 0, halfWidth: 1, distribution: 'u-shaped' },
  e: { value: 1, standardUncertainty: 0.8, degreesOfFreedom: 9 },
}

test('on a straight line draws and slopes agree: value, uncertainty, shares', () => {
  const model = (x: Readonly<Record<keyof typeof inputs, number>>): number => x.a + 2 * x.b - x.c + x.d + x.e
  const linear = propagate(model, inputs)
  const drawn = propagate(model, inputs, { method: 'monte-carlo', draws })
  expect(Math.abs(drawn.value - linear.value)).toBeLessThan(noise * linear.standardUncertainty)
  expect(Math.abs(drawn.standardUncertainty / linear.standardUncertainty - 1)).toBeLessThan(noise)
  for (const name of ['a', 'b', 'c', 'd', 'e'] as const) expect(Math.abs(drawn.shares[name] - linear.shares[name])).toBeLessThan(2 * noise)
})

test.each(['a', 'b', 'c', 'd', 'e'] as const)('input %s has its mean, its standard deviation and its bounds', (name) => {
  const one = { x: inputs[name] }
  const drawn = propagate(({ x }) => x, one, { method: 'monte-carlo', draws, coverage: 0.9999 })
  const linear = propagate(({ x }) => x, one)
  expect(Math.abs(drawn.value - linear.value)).toBeLessThan(noise * linear.standardUncertainty)
  expect(Math.abs(drawn.standardUncertainty / linear.standardUncertainty - 1)).toBeLessThan(2 * noise)
  const input = inputs[name]
  if ('halfWidth' in input) {
    expect(drawn.low).toBeGreaterThanOrEqual(input.value - input.halfWidth)
    expect(drawn.high).toBeLessThanOrEqual(input.value + input.halfWidth)
  }
})

test('the quartiles of each distribution are those of its formula', () => {
  const half = (name: keyof typeof inputs): number => {
    const { low, high } = propagate(({ x }) => x, { x: inputs[name] }, { method: 'monte-carlo', draws, coverage: 0.5 })
    return (high - low) / 2
  }
  expect(half('a')).toBeCloseTo(0.6745, 1.5)
  expect(half('b')).toBeCloseTo(1, 1.5)
  expect(half('c')).toBeCloseTo(3 * (1 - Math.SQRT1_2), 1.5)
  expect(half('d')).toBeCloseTo(Math.SQRT1_2, 1.5)
})

test('the same seed gives the same draws, another seed others', () => {
  const run = (seed: number) => propagate(({ x }) => x, { x: inputs.a }, { method: 'monte-carlo', seed, draws: 1000 })
  expect(run(7)).toEqual(run(7))
  expect(run(8).value).not.toBe(run(7).value)
  expect(run(7 + 2 ** 32).value).not.toBe(run(7).value)
})

test('rectangular inputs keep the correlation asked for', () => {
  for (const coefficient of [-0.8, 0.3, 1]) {
    const { standardUncertainty } = propagate(
      ({ a, b }) => a + b,
      { a: { low: -1, high: 1 }, b: { low: -1, high: 1 } },
      { method: 'monte-carlo', draws, correlations: [['a', 'b', coefficient]] },
    )
    expect(Math.abs(standardUncertainty - Math.sqrt((2 + 2 * coefficient) / 3))).toBeLessThan(2 * noise)
  }
})

test('a symmetrical result has equal tails, a lopsided one its shortest interval', () => {
  const flat = propagate(({ x }) => x, { x: { low: 0, high: 1 } }, { method: 'monte-carlo', draws })
  expect(Math.abs(flat.low - 0.025)).toBeLessThan(0.003)
  expect(Math.abs(flat.high - 0.975)).toBeLessThan(0.003)
  const steep = propagate(({ x }) => Math.exp(3 * x), { x: { value: 0, standardUncertainty: 1 } }, { method: 'monte-carlo', draws })
  expect(steep.low).toBeLessThan(Math.exp(-3 * 1.96))
})

test('a t distribution of 2 degrees of freedom or fewer has no standard deviation to draw with', () => {
  const two = { x: { value: 0, standardUncertainty: 1, degreesOfFreedom: 2 } }
  expect(() => propagate(({ x }) => x, two, { method: 'monte-carlo' })).toThrow('inputs.x.degreesOfFreedom')
  expect(propagate(({ x }) => x, two).degreesOfFreedom).toBe(2)
})
