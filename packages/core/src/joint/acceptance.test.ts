import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { dropTestVerdict, twoWireProof } from '../meter/index.ts'
import { acceptanceReadings } from './acceptanceReadings.ts'
import { acceptanceResistanceOhm } from './acceptanceResistance.ts'
import type { JointSite } from './jointSite.ts'
import { jointState } from './jointState.ts'
import { jointTemperatureC } from './jointTemperature.ts'

const wire = Object.freeze({ areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17 })
const thick = Object.freeze({ areaMm2: 2.5, conductorDiameterMm: 2.05, insulationThicknessMm: 0.8, insulationConductivityWPerMK: 0.17 })
const sleeve = Object.freeze({ lengthMm: 30, coreDiameterMm: 3, outsideDiameterMm: 4.6, conductivityWPerMK: 0.2 })
const film = { filmWPerM2K: 11 }
const natural: JointSite = Object.freeze({ currentA: 10, ambientC: 25, conductors: Object.freeze([wire, thick] as const) })
const linear: JointSite = Object.freeze({
  ...natural,
  conductors: [
    { ...wire, ...film },
    { ...thick, ...film },
  ] as const,
})
const sites: readonly (readonly [string, JointSite])[] = [
  ['films', linear],
  ['films, sleeve', { ...linear, sleeve: { ...sleeve, ...film } }],
  ['correlations', natural],
  ['correlations, sleeve', { ...natural, sleeve }],
  ['Morgan, like wires', { ...natural, conductors: [wire, wire], correlation: 'morgan', sleeve }],
]

function parameterOf(run: () => unknown): string {
  try {
    run()
  } catch (error) {
    if (error instanceof DomainError) return error.parameter
    throw error
  }
  return 'nothing refused'
}

describe('acceptanceResistanceOhm', () => {
  test.each(sites)('%s: the joint of that resistance is exactly as hot as the limit', (_name, site) => {
    const limit = fc.double({ min: 60, max: 200, noNaN: true })
    const current = fc.double({ min: 1, max: 11, noNaN: true })
    fc.assert(
      fc.property(limit, current, (limitC, currentA) => {
        const { resistanceOhm, governedBy } = acceptanceResistanceOhm({ ...site, currentA, limitC, jointLengthMm: 10 })
        return (
          governedBy === 'temperature' &&
          resistanceOhm > 0 &&
          Math.abs(jointTemperatureC({ ...site, currentA, jointResistanceOhm: resistanceOhm }) - limitC) < 1e-6
        )
      }),
      { numRuns: 25 },
    )
  })

  test.each(sites)('%s: nothing is left where a wire alone is as hot as the limit, just beyond it is', (_name, site) => {
    const { farC } = jointState({ ...site, jointResistanceOhm: 0 })
    const hotter = Math.max(...farC)
    const at = (limitC: number): number => acceptanceResistanceOhm({ ...site, limitC, jointLengthMm: 10 }).resistanceOhm
    expect(at(hotter)).toBe(0)
    expect(at(hotter - 0.01)).toBe(0)
    expect(at(hotter + 0.01)).toBeGreaterThan(0)
    expect(at(25)).toBe(0)
    expect(at(-200)).toBe(0)
  })

  test.each([
    ['films', { ...linear, currentA: 1000 }],
    ['correlations', { ...natural, currentA: 1000 }],
  ])('%s: nothing is left where a wire runs away', (_name, site) => {
    expect(acceptanceResistanceOhm({ ...site, limitC: 1000, jointLengthMm: 10 }).resistanceOhm).toBe(0)
  })

  test.each([
    ['films', linear, { filmWPerM2K: 0.5 }],
    ['correlations', natural, {}],
  ])('%s: nothing is left where the sleeve alone brings the joint to the limit', (_name, site, given) => {
    const poor = { ...sleeve, lengthMm: 200, outsideDiameterMm: 20, conductivityWPerMK: 0.04, ...given }
    const conductors = [site.conductors[0], site.conductors[0]] as const
    const bare = jointState({ ...site, conductors, sleeve: poor, jointResistanceOhm: 0 })
    expect(bare.jointC).toBeGreaterThan(bare.farC[0] + 1)
    const at = (limitC: number): number => acceptanceResistanceOhm({ ...site, conductors, sleeve: poor, limitC, jointLengthMm: 10 }).resistanceOhm
    expect(at(bare.jointC - 0.1)).toBe(0)
    expect(at(bare.jointC + 0.1)).toBeGreaterThan(0)
  })

  test('drop: V/I; plain wire: the mean of both at 20 C over the length; in that order', () => {
    const { candidates } = acceptanceResistanceOhm({ ...natural, jointLengthMm: 20, limitC: 90, allowedDropV: 0.05, plainWireMultiple: 1.5 })
    expect(candidates.map(({ limit }) => limit)).toEqual(['temperature', 'drop', 'plain-wire'])
    expect(candidates[1]?.resistanceOhm).toBe(0.005)
    expect(candidates[2]?.resistanceOhm).toBeCloseTo(1.5 * 0.02 * 0.5 * (0.017241 + 0.017241 / 2.5), 15)
    expect(acceptanceResistanceOhm({ ...natural, jointLengthMm: 20, plainWireMultiple: 1 }).candidates).toHaveLength(1)
  })

  test('the smallest governs, whichever it is; the first of two alike', () => {
    const at = (allowedDropV: number, plainWireMultiple: number) =>
      acceptanceResistanceOhm({ ...natural, jointLengthMm: 10, limitC: 90, allowedDropV, plainWireMultiple })
    expect(at(1, 1e6).governedBy).toBe('temperature')
    expect(at(1e-4, 1).governedBy).toBe('drop')
    expect(at(1, 1).governedBy).toBe('plain-wire')
    for (const found of [at(1, 1e6), at(1e-4, 1), at(1, 1)]) {
      expect(found.resistanceOhm).toBe(Math.min(...found.candidates.map(({ resistanceOhm }) => resistanceOhm)))
      expect(found.candidates.find(({ limit }) => limit === found.governedBy)?.resistanceOhm).toBe(found.resistanceOhm)
    }
    const plainOhm = acceptanceResistanceOhm({ ...natural, currentA: 8, jointLengthMm: 10, plainWireMultiple: 1 }).resistanceOhm
    expect(acceptanceResistanceOhm({ ...natural, currentA: 8, jointLengthMm: 10, allowedDropV: 8 * plainOhm, plainWireMultiple: 1 }).governedBy).toBe('drop')
  })

  test.each([
    ['limitC', {}],
    ['currentA', { limitC: 90, currentA: 0 }],
    ['jointLengthMm', { limitC: 90, jointLengthMm: 0 }],
    ['limitC', { limitC: -273.15 }],
    ['limitC', { limitC: Number.NaN }],
    ['allowedDropV', { allowedDropV: 0 }],
    ['allowedDropV', { allowedDropV: 1e300, currentA: 1e-300 }],
    ['plainWireMultiple', { plainWireMultiple: 0 }],
    ['plainWireMultiple', { plainWireMultiple: 1e300, jointLengthMm: 1e300 }],
    ['limitC', { limitC: 90, currentA: 1e-200 }],
    ['ambientC', { limitC: 90, ambientC: Number.NaN }],
  ])('refuses %s: %j', (parameter, change) => {
    expect(parameterOf(() => acceptanceResistanceOhm({ ...natural, jointLengthMm: 10, ...change }))).toBe(parameter)
  })
})

describe('acceptanceResistanceOhm, one wire that runs away', () => {
  test.each([
    ['films', linear],
    ['correlations', natural],
  ])('%s: 0, although the thick one would take heat', (_name, site) => {
    const thin = { ...site.conductors[0], areaMm2: 0.05, conductorDiameterMm: 0.3, insulationThicknessMm: 2 }
    for (const conductors of [[thin, site.conductors[1]] as const, [site.conductors[1], thin] as const])
      expect(acceptanceResistanceOhm({ ...site, conductors, currentA: 20, limitC: 150, jointLengthMm: 10 }).resistanceOhm).toBe(0)
  })
})

describe('acceptanceReadings', () => {
  const meter = Object.freeze({ percentOfReading: 1, counts: 3, resolutionOhm: 0.01, leadOhm: 0.2, leadUncertaintyOhm: 0.005 })

  test('hand meter: the two readings are those at which the two-wire proof changes its verdict', () => {
    const [row] = acceptanceReadings({ acceptanceOhm: 0.5, handMeter: meter })
    const verdict = (readingOhm: number): string => twoWireProof({ readingOhm: readingOhm + 0.2, meter, currentA: 2, allowedDropV: 1 }).verdict
    expect(row?.instrument).toBe('hand-meter')
    const pass = row?.passesUpToOhm ?? Number.NaN
    const fail = row?.failsAboveOhm ?? Number.NaN
    expect([pass - 1e-9, pass + 1e-9, fail - 1e-9, fail + 1e-9].map(verdict)).toEqual(['passes', 'cannot tell', 'cannot tell', 'fails'])
  })

  test('four-wire and drop test: the limit less and plus U/I, in that order, as the drop test decides', () => {
    const rows = acceptanceReadings({ acceptanceOhm: 0.02, dropTest: { testA: 5, uncertaintyV: 0.01 }, fourWire: { testA: 2, uncertaintyV: 0.001 } })
    expect(rows.map(({ instrument }) => instrument)).toEqual(['four-wire', 'drop-test'])
    expect(rows[0]?.passesUpToOhm).toBeCloseTo(0.0195, 15)
    expect(rows[0]?.failsAboveOhm).toBeCloseTo(0.0205, 15)
    expect(rows[1]?.passesUpToOhm).toBeCloseTo(0.018, 15)
    const verdict = (ohm: number): string => dropTestVerdict({ measuredV: 5 * ohm, uncertaintyV: 0.01, testA: 5, workingA: 10, allowedDropV: 0.2 }).verdict
    expect([0.018 - 1e-9, 0.018 + 1e-9, 0.022 - 1e-9, 0.022 + 1e-9].map(verdict)).toEqual(['passes', 'cannot tell', 'cannot tell', 'fails'])
  })

  test('tells where the limit is at least twice the error, and null where no reading can', () => {
    const drop = (acceptanceOhm: number) => acceptanceReadings({ acceptanceOhm, dropTest: { testA: 4, uncertaintyV: 1 } })[0]
    expect(drop(0.5)).toMatchObject({ passesUpToOhm: 0.25, failsAboveOhm: 0.75, tells: true })
    expect(drop(0.499)).toMatchObject({ tells: false })
    expect(drop(0.25)).toMatchObject({ passesUpToOhm: 0, tells: false })
    expect(drop(0.2499)).toMatchObject({ passesUpToOhm: null, tells: false })
    const wild = (percentOfReading: number) => acceptanceReadings({ acceptanceOhm: 1, handMeter: { percentOfReading, counts: 0, resolutionOhm: 0 } })[0]
    expect(wild(100)?.failsAboveOhm).toBeNull()
    expect(wild(150)?.failsAboveOhm).toBeNull()
    expect(acceptanceReadings({ acceptanceOhm: 1.7e308, handMeter: { percentOfReading: 50, counts: 0, resolutionOhm: 0 } })[0]?.failsAboveOhm).toBeNull()
    expect(wild(50)).toEqual({ instrument: 'hand-meter', passesUpToOhm: 1 / 1.5, failsAboveOhm: 2, tells: true })
  })

  test('percent of the leads counts; without a word the leads are none', () => {
    const bare = { percentOfReading: 10, counts: 2, resolutionOhm: 0.1 }
    const [none] = acceptanceReadings({ acceptanceOhm: 2, handMeter: bare })
    const [leads] = acceptanceReadings({ acceptanceOhm: 2, handMeter: { ...bare, leadOhm: 1 } })
    expect(none?.passesUpToOhm).toBeCloseTo(1.8 / 1.1, 14)
    expect(none?.failsAboveOhm).toBeCloseTo(2.2 / 0.9, 14)
    expect(leads?.passesUpToOhm).toBeCloseTo(1.7 / 1.1, 14)
  })

  test.each([
    ['handMeter', {}],
    ['acceptanceOhm', { handMeter: meter, acceptanceOhm: 0 }],
    ['handMeter.percentOfReading', { handMeter: { ...meter, percentOfReading: -1 } }],
    ['handMeter.counts', { handMeter: { ...meter, counts: -1 } }],
    ['handMeter.resolutionOhm', { handMeter: { ...meter, resolutionOhm: Number.NaN } }],
    ['handMeter.leadOhm', { handMeter: { ...meter, leadOhm: -1 } }],
    ['handMeter.leadUncertaintyOhm', { handMeter: { ...meter, leadUncertaintyOhm: -1 } }],
    ['fourWire.testA', { fourWire: { testA: 0, uncertaintyV: 0 } }],
    ['fourWire.uncertaintyV', { fourWire: { testA: 1, uncertaintyV: -1 } }],
    ['dropTest.testA', { dropTest: { testA: Number.NaN, uncertaintyV: 0 } }],
    ['dropTest.uncertaintyV', { dropTest: { testA: 1, uncertaintyV: Number.POSITIVE_INFINITY } }],
  ])('refuses %s: %j', (parameter, change) => {
    expect(parameterOf(() => acceptanceReadings({ acceptanceOhm: 1, ...change }))).toBe(parameter)
  })
})
