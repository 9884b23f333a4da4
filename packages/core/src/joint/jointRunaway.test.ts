import { describe, expect, test } from 'vitest'
import { DomainError, NoSteadyStateError, UnknownEntryError } from '../errors/index.ts'
import type { JointSite } from './jointSite.ts'
import { jointState } from './jointState.ts'

type Site = JointSite & { readonly jointResistanceOhm: number; readonly jointResistanceCoefficientPerK?: number }

const wire = Object.freeze({ areaMm2: 0.34, conductorDiameterMm: 0.75, insulationThicknessMm: 0.35, insulationConductivityWPerMK: 0.17 })
const cool = Object.freeze({ ...wire, filmWPerM2K: 8 })
const site: Site = Object.freeze({ currentA: 5, ambientC: 25, jointResistanceOhm: 0.01, conductors: Object.freeze([cool, cool] as const) })
const natural: Site = Object.freeze({ ...site, conductors: Object.freeze([wire, wire] as const) })
const sleeve = Object.freeze({ lengthMm: 60, coreDiameterMm: 2, outsideDiameterMm: 3, conductivityWPerMK: 0.2, filmWPerM2K: 8 })
const relative = (got: number, want: number): number => Math.abs(got / want - 1)

function refusal(run: () => unknown): NoSteadyStateError {
  try {
    run()
  } catch (error) {
    if (error instanceof NoSteadyStateError) return error
    throw error
  }
  throw new Error('a steady joint was found')
}

const wall = Math.log(1.45 / 0.75) / (2 * Math.PI * 0.17)
const loss = 1 / (wall + 1 / (Math.PI * 1.45e-3 * 8))
const r20 = 0.017241 / 0.34
const wireBoundA = Math.sqrt(loss / (r20 * 0.00393))

describe('a joint without steady state', () => {
  test.each<[string, Site]>([
    ['a wire alone', { ...site, currentA: 14 }],
    ['the thinner of two wires', { ...site, currentA: 14, conductors: [{ ...cool, areaMm2: 3, conductorDiameterMm: 2 }, cool] }],
    ['a better sleeve does not help the wire beyond it', { ...site, currentA: 14, sleeve: { ...sleeve, filmWPerM2K: 80 } }],
  ])('given films: %s bounds the current, sqrt(G/(R20 alpha))', (_name, input) => {
    const error = refusal(() => jointState(input))
    expect(error.cause).toBe('runaway')
    expect(error.ceilingC).toBe(1083)
    expect(relative(error.largestCurrentA, wireBoundA)).toBeLessThan(1e-12)
    expect(jointState({ ...input, currentA: 5 }).largestCurrentA).toBe(error.largestCurrentA)
  })

  test('given films: the joint itself, I^2 R a = 2 sqrt(kA (G - I^2 R20 alpha))', () => {
    const rising = { ...site, currentA: 1, jointResistanceOhm: 0.05, jointResistanceCoefficientPerK: 0.01 }
    const bound = jointState(rising).largestCurrentA ?? 0
    expect(bound).toBeLessThan(wireBoundA)
    const I2 = bound ** 2
    expect(relative(I2 * 0.05 * 0.01, 2 * Math.sqrt(391 * 0.34e-6 * (loss - I2 * r20 * 0.00393)))).toBeLessThan(1e-12)
    // Only the joint's resistance rises with temperature, not that of the wires.
    const constant = { ...cool, temperatureCoefficient20PerK: 0 }
    const alone = jointState({ ...rising, conductors: [constant, constant] }).largestCurrentA ?? 0
    expect(relative(alone, Math.sqrt((2 * Math.sqrt(391 * 0.34e-6 * loss)) / 5e-4))).toBeLessThan(1e-12)
  })

  test('given films: what lies under a poor sleeve; longer, earlier; as long as you like, its own bound', () => {
    const poor = { ...sleeve, filmWPerM2K: 1 }
    const under = Math.log(1.5) / (2 * Math.PI * 0.2) + 1 / (Math.PI * 3e-3 * 1)
    const bounds = [10, 60, 200, 1000].map((lengthMm) => jointState({ ...site, currentA: 1, sleeve: { ...poor, lengthMm } }).largestCurrentA ?? 0)
    expect(bounds[0]).toBeLessThan(wireBoundA)
    for (const [k, bound] of bounds.entries()) if (k > 0) expect(bound).toBeLessThan(bounds[k - 1] ?? 0)
    const own = Math.sqrt(1 / under / (r20 * 0.00393))
    expect(jointState({ ...site, currentA: 1, sleeve: { ...poor, lengthMm: 1e5 } }).largestCurrentA).toBeGreaterThan(own)
    expect(relative(jointState({ ...site, currentA: 1, sleeve: { ...poor, lengthMm: 1e5 } }).largestCurrentA ?? 0, own)).toBeLessThan(1e-4)
    // At the bound the wave under the sleeve matches the wire: beta tan(beta l) = Y/kA.
    const I2 = (bounds[1] ?? 0) ** 2
    const kA = 391 * 0.34e-6
    const beta = Math.sqrt((I2 * r20 * 0.00393 - 1 / under) / kA)
    expect(relative(beta * Math.tan(beta * 0.03), Math.sqrt((loss - I2 * r20 * 0.00393) / kA))).toBeLessThan(1e-9)
  })

  test.each<[string, Site]>([
    ['given films, the wire', site],
    ['given films, the joint', { ...site, jointResistanceOhm: 0.05, jointResistanceCoefficientPerK: 0.01 }],
    ['given films, the sleeve', { ...site, sleeve: { ...sleeve, filmWPerM2K: 1 } }],
    [
      'given films, the sleeve over one side in bloom',
      { ...site, conductors: [cool, { ...cool, areaMm2: 3, conductorDiameterMm: 2 }], sleeve: { ...sleeve, lengthMm: 400, filmWPerM2K: 0.5 } },
    ],
    ['correlations, the wire', natural],
    ['correlations, the joint', { ...natural, jointResistanceOhm: 0.05, jointResistanceCoefficientPerK: 0.01 }],
    [
      'correlations, the sleeve of bare wires',
      {
        ...natural,
        conductors: [
          { ...wire, insulationThicknessMm: 0 },
          { ...wire, insulationThicknessMm: 0 },
        ],
        sleeve: { lengthMm: 300, coreDiameterMm: 2, outsideDiameterMm: 30, conductivityWPerMK: 0.1 },
      },
    ],
  ])('%s: just below the largest current it settles, just above it is refused with that current', (_name, input) => {
    const far = refusal(() => jointState({ ...input, currentA: 1e4 }))
    expect(jointState({ ...input, currentA: far.largestCurrentA * (1 - 1e-6) }).jointC).toBeGreaterThan(100)
    expect(refusal(() => jointState({ ...input, currentA: far.largestCurrentA * (1 + 1e-6) })).largestCurrentA).toBe(far.largestCurrentA)
  })

  test('the ceiling it names is the lower melting point', () => {
    expect(refusal(() => jointState({ ...site, currentA: 50, conductors: [cool, { ...cool, material: 'tin' }] })).ceilingC).toBeCloseTo(231.9, 0)
    expect(refusal(() => jointState({ ...site, currentA: 50, conductors: [{ ...cool, material: 'tin' }, cool] })).ceilingC).toBeCloseTo(231.9, 0)
  })

  test('a joint far above its melting point still gets its temperature', () => {
    expect(jointState({ ...natural, jointResistanceOhm: 10 }).jointC).toBeGreaterThan(1083)
  })
})

describe('refused input', () => {
  const inside = { insulationThicknessMm: 0.35, insulationConductivityWPerMK: 0.17, areaMm2: 0.34 }
  test.each([
    ['currentA', { currentA: -1 }],
    ['currentA', { currentA: Number.NaN }],
    ['ambientC', { ambientC: -174 }],
    ['ambientC', { ambientC: 1627 }],
    ['ambientC', { ambientC: -170, conductors: [{ ...cool, temperatureCoefficient20PerK: 0.006 }, cool] }],
    ['ambientC', { ambientC: -170, conductors: [cool, { ...cool, temperatureCoefficient20PerK: 0.006 }] }],
    ['jointResistanceOhm', { jointResistanceOhm: -1e-9 }],
    ['jointResistanceOhm', { jointResistanceOhm: 1e306 }],
    ['jointResistanceCoefficientPerK', { jointResistanceCoefficientPerK: -0.001 }],
    ['jointResistanceCoefficientPerK', { ambientC: -100, jointResistanceCoefficientPerK: 1 / 120 }],
    ['pressurePa', { pressurePa: 0 }],
    ['correlation', { correlation: 'other' }],
    ['conductors', { conductors: undefined }],
    ['conductors', { conductors: [cool] }],
    ['conductors.0.areaMm2', { conductors: [{ ...cool, areaMm2: 0 }, cool] }],
    ['conductors.1.areaMm2', { conductors: [cool, undefined] }],
    ['conductors.0.areaMm2', { conductors: [{ ...cool, areaMm2: 1e-312, conductorDiameterMm: 1 }, cool] }],
    ['conductors.0.conductorDiameterMm', { conductors: [{ ...cool, conductorDiameterMm: 0 }, cool] }],
    ['conductors.1.conductorDiameterMm', { conductors: [cool, { ...cool, conductorDiameterMm: 0.84 * Math.sqrt((4 * 0.34) / Math.PI) }] }],
    ['conductors.0.insulationThicknessMm', { conductors: [{ ...cool, insulationThicknessMm: -0.1 }, cool] }],
    ['conductors.1.insulationConductivityWPerMK', { conductors: [cool, { ...cool, insulationConductivityWPerMK: 0 }] }],
    ['conductors.0.conductivityWPerMK', { conductors: [{ ...cool, conductivityWPerMK: 0 }, cool] }],
    ['conductors.0.resistivity20OhmM', { conductors: [{ ...cool, resistivity20OhmM: 0 }, cool] }],
    ['conductors.1.temperatureCoefficient20PerK', { conductors: [cool, { ...cool, temperatureCoefficient20PerK: -0.001 }] }],
    ['conductors.0.emissivity', { conductors: [{ ...cool, emissivity: 1.01 }, cool] }],
    ['conductors.0.filmWPerM2K', { conductors: [{ ...cool, filmWPerM2K: 0 }, cool] }],
    ['conductors.1.filmWPerM2K', { conductors: [cool, inside] }],
    ['conductors.1.filmWPerM2K', { conductors: [inside, cool] }],
    ['sleeve.filmWPerM2K', { sleeve: { ...sleeve, filmWPerM2K: undefined } }],
    ['sleeve.filmWPerM2K', { conductors: [inside, inside], sleeve }],
    ['sleeve.lengthMm', { sleeve: { ...sleeve, lengthMm: 0 } }],
    ['sleeve.coreDiameterMm', { sleeve: { ...sleeve, coreDiameterMm: 0 } }],
    ['sleeve.outsideDiameterMm', { sleeve: { ...sleeve, outsideDiameterMm: 1.99 } }],
    ['sleeve.conductivityWPerMK', { sleeve: { ...sleeve, conductivityWPerMK: 0 } }],
    ['sleeve.emissivity', { sleeve: { ...sleeve, emissivity: -0.1 } }],
  ])('%s: %j', (parameter, change) => {
    let caught: unknown
    try {
      jointState({ ...site, ...change } as unknown as Site)
    } catch (error) {
      caught = error
    }
    expect(caught).toBeInstanceOf(DomainError)
    expect((caught as DomainError).parameter).toBe(parameter)
  })

  test('codes tell missing wires from a wrong number of them; edges that are inside', () => {
    const code = (conductors: unknown): unknown => {
      try {
        return jointState({ ...site, conductors: conductors as Site['conductors'] })
      } catch (error) {
        return (error as DomainError).code
      }
    }
    expect(code(undefined)).toBe('missing')
    expect(code([cool, cool, cool])).toBe('wrong-choice')
    const edge = { ...cool, conductorDiameterMm: 0.85 * Math.sqrt((4 * 0.34) / Math.PI), emissivity: 0 }
    expect(jointState({ ...site, conductors: [edge, edge], sleeve: { ...sleeve, outsideDiameterMm: 2 } }).jointC).toBeGreaterThan(25)
    expect(() => jointState({ ...site, conductors: [{ ...cool, material: 'gold' as 'tin' }, cool] })).toThrow(UnknownEntryError)
  })
})
