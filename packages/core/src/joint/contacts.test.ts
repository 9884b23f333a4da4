import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { constrictionResistanceOhm } from './constrictionResistance.ts'
import { contactDefaults } from './contactDefaults.ts'
import { contactSpotRadiusMm } from './contactSpotRadius.ts'
import { crimpInterfaceResistanceOhm } from './crimpInterfaceResistance.ts'
import { filmResistanceOhm } from './filmResistance.ts'
import { unlikeContact } from './unlikeContact.ts'

const ρ = 1.7241e-8
const copper = Object.freeze({ resistivity1OhmM: ρ, resistivity2OhmM: ρ })
const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true })
const relative = (got: number, want: number): number => Math.abs(got / want - 1)

function parameterOf(run: () => unknown): string {
  try {
    run()
  } catch (error) {
    if (error instanceof DomainError) return error.parameter
    throw error
  }
  return 'nothing refused'
}

describe('constrictionResistanceOhm', () => {
  test('one spot of like metal: rho/(2a); of unlike metals their mean', () => {
    expect(relative(constrictionResistanceOhm({ ...copper, spotRadiusMm: 0.01 }), ρ / 2e-5)).toBeLessThan(1e-15)
    expect(relative(constrictionResistanceOhm({ resistivity1OhmM: 1e-8, resistivity2OhmM: 3e-8, spotRadiusMm: 0.01 }), 1e-3)).toBeLessThan(1e-15)
  })

  test('n spots in a cluster: rho (1/(2 n a) + 1/(2 alpha))', () => {
    const want = ρ * (1 / (2 * 8 * 1e-5) + 1 / (2 * 2e-4))
    expect(relative(constrictionResistanceOhm({ ...copper, spotRadiusMm: 0.01, spots: 8, clusterRadiusMm: 0.2 }), want)).toBeLessThan(1e-15)
    expect(relative(constrictionResistanceOhm({ ...copper, spotRadiusMm: 0.01, clusterRadiusMm: 0.2 }), ρ * (1 / 2e-5 + 1 / 4e-4))).toBeLessThan(1e-15)
    expect(contactDefaults.spots).toBe(1)
  })

  test('falls with radius, number and spread; scales with resistivity over size', () => {
    fc.assert(
      fc.property(positive, positive, positive, positive, fc.integer({ min: 1, max: 500 }), (ρ1, ρ2, a, α, n) => {
        const i = { resistivity1OhmM: ρ1, resistivity2OhmM: ρ2, spotRadiusMm: a, spots: n, clusterRadiusMm: α }
        const R = constrictionResistanceOhm(i)
        return (
          constrictionResistanceOhm({ ...i, spotRadiusMm: 2 * a }) < R &&
          constrictionResistanceOhm({ ...i, spots: n + 1 }) < R &&
          constrictionResistanceOhm({ ...i, clusterRadiusMm: 2 * α }) < R &&
          relative(constrictionResistanceOhm({ ...i, spotRadiusMm: 2 * a, clusterRadiusMm: 2 * α }), R / 2) < 1e-14
        )
      }),
    )
  })

  test.each([
    ['resistivity1OhmM', { resistivity1OhmM: 0 }],
    ['resistivity2OhmM', { resistivity2OhmM: -1 }],
    ['spotRadiusMm', { spotRadiusMm: 0 }],
    ['spotRadiusMm', { spotRadiusMm: 1e-320 }],
    ['spots', { spots: 0 }],
    ['spots', { spots: 1.5 }],
    ['clusterRadiusMm', { clusterRadiusMm: 0 }],
    ['clusterRadiusMm', { clusterRadiusMm: Number.NaN }],
  ])('refuses %s: %j', (parameter, change) => {
    expect(parameterOf(() => constrictionResistanceOhm({ ...copper, spotRadiusMm: 0.1, ...change }))).toBe(parameter)
  })
})

describe('contactSpotRadiusMm', () => {
  test('hand case: pi N on 1 MPa presses a spot of 1 mm', () => {
    expect(contactSpotRadiusMm({ forceN: Math.PI, hardnessMPa: 1 })).toBe(1)
    expect(contactSpotRadiusMm({ forceN: 4 * Math.PI, hardnessMPa: 1 })).toBe(2)
    expect(contactSpotRadiusMm({ forceN: Math.PI, hardnessMPa: 25 })).toBeCloseTo(0.2, 15)
  })

  test('refuses by name', () => {
    expect(parameterOf(() => contactSpotRadiusMm({ forceN: 0, hardnessMPa: 1 }))).toBe('forceN')
    expect(parameterOf(() => contactSpotRadiusMm({ forceN: 1, hardnessMPa: 0 }))).toBe('hardnessMPa')
    expect(parameterOf(() => contactSpotRadiusMm({ forceN: 1e300, hardnessMPa: 1e-300 }))).toBe('forceN')
  })
})

describe('crimpInterfaceResistanceOhm', () => {
  test('one clean spot: the spot of contactSpotRadiusMm and its constriction', () => {
    const spotRadiusMm = contactSpotRadiusMm({ forceN: 30, hardnessMPa: 400 })
    expect(
      relative(crimpInterfaceResistanceOhm({ forceN: 30, hardnessMPa: 400, ...copper }), constrictionResistanceOhm({ ...copper, spotRadiusMm })),
    ).toBeLessThan(1e-14)
  })

  test('whole: n spots of the same area, cluster, film over the area, share of plastic flow', () => {
    const A = (2 * 100) / 500 / 1e6
    const a = Math.sqrt(A / (9 * Math.PI))
    const want = ((1e-8 + 5e-8) / 4) * (1 / (9 * a) + 1 / 8e-4) + 3e-12 / A
    const got = crimpInterfaceResistanceOhm({
      forceN: 100,
      hardnessMPa: 500,
      resistivity1OhmM: 1e-8,
      resistivity2OhmM: 5e-8,
      spots: 9,
      clusterRadiusMm: 0.8,
      filmOhmM2: 3e-12,
      realAreaFactor: 2,
    })
    expect(relative(got, want)).toBeLessThan(1e-14)
  })

  test('without a word: one spot, no film, hardness bears all', () => {
    const bare = { forceN: 20, hardnessMPa: 300, ...copper }
    expect(contactDefaults).toMatchObject({ spots: 1, filmOhmM2: 0, realAreaFactor: 1 })
    expect(crimpInterfaceResistanceOhm({ ...bare, spots: 1, filmOhmM2: 0, realAreaFactor: 1 })).toBe(crimpInterfaceResistanceOhm(bare))
  })

  test('a quarter of the force doubles a clean spot, and quadruples a film', () => {
    fc.assert(
      fc.property(positive, positive, (F, H) => {
        const i = { forceN: F, hardnessMPa: H, ...copper }
        const clean = relative(crimpInterfaceResistanceOhm({ ...i, forceN: F / 4 }), 2 * crimpInterfaceResistanceOhm(i))
        const film = (force: number): number =>
          crimpInterfaceResistanceOhm({ ...i, forceN: force, filmOhmM2: 1 }) - crimpInterfaceResistanceOhm({ ...i, forceN: force })
        return clean < 1e-14 && relative(film(F / 4), 4 * film(F)) < 1e-6
      }),
    )
  })

  test.each([
    ['forceN', { forceN: 0 }],
    ['hardnessMPa', { hardnessMPa: Number.NaN }],
    ['resistivity1OhmM', { resistivity1OhmM: 0 }],
    ['resistivity2OhmM', { resistivity2OhmM: 0 }],
    ['spots', { spots: 0 }],
    ['spots', { spots: 2.5 }],
    ['clusterRadiusMm', { clusterRadiusMm: -1 }],
    ['filmOhmM2', { filmOhmM2: -1 }],
    ['realAreaFactor', { realAreaFactor: 0 }],
    ['forceN', { forceN: 1e-320, hardnessMPa: 1e10, filmOhmM2: 1 }],
  ])('refuses %s: %j', (parameter, change) => {
    expect(parameterOf(() => crimpInterfaceResistanceOhm({ forceN: 1, hardnessMPa: 1, ...copper, ...change }))).toBe(parameter)
  })
})

describe('filmResistanceOhm', () => {
  test('hand case, and refusals by name', () => {
    expect(filmResistanceOhm({ filmOhmM2: 2e-9, areaMm2: 0.5 })).toBeCloseTo(4e-3, 15)
    expect(filmResistanceOhm({ filmOhmM2: 0, areaMm2: 1 })).toBe(0)
    expect(parameterOf(() => filmResistanceOhm({ filmOhmM2: -1, areaMm2: 1 }))).toBe('filmOhmM2')
    expect(parameterOf(() => filmResistanceOhm({ filmOhmM2: 1, areaMm2: 0 }))).toBe('areaMm2')
    expect(parameterOf(() => filmResistanceOhm({ filmOhmM2: 1e300, areaMm2: 1e-300 }))).toBe('areaMm2')
  })
})

describe('unlikeContact', () => {
  const soft = Object.freeze({ resistivityOhmM: 1.15e-7, hardnessMPa: 50, filmOhmM2: 2e-12 })
  const hard = Object.freeze({ resistivityOhmM: 6.4e-8, hardnessMPa: 1500, filmOhmM2: 3e-12 })

  test('the softer face yields, whichever it is; parts add up to the crimped interface of the same data', () => {
    const rest = { spots: 4, clusterRadiusMm: 0.5, realAreaFactor: 1.5 }
    const found = unlikeContact({ forceN: 5, faces: [soft, hard], ...rest })
    const same = crimpInterfaceResistanceOhm({ forceN: 5, hardnessMPa: 50, resistivity1OhmM: 1.15e-7, resistivity2OhmM: 6.4e-8, filmOhmM2: 5e-12, ...rest })
    expect(relative(found.resistanceOhm, same)).toBeLessThan(1e-14)
    expect(found.touchingMm2).toBeCloseTo(0.15, 15)
    expect(found.spotRadiusMm).toBeCloseTo(Math.sqrt(0.15 / (4 * Math.PI)), 15)
    expect(found.filmOhm).toBeCloseTo(5e-12 / 0.15e-6, 18)
    expect(relative(found.constrictionOhm + found.filmOhm, found.resistanceOhm)).toBeLessThan(1e-15)
    expect(found.softer).toBe(0)
    const turned = unlikeContact({ forceN: 5, faces: [hard, soft], ...rest })
    expect(turned.softer).toBe(1)
    expect(turned.resistanceOhm).toBe(found.resistanceOhm)
  })

  test('equal faces and defaults: one clean spot', () => {
    const face = { resistivityOhmM: ρ, hardnessMPa: 400 }
    const found = unlikeContact({ forceN: 30, faces: [face, face] })
    expect(found.softer).toBeNull()
    expect(found.filmOhm).toBe(0)
    expect(relative(found.resistanceOhm, crimpInterfaceResistanceOhm({ forceN: 30, hardnessMPa: 400, ...copper }))).toBeLessThan(1e-14)
  })

  test.each([
    ['forceN', { forceN: 0 }],
    ['forceN', { forceN: 1e300, faces: [{ ...soft, hardnessMPa: 1e-300 }, hard] }],
    ['faces.0.resistivityOhmM', { faces: [{ ...soft, resistivityOhmM: 0 }, hard] }],
    ['faces.1.resistivityOhmM', { faces: [soft] }],
    ['faces.0.resistivityOhmM', { faces: undefined }],
    ['faces.1.hardnessMPa', { faces: [soft, { ...hard, hardnessMPa: Number.NaN }] }],
    ['faces.0.filmOhmM2', { faces: [{ ...soft, filmOhmM2: -1 }, hard] }],
    ['spots', { spots: 0 }],
    ['clusterRadiusMm', { clusterRadiusMm: 0 }],
    ['realAreaFactor', { realAreaFactor: 0 }],
  ])('refuses %s: %j', (parameter, change) => {
    expect(parameterOf(() => unlikeContact({ forceN: 5, faces: [soft, hard], ...change } as never))).toBe(parameter)
  })
})
