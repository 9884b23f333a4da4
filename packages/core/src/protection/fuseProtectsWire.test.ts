import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { steadyCurrentA, thermalTimeConstantS, timeToTemperatureS } from '../ampacity/index.ts'
import { fuseBands } from '../tables/index.ts'
import { fuseOpeningS } from './fuseOpening.ts'
import { fuseProtectsWire } from './fuseProtectsWire.ts'
import { fuseGaps } from './inner.ts'

const { band } = fuseBands['ISO 8820-3']
const wire = Object.freeze({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30 })
const base = Object.freeze({ ratedA: 10, band, wire, limitC: 70, prospectiveA: 200 })
const steadyA = steadyCurrentA({ ...wire, limitC: 70 }) ?? 0
type Input = Parameters<typeof fuseProtectsWire>[0]

/** Times of wire and fuse at a current, from their own functions. */
const timesAt = (input: Input, currentA: number) => ({
  fuseS: fuseOpeningS({ ratedA: input.ratedA, ambientFactor: input.ambientFactor ?? 1, band: input.band, currentA }).longestS ?? Infinity,
  wireS:
    timeToTemperatureS({
      ...input.wire,
      insulationShare: input.wire.insulationShare ?? 0,
      currentA,
      wantedC: input.limitC,
      initialC: input.initialC ?? input.wire.ambientC,
    }) ?? Infinity,
})

describe('fuseProtectsWire', () => {
  test('1 mm2 behind 10 A: the wire carries 1.35 times the rating continuously and outlasts the fuse at every current', () => {
    expect(1.35 * 10).toBeLessThan(steadyA)
    const { protects, worst, unprotected } = fuseProtectsWire(base)
    expect(protects).toBe(true)
    expect(unprotected).toEqual([])
    const { fuseS, wireS } = timesAt(base, worst.currentA)
    expect(worst.fuseLongestS).toBe(fuseS)
    expect(worst.wireS).toBe(wireS)
    expect(wireS).toBeGreaterThan(fuseS)
  })

  test('1 mm2 behind 15 A: without protection from its steady limit on, past the overload zone, until the fuse is the faster one', () => {
    const { protects, worst, unprotected } = fuseProtectsWire({ ...base, ratedA: 15 })
    expect(protects).toBe(false)
    expect(unprotected).toHaveLength(1)
    expect(unprotected[0]?.lowA).toBe(steadyA)
    const { fuseS, wireS } = timesAt({ ...base, ratedA: 15 }, unprotected[0]?.highA ?? 0)
    expect(wireS / fuseS).toBeCloseTo(1, 9)
    expect(worst.fuseLongestS).toBeNull()
    expect(worst.currentA).toBeCloseTo(1.35 * 15, 6)
    expect(worst.wireS).toBeCloseTo(timesAt({ ...base, ratedA: 15 }, 1.35 * 15).wireS, 5)
  })

  test('a fault that draws no more than the wire carries continuously needs no fuse', () => {
    expect(fuseProtectsWire({ ...base, ratedA: 40, prospectiveA: steadyA * 0.999 })).toMatchObject({
      protects: true,
      unprotected: [],
      worst: { currentA: steadyA * 0.999, wireS: null },
    })
  })

  test('a prospective current inside the overload zone ends there', () => {
    expect(fuseProtectsWire({ ...base, ratedA: 20, prospectiveA: 25 })).toEqual({
      protects: false,
      worst: { currentA: 25, fuseLongestS: null, wireS: timesAt(base, 25).wireS },
      unprotected: [{ lowA: steadyA, highA: 25 }],
    })
  })

  test('without a prospective current the check ends at the last point of the band', () => {
    for (const ratedA of [5, 10, 20, 40]) {
      const { prospectiveA: _, ...open } = { ...base, ratedA }
      expect(fuseProtectsWire(open)).toEqual(fuseProtectsWire({ ...open, prospectiveA: 6 * ratedA }))
    }
  })

  test('by hand: above the last point the fuse keeps 0.1 s, so a linear wire loses above I_s/sqrt(1 - exp(-0.1/tau))', () => {
    const linear = { ...wire, filmWPerM2K: 20, temperatureCoefficient20PerK: 0, insulationShare: 0 }
    const tauS = thermalTimeConstantS(linear)
    const limitA = steadyCurrentA({ ...linear, limitC: 70 }) ?? 0
    const { protects, unprotected, worst } = fuseProtectsWire({ ...base, wire: linear, prospectiveA: 1000 })
    expect(protects).toBe(false)
    expect(unprotected).toHaveLength(1)
    expect((unprotected[0]?.lowA ?? 0) / (limitA / Math.sqrt(-Math.expm1(-0.1 / tauS)))).toBeCloseTo(1, 9)
    expect(unprotected[0]?.highA).toBe(1000)
    expect(worst).toMatchObject({ currentA: 1000, fuseLongestS: 0.1 })
  })

  test('the insulation stores nothing unless a share is given: 0 is the unfavourable side', () => {
    const ratio = (insulationShare?: number) => {
      const { worst } = fuseProtectsWire({ ...base, wire: { ...wire, ...(insulationShare === undefined ? {} : { insulationShare }) } })
      return (worst.wireS ?? Infinity) / (worst.fuseLongestS ?? Infinity)
    }
    expect(ratio()).toBe(ratio(0))
    expect(ratio(0.85)).toBeGreaterThan(ratio(0))
  })

  test('a warm fuse opens sooner, a loaded wire starts nearer its limit', () => {
    const high = (input: Partial<Input>) => fuseProtectsWire({ ...base, ratedA: 15, ...input }).unprotected[0]?.highA ?? 0
    expect(high({ ambientFactor: 0.9 })).toBeLessThan(high({}))
    expect(high({ initialC: 55 })).toBeGreaterThan(high({}))
  })

  test('a wire that starts at its limit, or that sun or air alone bring there, has no time left', () => {
    const started = fuseProtectsWire({ ...base, initialC: 70 })
    expect(started.unprotected).toEqual([{ lowA: steadyA, highA: 200 }])
    expect(started.worst.wireS).toBe(0)
    expect(fuseProtectsWire({ ...base, wire: { ...wire, solarAbsorbedWPerM: 60 } }).unprotected[0]?.lowA).toBe(0)
    expect(fuseProtectsWire({ ...base, wire: { ...wire, ambientC: 70 } }).unprotected).toEqual([{ lowA: 0, highA: 200 }])
  })
})

describe('fuseProtectsWire against a plain search', () => {
  const input = fc.record({
    ratedA: fc.constantFrom(2, 5, 10, 20, 30),
    areaMm2: fc.double({ min: 0.2, max: 6, noNaN: true }),
    limitC: fc.double({ min: 60, max: 150, noNaN: true }),
    ambientC: fc.double({ min: -20, max: 55, noNaN: true }),
    prospectiveA: fc.double({ min: 5, max: 800, noNaN: true }),
    correlation: fc.constantFrom('churchill-chu' as const, 'morgan' as const),
  })

  test('no current outside the stretches hurts the wire, every current inside does, and none is worse than the worst', () => {
    fc.assert(
      fc.property(input, ({ ratedA, limitC, prospectiveA, ...rest }) => {
        const job: Input = { ratedA, band, limitC, prospectiveA, wire: { ...wire, ...rest } }
        const lowA = steadyCurrentA({ ...job.wire, limitC }) ?? 0
        const { protects, worst, unprotected } = fuseProtectsWire(job)
        expect(protects).toBe(unprotected.length === 0)
        const least = (worst.wireS ?? Infinity) / (worst.fuseLongestS ?? Infinity)
        for (let k = 1; k < 60; k += 1) {
          const currentA = lowA * (prospectiveA / lowA) ** (k / 60)
          const { fuseS, wireS } = timesAt(job, currentA)
          const nearEdge = unprotected.some((stretch) => Math.abs(currentA / stretch.lowA - 1) < 1e-6 || Math.abs(currentA / stretch.highA - 1) < 1e-6)
          if (prospectiveA <= lowA || nearEdge) continue
          expect(unprotected.some((stretch) => currentA > stretch.lowA && currentA < stretch.highA)).toBe(wireS < fuseS)
          expect(wireS / fuseS).toBeGreaterThanOrEqual(least * (1 - 1e-6))
        }
      }),
      { numRuns: 60 },
    )
  })
})

test('the gaps alone, clear panels passed over, are the unprotected stretches of the whole search', () => {
  const series = fc.constantFrom(...(['ISO 8820-3', 'ISO 8820-3 type E', 'IEC 60127-2 F'] as const))
  const input = fc.record({
    series,
    areaMm2: fc.double({ min: 0.1, max: 50, noNaN: true }),
    limitC: fc.double({ min: 60, max: 200, noNaN: true }),
    ambientC: fc.double({ min: -20, max: 59, noNaN: true }),
    ambientFactor: fc.double({ min: 0.7, max: 1.2, noNaN: true }),
    insulationShare: fc.constantFrom(0, 0.85),
    share: fc.double({ min: 0.05, max: 1.2, noNaN: true }),
  })
  let gaps = 0
  fc.assert(
    fc.property(input, ({ series: name, areaMm2, limitC, ambientC, ambientFactor, insulationShare, share }) => {
      const heat = { ...wire, areaMm2, ambientC, insulationShare }
      const job: Input = { ratedA: share * (steadyCurrentA({ ...heat, limitC }) ?? 1), band: fuseBands[name].band, ambientFactor, limitC, wire: heat }
      const { unprotected } = fuseProtectsWire(job)
      expect(fuseGaps(job)).toEqual(unprotected)
      if (unprotected.length > 0) gaps += 1
    }),
    { numRuns: 150 },
  )
  expect(gaps).toBeGreaterThan(10)
})

describe('fuseProtectsWire, bad input', () => {
  const refused = (parameter: string) => expect.objectContaining({ name: 'DomainError', parameter })

  test('fields of the wire are named by their path', () => {
    for (const field of ['areaMm2', 'insulationThicknessMm', 'insulationConductivityWPerMK', 'ambientC', 'insulationShare', 'conductorDensityKgPerM3']) {
      for (const value of [-1000, Number.NaN, Infinity])
        expect(() => fuseProtectsWire({ ...base, wire: { ...wire, [field]: value } })).toThrow(refused(`wire.${field}`))
    }
    expect(() => fuseProtectsWire({ ratedA: 10, band, limitC: 70 } as never)).toThrow(refused('wire.areaMm2'))
    expect(() => fuseProtectsWire({ ...base, wire: { ...wire, material: 'gold' as never } })).toThrow(expect.objectContaining({ name: 'UnknownEntryError' }))
  })

  test('its own numbers are named plainly, a limit above the melting point too', () => {
    for (const value of [0, -1, Number.NaN, Infinity]) {
      for (const parameter of ['ratedA', 'ambientFactor', 'prospectiveA'])
        expect(() => fuseProtectsWire({ ...base, [parameter]: value })).toThrow(refused(parameter))
    }
    for (const value of [-300, 1100, Number.NaN, Infinity, undefined])
      expect(() => fuseProtectsWire({ ...base, limitC: value } as never)).toThrow(refused('limitC'))
    for (const value of [-300, Number.NaN, Infinity]) expect(() => fuseProtectsWire({ ...base, initialC: value })).toThrow(refused('initialC'))
    expect(() => fuseProtectsWire({ ...base, band: [] })).toThrow(refused('band'))
  })

  test('input is not changed', () => {
    const frozen = Object.freeze({ ...base, wire: Object.freeze({ ...wire }) })
    expect(() => fuseProtectsWire(frozen)).not.toThrow()
  })
})
