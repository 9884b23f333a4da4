import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { metal } from '../materials/index.ts'
import { type JointSite, jointDefaults } from './jointSite.ts'
import { jointState } from './jointState.ts'
import { jointTemperatureC } from './jointTemperature.ts'

type Site = JointSite & { readonly jointResistanceOhm: number; readonly jointResistanceCoefficientPerK?: number }

const plain = Object.freeze({ areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17 })
const thick = Object.freeze({ areaMm2: 2.5, conductorDiameterMm: 2.05, insulationThicknessMm: 0.8, insulationConductivityWPerMK: 0.17, emissivity: 0.7 })
const cool = Object.freeze({ ...plain, filmWPerM2K: 12 })
const linear: Site = Object.freeze({ currentA: 10, ambientC: 25, jointResistanceOhm: 0.01, conductors: Object.freeze([cool, cool] as const) })
const natural: Site = Object.freeze({ currentA: 10, ambientC: 25, jointResistanceOhm: 0.01, conductors: Object.freeze([plain, plain] as const) })
const sleeve = Object.freeze({ lengthMm: 30, coreDiameterMm: 3, outsideDiameterMm: 4.6, conductivityWPerMK: 0.2 })
const relative = (got: number, want: number): number => Math.abs(got / want - 1)

/** The wire's own insulation as a sleeve: a covered length with no effect. */
const asSleeve = (lengthMm: number, side: Site['conductors'][0]): NonNullable<Site['sleeve']> => ({
  lengthMm,
  coreDiameterMm: 1.28,
  outsideDiameterMm: 2.48,
  conductivityWPerMK: 0.17,
  ...(side.filmWPerM2K === undefined ? {} : { filmWPerM2K: side.filmWPerM2K }),
})

describe('given film coefficients', () => {
  const wall = Math.log(2.48 / 1.28) / (2 * Math.PI * 0.17)
  const loss = 1 / (wall + 1 / (Math.PI * 2.48e-3 * 12))

  test('like wires of constant resistance: T_far + I^2 R/(2 sqrt(kA G))', () => {
    const constant = { ...cool, conductivityWPerMK: 391, resistivity20OhmM: 1.7241e-8, temperatureCoefficient20PerK: 0 }
    const found = jointState({ ...linear, conductors: [constant, constant] })
    const far = 25 + (100 * 0.017241) / loss
    expect(relative(found.farC[0], far)).toBeLessThan(1e-14)
    expect(relative(found.jointC, far + 1 / (2 * Math.sqrt(391e-6 * loss)))).toBeLessThan(1e-14)
    expect(found.wireFlowW[0]).toBeCloseTo(0.5, 14)
    expect(found.sleeveEndC).toBeNull()
    expect(found.largestCurrentA).toBeNull()
    expect(found.residual).toBeLessThan(1e-14)
  })

  test('rising resistances: own heating takes I^2 R20 alpha off the loss, the joint I^2 R a off both flows', () => {
    const a = 0.003
    const found = jointState({ ...linear, jointResistanceCoefficientPerK: a })
    const heating = 100 * 0.017241
    const Ge = loss - heating * 0.00393
    const far = 25 + (heating * (1 + 0.00393 * 5)) / Ge
    const Y = Math.sqrt(391e-6 * Ge)
    expect(relative(found.jointC, (1 - 20 * a + 2 * Y * far) / (2 * Y - a))).toBeLessThan(1e-13)
  })

  test('far apart from each other the wires keep their own temperature; the thin one may be hotter than the joint and feed it', () => {
    const found = jointState({
      ...linear,
      jointResistanceOhm: 0,
      conductors: [
        { ...cool, areaMm2: 0.5 },
        { ...thick, filmWPerM2K: 12 },
      ],
    })
    expect(found.farC[0]).toBeGreaterThan(found.jointC)
    expect(found.wireFlowW[0]).toBeLessThan(0)
    expect(found.wireFlowW[0] + found.wireFlowW[1]).toBeCloseTo(0, 12)
  })
})

describe('both models', () => {
  test.each([
    ['films', linear],
    ['Churchill-Chu', natural],
    ['Morgan', { ...natural, correlation: 'morgan' as const }],
  ])('%s: the insulation taken for a sleeve changes nothing, however long', (name, site) => {
    const bare = jointState(site)
    for (const lengthMm of [1, 30, 250, 3000]) {
      const found = jointState({ ...site, sleeve: asSleeve(lengthMm, site.conductors[0]) })
      // Tolerance: the grid's error, and for Morgan the jumps, which are smoothed under the sleeve only.
      expect(relative(found.jointC, bare.jointC)).toBeLessThan(name === 'Morgan' ? 1e-6 : 2e-8)
    }
  })

  test.each([
    ['films', linear, { filmWPerM2K: 7 }],
    ['Churchill-Chu', natural, {}],
  ])('%s: under a sleeve without end the joint is that of wires with the sleeve for insulation', (_name, site, film) => {
    const wires = { areaMm2: 1, conductorDiameterMm: 3, insulationThicknessMm: 0.8, insulationConductivityWPerMK: 0.2, ...film }
    const endless = jointTemperatureC({ ...site, conductors: [wires, wires] })
    for (const lengthMm of [2500, 1e5, 1e9])
      expect(relative(jointTemperatureC({ ...site, sleeve: { ...sleeve, ...film, lengthMm } }), endless)).toBeLessThan(2e-8)
  })

  test.each([
    ['films', { ...linear, conductors: [cool, { ...thick, filmWPerM2K: 9 }] as const, sleeve: { ...sleeve, filmWPerM2K: 8 } }],
    ['correlations', { ...natural, conductors: [plain, thick] as const, sleeve }],
  ])('%s: turned round, every answer turns', (_name, site: Site) => {
    const there = jointState(site)
    const back = jointState({ ...site, conductors: [site.conductors[1], site.conductors[0]] })
    expect(relative(back.jointC, there.jointC)).toBeLessThan(1e-11)
    for (const k of [0, 1] as const) {
      expect(relative(back.farC[k], there.farC[1 - k] as number)).toBeLessThan(1e-14)
      expect(relative(back.wireFlowW[k], there.wireFlowW[1 - k] as number)).toBeLessThan(1e-9)
      expect(relative(back.sleeveEndC?.[k] ?? 0, there.sleeveEndC?.[1 - k] ?? 0)).toBeLessThan(1e-10)
    }
  })

  test.each([
    ['films', { ...linear, sleeve: { ...sleeve, filmWPerM2K: 8 } }],
    ['correlations', { ...natural, sleeve }],
  ])('%s: without current everything is at ambient; without sleeve no sleeve end', (_name, site: Site) => {
    const still = jointState({ ...site, currentA: 0 })
    expect(still.jointC).toBe(25)
    expect(still.farC).toEqual([25, 25])
    expect(still.wireFlowW.map(Math.abs)).toEqual([0, 0])
    expect(still.sleeveEndC).toEqual([25, 25])
    expect(still.residual).toBe(0)
    expect(jointState({ ...site, currentA: 0, sleeve: null }).sleeveEndC).toBeNull()
    expect(jointState({ ...site, sleeve: null }).sleeveEndC).toBeNull()
  })

  test.each([
    ['films', linear],
    ['correlations', natural],
  ])('%s: a joint of no resistance between like wires is as hot as they are', (_name, site) => {
    const found = jointState({ ...site, jointResistanceOhm: 0 })
    expect(relative(found.jointC, found.farC[0])).toBeLessThan(1e-12)
    expect(Math.abs(found.wireFlowW[0])).toBeLessThan(1e-9)
  })

  test('hotter with current, with resistance, with warmer air; cooler with a thicker neighbour; flows are the heat made', () => {
    const current = fc.double({ min: 0.5, max: 12, noNaN: true })
    const ohm = fc.double({ min: 1e-5, max: 0.05, noNaN: true })
    const air = fc.double({ min: -40, max: 100, noNaN: true })
    fc.assert(
      fc.property(current, ohm, air, fc.boolean(), fc.boolean(), (currentA, jointResistanceOhm, ambientC, given, covered) => {
        const base: Site = {
          currentA,
          ambientC,
          jointResistanceOhm,
          conductors: given ? [cool, cool] : [plain, plain],
          sleeve: covered ? { ...sleeve, ...(given && { filmWPerM2K: 9 }) } : null,
        }
        const found = jointState(base)
        const own = currentA ** 2 * jointResistanceOhm
        return (
          jointTemperatureC({ ...base, currentA: currentA * 1.05 }) > found.jointC &&
          jointTemperatureC({ ...base, jointResistanceOhm: jointResistanceOhm * 1.1 }) > found.jointC &&
          jointTemperatureC({ ...base, ambientC: ambientC + 1 }) > found.jointC &&
          jointTemperatureC({ ...base, conductors: [base.conductors[0], { ...thick, ...(given && { filmWPerM2K: 12 }) }] }) < found.jointC &&
          Math.abs(found.wireFlowW[0] + found.wireFlowW[1] - own) < 1e-7 * (1 + own) &&
          found.residual < 1e-6 * (1 + own)
        )
      }),
      { numRuns: 60 },
    )
  })
})

describe('by correlations', () => {
  test('colder by Morgan than by Churchill-Chu, hotter in thin air; emissivity of wire and sleeve count', () => {
    const base = { ...natural, sleeve }
    const found = jointTemperatureC(base)
    expect(jointTemperatureC({ ...base, correlation: 'churchill-chu' })).toBe(found)
    expect(jointTemperatureC({ ...base, correlation: 'morgan' })).toBeLessThan(found - 1)
    expect(jointTemperatureC({ ...base, pressurePa: 70000 })).toBeGreaterThan(found + 1)
    expect(jointTemperatureC({ ...base, sleeve: { ...sleeve, emissivity: 0.2 } })).toBeGreaterThan(found + 0.5)
    expect(jointTemperatureC({ ...base, conductors: [{ ...plain, emissivity: 0.2 }, plain] })).toBeGreaterThan(found + 0.5)
  })

  test('without a word: annealed copper, solid round, 0.9 all over, standard air, a joint that does not rise', () => {
    const copper = metal('annealed-copper')
    const said = {
      areaMm2: 1,
      material: 'annealed-copper',
      conductorDiameterMm: Math.sqrt(4 / Math.PI),
      insulationThicknessMm: 0.6,
      insulationConductivityWPerMK: 0.17,
      conductivityWPerMK: copper.conductivityWPerMK.nominal,
      resistivity20OhmM: copper.resistivity20OhmM.nominal,
      temperatureCoefficient20PerK: copper.temperatureCoefficient20PerK.nominal,
      emissivity: 0.9,
    } as const
    const unsaid = { areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17 }
    const rest = { ...natural, pressurePa: 101325, correlation: 'churchill-chu' as const, jointResistanceCoefficientPerK: 0 }
    const full = jointState({ ...rest, conductors: [said, said], sleeve: { ...sleeve, emissivity: 0.9 } })
    expect(jointState({ ...natural, conductors: [unsaid, unsaid], sleeve })).toEqual(full)
    expect(jointDefaults).toMatchObject({ material: 'annealed-copper', emissivity: 0.9, sleeveEmissivity: 0.9, jointResistanceCoefficientPerK: 0 })
  })

  test('another metal brings its own resistance and conductivity', () => {
    const brass = jointState({ ...natural, conductors: [{ ...plain, material: 'brass-cuzn30' }, plain] })
    expect(brass.farC[0]).toBeGreaterThan(brass.farC[1] + 20)
  })

  test('bare wire: nothing bounds the current; insulated: the smaller 1/sqrt(R_ins R20 alpha)', () => {
    const bare = { ...plain, insulationThicknessMm: 0 }
    expect(jointState({ ...natural, conductors: [bare, bare] }).largestCurrentA).toBeNull()
    expect(jointState({ ...natural, currentA: 0, conductors: [bare, bare] }).largestCurrentA).toBeNull()
    const bound = (d: number, wall: number, area: number): number =>
      1 / Math.sqrt(((Math.log((d + 2 * wall) / d) / (2 * Math.PI * 0.17)) * 0.017241 * 0.00393) / area)
    for (const conductors of [[plain, thick] as const, [thick, plain] as const, [plain, bare] as const])
      expect(relative(jointState({ ...natural, conductors }).largestCurrentA ?? 0, bound(1.28, 0.6, 1))).toBeLessThan(1e-13)
    expect(relative(jointState({ ...natural, currentA: 0, conductors: [bare, thick] }).largestCurrentA ?? 0, bound(2.05, 0.8, 2.5))).toBeLessThan(1e-13)
    const constant = { ...plain, temperatureCoefficient20PerK: 0 }
    expect(jointState({ ...natural, conductors: [constant, constant] }).largestCurrentA).toBeNull()
  })

  test('a state that the search from below misses is found from above', () => {
    const nickel = { areaMm2: 16.4, material: 'nickel', insulationThicknessMm: 0, insulationConductivityWPerMK: 0.1, emissivity: 0.97 } as const
    const poor = { lengthMm: 1700, coreDiameterMm: 6.7, outsideDiameterMm: 9.5, conductivityWPerMK: 0.355, emissivity: 0.01 }
    const found = jointState({ currentA: 210, ambientC: 104, jointResistanceOhm: 1.9e-8, conductors: [nickel, nickel], sleeve: poor, pressurePa: 52000 })
    expect(found.jointC).toBeGreaterThan(3000)
    expect(found.residual).toBeLessThan(1e-6)
  })
})
