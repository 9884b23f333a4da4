import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { steadyCurrentBandA } from '../ampacity/index.ts'
import type { WireJob } from './wireJob.ts'
import { wireVerdict } from './wireVerdict.ts'

const wire = Object.freeze({ areaMm2: 1.5, insulationThicknessMm: 0.7, insulationConductivityWPerMK: 0.17 })
const job = Object.freeze({ wire, limitC: 70, hottestC: 40, currentA: 8, sizes: 'IEC 60228' as const })
const run = Object.freeze({ supplyV: 12, outLengthM: 2, returnLengthM: 2, allowedDropV: 0.5 })
const codes = (it: WireJob) => wireVerdict(it).findings.map(({ code }) => code)
const finding = (it: WireJob, code: string) => wireVerdict(it).findings.find((one) => one.code === code)

describe('wireVerdict: current', () => {
  test('the low end of the band decides: sound below it, unsound above, near it a caution', () => {
    const band = steadyCurrentBandA({ ...wire, ambientC: 40, limitC: 70 })
    if (band === null) throw new Error('no band')
    expect(wireVerdict(job).continuousA).toEqual({ low: band.low, high: band.high })
    const at = (currentA: number) => wireVerdict({ ...job, currentA }).findings.find(({ topic }) => topic === 'current')
    expect(at(band.low * 0.5)).toMatchObject({ code: 'current-within-limit', verdict: 'sound' })
    expect(at(band.low * 0.999)).toMatchObject({ code: 'current-near-limit', verdict: 'caution' })
    expect(at(band.low * 1.001)).toMatchObject({ code: 'current-over-limit', verdict: 'unsound' })
  })

  test('air at the limit and a current without a steady state are unsound, and no size makes the first right', () => {
    expect(wireVerdict({ ...job, hottestC: 70 })).toMatchObject({ verdict: 'unsound', continuousA: null, size: null })
    expect(codes({ ...job, hottestC: 70 })[0]).toBe('air-at-limit')
    expect(finding({ ...job, currentA: 400 }, 'no-steady-state')?.values.currentA).toBe(400)
  })

  test('loaded wires together allow less; other wires around them allow no more', () => {
    const alone = wireVerdict(job).continuousA?.low ?? 0
    const three = wireVerdict({ ...job, loadedWires: 3 }).continuousA?.low ?? 0
    expect(three).toBeLessThan(alone)
    expect(wireVerdict({ ...job, loadedWires: 3, bundleOutsideMm: 40 }).continuousA?.low ?? 0).toBeLessThanOrEqual(three * (1 + 1e-9))
  })

  test('a duty is judged by its peak: a winch of 30 s on in ten minutes may draw more than the continuous current', () => {
    const winch = { ...job, currentA: 30, duty: { onS: 30, offS: 570 } }
    const { findings, equivalentA, conductorC } = wireVerdict(winch)
    expect(equivalentA).toBeCloseTo(30 * Math.sqrt(30 / 600), 12)
    expect(conductorC?.high).toBeLessThan(70)
    expect(findings.find(({ topic }) => topic === 'current')?.verdict).not.toBe('unsound')
    expect(finding({ ...winch, duty: undefined } as never, 'current-over-limit')?.verdict).toBe('unsound')
    expect(finding({ ...winch, currentA: 60 }, 'current-over-limit')?.verdict).toBe('unsound')
    // Without a rest the duty is continuous.
    expect(wireVerdict({ ...job, duty: { onS: 30, offS: 0 } }).conductorC).toEqual(wireVerdict(job).conductorC)
  })
})

describe('wireVerdict: drop', () => {
  test('over a stated limit unsound, over a customary one a caution', () => {
    expect(finding({ ...job, run }, 'drop-within-budget')?.values.dropV).toBeCloseTo((8 * 4 * 0.017241 * (1 + 0.00393 * 20)) / 1.5, 6)
    expect(finding({ ...job, run: { ...run, allowedDropV: 0.3 } }, 'drop-over-budget')?.verdict).toBe('unsound')
    expect(finding({ ...job, run: { ...run, allowedDropV: 0.3, limitIsStated: false } }, 'drop-over-budget')?.verdict).toBe('caution')
    expect(wireVerdict(job).dropV).toBeNull()
  })
})

describe('wireVerdict: fuse', () => {
  test('8 A on 1.5 mm²: no blade fuse keeps its usual quarter in reserve, 10 A serves with a caution', () => {
    const fused = { ...job, fuse: { ratedA: 10 } }
    expect(wireVerdict(fused)).toMatchObject({ verdict: 'caution', fuseToFitA: 10, smallestFuseA: 15, largestFuseA: 10 })
    expect(codes(fused)).toEqual(['fuse-near-load', 'current-within-limit', 'fuse-guards-wire'])
  })

  test('a fuse too large for the wire is unsound and names the largest that the wire bears', () => {
    const found = finding({ ...job, fuse: { ratedA: 30 } }, 'fuse-over-wire')
    expect(found).toMatchObject({ verdict: 'unsound', values: { ratedA: 30, opensForSureA: 40.5, largestFuseA: 10 } })
    // The rule for small craft, but not where a stall is to be opened.
    expect(codes({ ...job, fuse: { ratedA: 15, mostOverWire: 1.5 } })).toContain('fuse-within-rule')
    expect(codes({ ...job, stallA: 40, fuse: { ratedA: 15, mostOverWire: 1.5 } })).toContain('fuse-over-wire')
  })

  test('without a fuse the one to fit is named; bolt-down, cartridge and breaker have no band: cannot tell, with the points that decide', () => {
    expect(finding(job, 'fuse-missing')).toMatchObject({ verdict: 'caution', values: { fuseToFitA: 10 } })
    for (const kind of ['bolt-down', 'breaker'] as const) {
      const { verdict, findings, fuseSeries, continuousA } = wireVerdict({ ...job, inrush: { currentA: 30, timeS: 0.1 }, fuse: { ratedA: 10, kind } })
      expect([verdict, fuseSeries]).toEqual(['cannot tell', null])
      expect(findings[0]).toMatchObject({ code: 'fuse-no-band', values: { mustOpenA: continuousA?.low, mustHoldA: 8, inrushA: 30, inrushS: 0.1 } })
    }
  })

  test('an 80 A fuse is a large blade, 6.3 A a glass tube; one that no series has cannot be judged', () => {
    const thick = { ...job, wire: { ...wire, areaMm2: 25 }, currentA: 50 }
    expect(wireVerdict({ ...thick, fuse: { ratedA: 80 } })).toMatchObject({ verdict: 'caution', fuseSeries: 'ISO 8820-3 type E', fuseToFitA: 80 })
    expect(wireVerdict({ ...job, currentA: 4, fuse: { ratedA: 6.3 } })).toMatchObject({ fuseSeries: 'IEC 60127-2 F' })
    expect(finding({ ...job, fuse: { ratedA: 6.3 } }, 'fuse-below-load')?.verdict).toBe('unsound')
    expect(wireVerdict({ ...thick, wire: { ...wire, areaMm2: 50 }, fuse: { ratedA: 125 } })).toMatchObject({ verdict: 'cannot tell', fuseSeries: null })
    expect(wireVerdict({ ...job, currentA: 4, fuse: { ratedA: 6.3, kind: 'blade' } }).verdict).toBe('cannot tell')
  })

  test('also without a band a fuse of a higher rating than the wire bears guards nothing, and one of a lower rating than the load opens', () => {
    const boltDown = (ratedA: number) => codes({ ...job, fuse: { ratedA, kind: 'bolt-down' } })
    expect(boltDown(125)).toEqual(['fuse-over-wire', 'fuse-no-band', 'current-within-limit'])
    expect(boltDown(5)).toEqual(['fuse-below-load', 'fuse-no-band', 'current-within-limit'])
    expect(boltDown(10)).toEqual(['fuse-no-band', 'current-within-limit'])
  })

  test('a load above every blade rating cannot be judged', () => {
    expect(codes({ ...job, wire: { ...wire, areaMm2: 70 }, currentA: 120 })[0]).toBe('fuse-load-beyond-series')
  })

  test('air beyond the data of fuses is "cannot tell", and PTFE at 200 °C is judged without an error', () => {
    const hot = { ...job, limitC: 260, hottestC: 200, currentA: 5, fuse: { ratedA: 7.5 } }
    expect(wireVerdict(hot).verdict).toBe('cannot tell')
    expect(codes(hot)[0]).toBe('fuse-air-beyond-data')
    expect(codes({ ...hot, fuse: {} })).toContain('fuse-air-beyond-data')
    expect(wireVerdict({ ...hot, fuse: { ratedA: 7.5, ambientC: 40 } }).verdict).not.toBe('cannot tell')
  })

  test('a stall, the far fault, the breaking capacity and the supply voltage', () => {
    const fused = { ...job, fuse: { ratedA: 10 } }
    expect(finding({ ...fused, stallA: 12 }, 'fuse-passes-stall')?.verdict).toBe('unsound')
    expect(finding({ ...fused, stallA: 40 }, 'fuse-opens-stall')?.verdict).toBe('sound')
    expect(finding({ ...fused, run: { ...run, sourceOhm: 0.02 } }, 'fuse-opens-far-fault')?.verdict).toBe('sound')
    expect(finding({ ...fused, run: { ...run, sourceOhm: 0.9 } }, 'fuse-slow-on-far-fault')?.values.faultA).toBeCloseTo(12.6, 1)
    expect(finding({ ...fused, run: { ...run, sourceOhm: 0.001 } }, 'fuse-breaking-capacity')?.values.faultA).toBeCloseTo(12_000, 6)
    expect(finding({ ...fused, run: { ...run, supplyV: 48 } }, 'fuse-supply-voltage')?.verdict).toBe('caution')
  })

  test('an inrush that the fuse may not pass is a caution', () => {
    expect(finding({ ...job, inrush: { currentA: 60, timeS: 0.1 }, fuse: { ratedA: 10 } }, 'fuse-may-open-on-inrush')?.verdict).toBe('caution')
  })
})

describe('wireVerdict: what would suit', () => {
  test('14 A on 0.5 mm² over 3 m: a size is named, and judged again it holds in current, drop and fuse', () => {
    const thin = { ...job, wire: { ...wire, areaMm2: 0.5 }, currentA: 14, run: { ...run, outLengthM: 3, returnLengthM: 3 } }
    const { verdict, size } = wireVerdict(thin)
    expect(verdict).toBe('unsound')
    expect(size).toMatchObject({ standard: 'IEC 60228', size: '4', fuseToFitA: 25 })
    const again = wireVerdict({ ...thin, wire: { ...wire, areaMm2: size?.areaMm2 ?? 0, insulationThicknessMm: 0.8 }, fuse: { ratedA: size?.fuseToFitA ?? 0 } })
    expect(again.verdict).not.toBe('unsound')
  })

  test('the size that bears the fuse as fitted is at least as thick', () => {
    const { size, sizeForFuse } = wireVerdict({ ...job, fuse: { ratedA: 30 } })
    expect(sizeForFuse?.areaMm2).toBeGreaterThan(size?.areaMm2 ?? Infinity)
  })

  test('hotter air, more loaded wires, a larger current and a longer run never ask for less and never sound better', () => {
    const rank = ['sound', 'caution', 'cannot tell', 'unsound']
    fc.assert(
      fc.property(
        fc.record({
          currentA: fc.double({ min: 0.2, max: 30, noNaN: true }),
          hottestC: fc.double({ min: 0, max: 60, noNaN: true }),
          loadedWires: fc.integer({ min: 1, max: 6 }),
          areaMm2: fc.constantFrom(0.5, 1, 1.5, 2.5, 4),
          outLengthM: fc.double({ min: 0, max: 10, noNaN: true }),
        }),
        fc.constantFrom('currentA', 'hottestC', 'loadedWires', 'outLengthM'),
        (given, worse) => {
          const at = (it: typeof given) =>
            wireVerdict({
              ...job,
              ...it,
              wire: { ...wire, areaMm2: it.areaMm2 },
              run: { ...run, outLengthM: it.outLengthM },
            })
          const before = at(given)
          const after = at({ ...given, [worse]: given[worse as 'currentA'] + 1 })
          const topic = (verdict: typeof before, name: string) => rank.indexOf(verdict.findings.find((one) => one.topic === name)?.verdict ?? '')
          for (const name of ['current', 'drop']) expect(topic(after, name)).toBeGreaterThanOrEqual(topic(before, name))
          expect(after.size?.areaMm2 ?? Infinity).toBeGreaterThanOrEqual(before.size?.areaMm2 ?? Infinity)
          if (worse !== 'outLengthM' && worse !== 'currentA') expect(after.continuousA?.low ?? 0).toBeLessThanOrEqual(before.continuousA?.low ?? 0)
        },
      ),
      { numRuns: 60 },
    )
  })
})

describe('wireVerdict: bad input', () => {
  test.each([
    ['currentA', -1],
    ['currentA', Number.NaN],
    ['limitC', Infinity],
    ['hottestC', Number.NaN],
    ['stallA', -1],
    ['duty', { onS: 0, offS: 1 }],
    ['inrush', { currentA: -1, timeS: 1 }],
    ['run', { ...run, supplyV: 0 }],
    ['fuse', { ratedA: 0 }],
    ['fuse', { kind: 'tube' }],
    ['sizes', 'BS 6004'],
    ['loadedWires', 0],
  ])('%s %j is refused by its path', (field, value) => {
    expect(() => wireVerdict({ ...job, [field]: value } as never)).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter: expect.stringMatching(new RegExp(`^${field}`)) }),
    )
  })
})

describe('without offers', () => {
  const job: WireJob = { wire, limitC: 70, hottestC: 40, currentA: 8, run: { supplyV: 12, outLengthM: 2, returnLengthM: 2, allowedDropV: 1 } }

  test('wire, drop and a fitted fuse are judged as with them', () => {
    const fused: WireJob = { ...job, fuse: { ratedA: 10 } }
    const { findings, conductorC, continuousA, dropV, verdict } = wireVerdict(fused)
    expect(wireVerdict({ ...fused, offers: false })).toMatchObject({ findings, conductorC, continuousA, dropV, verdict, size: null, sizeForFuse: null })
  })

  test('a wire without a fuse is judged by current and drop alone', () => {
    const { findings, fuseSeries } = wireVerdict({ ...job, offers: false })
    expect(findings.map(({ topic }) => topic).sort()).toEqual(['current', 'drop'])
    expect(fuseSeries).toBeNull()
  })
})
