import { steadyCurrentA, thermalTimeConstantS } from '@strandwise/core/ampacity'
import { heatJoint } from '@strandwise/core/heating'
import { jointTemperatureC } from '@strandwise/core/joint'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Explanation, explain } from './explain.ts'

const wire = { areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30 } as const
const side = { areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17 } as const
const site = { currentA: 10, ambientC: 25, conductors: [side, side] } as const
const iron = {
  ambientC: 20,
  tool: { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3 },
  joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5.5 },
  conductors: [{ areaMm2: 0.75, stubMm: 6, insulation: 'PVC', insulationOutsideMm: 2 }],
  alloy: 'Sn63Pb37',
  toolOffS: 3,
} as const

/** Value of the term that starts with this text. */
function term(shown: Explanation, start: string): number {
  const found = shown.steps.find(({ text }) => text.startsWith(start))
  if (found?.value === undefined) throw new Error(`no term "${start}" among ${shown.steps.map(({ text }) => text).join('; ')}`)
  return found.value
}

describe('the heat balance of a wire', () => {
  test('the terms close to the residual, whichever way it is solved', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 10, noNaN: true }),
        fc.constantFrom('churchill-chu', 'morgan'),
        (areaMm2, airSpeedMPerS, solarAbsorbedWPerM, correlation) => {
          const one = { ...wire, areaMm2, airSpeedMPerS, solarAbsorbedWPerM, correlation }
          const limit = explain('steadyCurrentA', { ...one, limitC: 105 })
          const there = explain('conductorTemperatureC', { ...one, currentA: limit.value })
          expect(limit.value).toBe(steadyCurrentA({ ...one, limitC: 105, correlation: correlation as 'morgan' }))
          expect(there.value).toBeCloseTo(105, 0)
          for (const shown of [limit, there]) {
            const left = term(shown, 'heat made') - term(shown, 'heat carried') - term(shown, 'heat radiated') + term(shown, 'sunshine')
            expect(left).toBeCloseTo(term(shown, 'residual'), 9)
            // A jump of Morgan's law leaves up to 0.8 % of the flow.
            expect(Math.abs(term(shown, 'residual'))).toBeLessThan(correlation === 'morgan' ? 0.008 * term(shown, 'heat made') : 1e-8)
          }
        },
      ),
      { numRuns: 60 },
    )
  })

  test('where sun or air alone reach the limit, no current is allowed, and it says so', () => {
    const { value, notes } = explain('steadyCurrentA', { ...wire, limitC: 30 })
    expect([value, notes[0]]).toEqual([0, 'no current is allowed: air or sun alone reach the limit'])
  })

  test('with a film in place of convection the radiation is 0', () => {
    const shown = explain('conductorTemperatureC', { ...wire, filmWPerM2K: 15, currentA: 10 })
    expect(term(shown, 'heat radiated')).toBe(0)
    expect(shown.symbols.map(({ name }) => name)).toContain('h')
  })

  test('what can not settle is refused as the function refuses it', () => {
    expect(() => explain('conductorTemperatureC', { ...wire, currentA: 500 })).toThrow(expect.objectContaining({ name: 'NoSteadyStateError' }))
  })

  test('the time constant: its own terms give it back', () => {
    for (const inputs of [wire, { ...wire, atC: 80, currentA: 12 }, { ...wire, atC: 10 }, { ...wire, atC: 70, solarAbsorbedWPerM: 5, insulationShare: 0.3 }]) {
      const shown = explain('thermalTimeConstantS', inputs)
      expect(shown.value).toBe(thermalTimeConstantS(inputs))
      expect(Math.abs(term(shown, 'residual')) / shown.value).toBeLessThan(1e-8)
      expect(term(shown, 'heat stored') / (term(shown, 'heat that leaves for each') - term(shown, 'heat that the rising'))).toBeCloseTo(shown.value, 5)
    }
  })
})

describe('a wire that warms', () => {
  test('time and temperature are each other’s residual; half way up the balance is open, at the end nearly closed', () => {
    const given = { ...wire, currentA: 22 }
    const soon = explain('temperatureAfterC', { ...given, timeS: 30 })
    const late = explain('temperatureAfterC', { ...given, timeS: 600 })
    expect(Math.abs(term(soon, 'residual'))).toBeLessThan(1e-3)
    expect(term(soon, 'rise in a second')).toBeGreaterThan(50 * term(late, 'rise in a second'))
    const back = explain('timeToTemperatureS', { ...given, wantedC: soon.value })
    expect(back.value).toBeCloseTo(30, 3)
    expect(Math.abs(term(back, 'residual'))).toBeLessThan(1e-3)
  })

  test('a temperature that it never reaches is told', () => {
    const { value, notes } = explain('timeToTemperatureS', { ...wire, currentA: 5, wantedC: 100 })
    expect([value, notes[0]?.slice(0, 22)]).toEqual([0, 'it never gets there: t'])
  })

  test('a bundle: what seven wires make is what its outside sheds', () => {
    for (const more of [{}, { filmWPerM2K: 12 }, { solarAbsorbedWPerM: 3 }]) {
      const shown = explain('bundleTemperatureC', { ...wire, ...more, currentA: 8, loadedWires: 7, bundleOutsideMm: 7 })
      expect(Math.abs(term(shown, 'residual')) / term(shown, 'heat made')).toBeLessThan(1e-8)
      expect(term(shown, 'temperature in the middle')).toBeGreaterThan(term(shown, 'temperature of the surface'))
    }
  })
})

describe('the joint in service', () => {
  test('heat made is heat led away', () => {
    for (const inputs of [site, { ...site, sleeve: { lengthMm: 40, coreDiameterMm: 2.6, outsideDiameterMm: 4.6, conductivityWPerMK: 0.2 } }]) {
      const given = { ...inputs, jointResistanceOhm: 0.005 }
      const shown = explain('jointTemperatureC', given)
      expect(shown.value).toBe(jointTemperatureC(given))
      expect(term(shown, 'heat made')).toBeCloseTo(term(shown, 'heat that flows into wire 1') + term(shown, 'heat that flows into wire 2'), 6)
      expect(Math.abs(term(shown, 'residual'))).toBeLessThan(1e-6)
    }
  })

  test('acceptance: the smallest candidate governs, and is named', () => {
    const shown = explain('acceptanceResistanceOhm', { ...site, jointLengthMm: 10, limitC: 90, allowedDropV: 0.05, plainWireMultiple: 1 })
    expect(shown.steps).toHaveLength(3)
    expect(shown.value).toBe(Math.min(...shown.steps.map(({ value }) => value ?? Number.NaN)))
    expect(shown.notes[0]).toContain('plain wire')
  })

  test('break-even: the lap resists what plain wire of its length does', () => {
    const shown = explain('breakEvenOverlapMm', { conductorsOhmPerM: [0.0172, 0.0172], interfaceSPerM: 1e5 })
    expect(Math.abs(term(shown, 'residual')) / term(shown, 'resistance of the lap')).toBeLessThan(1e-12)
    expect(explain('breakEvenOverlapMm', { conductorsOhmPerM: [0.02, 0.02], interfaceSPerM: 1e5, plainOhmPerM: 0.01 }).notes[0]).toContain('no overlap')
  })
})

describe('heating', () => {
  test('an iron: times in order, temperatures of the function, heat accounted for', () => {
    const shown = explain('heatJoint', iron)
    expect(shown.value).toBe(heatJoint(iron).jointPeakC)
    expect(term(shown, 'first at solidus')).toBeLessThanOrEqual(term(shown, 'all liquid'))
    expect(term(shown, 'all liquid')).toBeLessThan(term(shown, 'wetted'))
    expect(term(shown, 'what the iron gives then')).toBeLessThanOrEqual(60)
    expect(Math.abs(term(shown, 'residual'))).toBeLessThan(0.02)
  })

  test('a dry tip: no time is shown that does not exist, and it says why', () => {
    const shown = explain('heatJoint', {
      ...iron,
      tool: { ...iron.tool, contactResistanceKPerW: 60 },
      conductors: [{ ...iron.conductors[0], areaMm2: 6, insulationOutsideMm: 4 }],
    })
    expect(shown.steps.some(({ text }) => text.startsWith('all liquid'))).toBe(false)
    expect(shown.notes[0]).toContain('never reaches liquidus')
  })

  test('a solder sleeve in hot air shows its tube and its ring', () => {
    const shown = explain('heatSolderSleeve', {
      ...iron,
      tool: { kind: 'hot-air', airC: 400, airSpeedMPerS: 10 },
      tube: { insideMm: 4, recoveredInsideMm: 1.5, wallMm: 0.4, lengthMm: 30, recoveryC: 120 },
      toolOffS: 60,
    })
    expect(term(shown, 'tube shrinks')).toBeGreaterThan(0)
    expect(shown.symbols.map(({ name }) => name)).toContain('theta_r')
  })
})

test('fuse against wire: the worst current with both times', () => {
  const band = [
    { multiple: 1.35, shortestS: 0.75, longestS: 600 },
    { multiple: 6, shortestS: 0.02, longestS: 0.1 },
  ]
  const shown = explain('fuseProtectsWire', { ratedA: 10, band, wire: { ...wire, insulationShare: 0 }, limitC: 70, prospectiveA: 50 })
  expect(shown.value).toBeCloseTo(18.606, 2)
  expect(term(shown, 'margin')).toBeCloseTo(term(shown, 'time that the wire takes') / term(shown, 'latest that the fuse'), 12)
  expect(term(shown, 'without protection from')).toBeLessThan(term(shown, 'without protection up to'))
  expect(shown.notes).toEqual(['the fuse does not protect the wire at every current'])
})

test('choice of a sleeve: each tube with its outside, best first', () => {
  const tube = (suppliedInsideMm: number) => ({
    material: 'polyolefin',
    suppliedInsideMm,
    recoveredInsideMm: suppliedInsideMm / 3,
    recoveredWallMm: 1,
    longitudinalChange: { low: -0.1, high: 0 },
  })
  const shown = explain('chooseSleeve', { largestMm: 4, smallestMm: 2.5, stock: [tube(3), tube(6), tube(9)] })
  expect(shown.steps).toHaveLength(3)
  expect(shown.value).toBe(shown.steps[0]?.value)
  expect(shown.steps[0]?.text).toContain('which fits')
  expect(explain('chooseSleeve', { largestMm: 4, smallestMm: 2.5, stock: [] }).notes[0]).toContain('no tube')
})
