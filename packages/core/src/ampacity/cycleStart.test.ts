import { beforeEach, describe, expect, test, vi } from 'vitest'
import { changesOver, cycleStart } from './cycleStart.ts'
import type { Motion } from './motion.ts'
import { changeAfterK } from './passage.ts'

vi.mock('./passage.ts', { spy: true })

/** Test double for a wire: the temperature change of each step as a function of its start. */
function changes(...byStep: readonly ((startC: number) => number)[]): {
  readonly motions: readonly Motion[]
  readonly steps: readonly { currentA: number; timeS: number }[]
} {
  vi.mocked(changeAfterK).mockImplementation((motion, startC) => byStep[(motion as unknown as { readonly step: number }).step]?.(startC) ?? Number.NaN)
  return { motions: byStep.map((_, step) => ({ step }) as unknown as Motion), steps: byStep.map((_, step) => ({ currentA: 1, timeS: step + 1 })) }
}
const starts = (): readonly number[] => vi.mocked(changeAfterK).mock.calls.map(([, startC]) => startC)
const found = (gain: (startC: number) => number, coolestC = 20): number => {
  const { motions, steps } = changes(gain)
  return cycleStart(motions, steps, coolestC, 1083)
}

beforeEach(() => {
  vi.restoreAllMocks()
})

test('steps follow one another, each for its own time; what has melted stays so', () => {
  const { motions, steps } = changes(
    (T) => 100 - T,
    (T) => (T > 90 ? Infinity : 5),
    () => 1,
  )
  expect(changesOver(motions, steps, 40)).toEqual([60, Infinity, Infinity])
  expect(vi.mocked(changeAfterK).mock.calls.map(([, startC, timeS]) => [startC, timeS])).toEqual([
    [40, 1],
    [100, 2],
  ])
})

describe('the start of a cycle', () => {
  test('gain that falls evenly: one safe step, one by the slope', () => {
    expect(found((T) => 0.5 * (80 - T))).toBe(80)
    expect(starts()).toEqual([20, 50, 80])
  })

  test.each<[string, (startC: number) => number]>([
    ['that falls ever faster', (T) => 40 * (1 - Math.exp((T - 100) / 30))],
    ['that falls ever slower', (T) => 40 * (Math.exp((100 - T) / 30) - 1)],
    ['that hardly falls at first', (T) => (100 ** 4 - T ** 4) / 1e6],
  ])('gain %s: the same start, in some dozen cycles', (_name, gain) => {
    expect(found(gain)).toBeCloseTo(100, 8)
    expect(starts().length).toBeLessThanOrEqual(14)
  })

  test('one that melts from the coolest start has none', () => {
    expect(found(() => Infinity)).toBe(Infinity)
    expect(starts()).toEqual([20])
  })

  test('a slope that leads past melting is taken back to the last safe step', () => {
    // The gain falls by 0.1 K per kelvin up to 100 °C, then by 1; from 115 °C the wire melts.
    const gain = (T: number): number => (T < 100 ? 10 - 0.1 * (T - 20) : T < 115 ? 102 - T : Infinity)
    expect(found(gain)).toBeCloseTo(102, 8)
    expect(starts().slice(0, 4)).toEqual([20, 30, 120, 39])
    expect(starts().length).toBeLessThan(40)
  })

  test('two that all but cancel are even, whatever their slope', () => {
    const { motions, steps } = changes(
      () => 50,
      () => -50 + 5e-11,
    )
    expect(cycleStart(motions, steps, 20, 1083)).toBe(20)
    expect(starts()).toHaveLength(2)
    const more = changes(
      () => 50,
      () => -50 + 5e-10,
    )
    vi.mocked(changeAfterK).mockClear()
    cycleStart(more.motions, more.steps, 20, 1083)
    expect(starts().length).toBeGreaterThan(2)
  })

  test('a cycle that gains very little each time is found by strides and halvings', () => {
    const gain = (T: number): number => (T < 700 ? 1e-3 : 700 - T)
    expect(found(gain)).toBeCloseTo(700, 8)
    const [fast, slow] = [starts().slice(0, 40), starts().slice(40)]
    fast.forEach((startC, n) => {
      expect(startC).toBeCloseTo(20 + n * 1e-3, 9)
    })
    const low = fast[39] ?? 0
    const stride = (1083 - low) / 64
    const strides = Math.ceil((700 - low) / stride)
    slow.slice(0, strides).forEach((startC, n) => {
      expect(startC).toBeCloseTo(low + (n + 1) * stride, 9)
    })
    expect(slow[strides]).toBeCloseTo(low + (strides - 0.5) * stride, 9)
    expect(slow).toHaveLength(strides + Math.ceil(Math.log2(stride / 1e-9)))
  })

  test('one that gains for ever has none, after all strides', () => {
    expect(found(() => 1e-3)).toBe(Infinity)
    expect(starts()).toHaveLength(40 + 64)
    expect(starts().at(-1)).toBeCloseTo(1083, 9)
  })
})
