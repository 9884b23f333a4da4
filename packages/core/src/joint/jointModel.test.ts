import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { jointModel } from './jointModel.ts'
import type { JointSide, JointSite } from './jointSite.ts'
import { jointResistance, ownHeatW } from './ownResistance.ts'

const wire: JointSide = { areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17 }
const site: JointSite = { currentA: 10, ambientC: 25, conductors: [wire, wire] }

function thrown(run: () => unknown): DomainError {
  try {
    run()
  } catch (error) {
    if (error instanceof DomainError) return error
    throw error
  }
  throw new Error('nothing refused')
}

describe('jointModel', () => {
  test('like wires are one, unlike in any way they are two', () => {
    const shared = (other: Partial<JointSide>): boolean => {
      const { sides } = jointModel({ ...site, conductors: [wire, { ...wire, ...other }] })
      return sides[0] === sides[1]
    }
    expect(shared({})).toBe(true)
    const unlike: readonly Partial<JointSide>[] = [
      { conductivityWPerMK: 380 },
      { resistivity20OhmM: 1.8e-8 },
      { temperatureCoefficient20PerK: 0.0039 },
      { insulationConductivityWPerMK: 0.18 },
      { emissivity: 0.8 },
      { areaMm2: 1.1 },
    ]
    for (const other of unlike) expect(shared(other), JSON.stringify(other)).toBe(false)
    // Variants: a bare wire of the same outside diameter; the same conductor with another melting point.
    const bare = { ...wire, insulationThicknessMm: 0 }
    const { sides } = jointModel({ ...site, conductors: [bare, { ...bare, conductorDiameterMm: 1.3 }] })
    expect(sides[0]).not.toBe(sides[1])
    const named = { ...wire, conductivityWPerMK: 100, resistivity20OhmM: 1e-7, temperatureCoefficient20PerK: 0.004 }
    const metals = jointModel({ ...site, conductors: [named, { ...named, material: 'tin' }] }).sides
    expect(metals[0]).not.toBe(metals[1])
    const films = jointModel({
      ...site,
      conductors: [
        { ...wire, filmWPerM2K: 10 },
        { ...wire, filmWPerM2K: 11 },
      ],
    }).sides
    expect(films[0]).not.toBe(films[1])
  })

  test('in SI', () => {
    const model = jointModel({ ...site, sleeve: { lengthMm: 30, coreDiameterMm: 3, outsideDiameterMm: 4.6, conductivityWPerMK: 0.2 } })
    const [side] = model.sides
    expect(model).toMatchObject({ currentA: 10, ambientC: 25, pressurePa: 101325, morgan: false, linear: false, sleeveM: 0.015, ceilingC: 1083 })
    expect(side.kA).toBeCloseTo(391e-6, 12)
    expect(side.r20).toBeCloseTo(0.017241, 12)
    expect(side.wire.outsideM).toBeCloseTo(2.48e-3, 12)
    expect(side.sleeve?.outsideM).toBeCloseTo(4.6e-3, 12)
    expect(side.sleeve?.emissivity).toBe(0.9)
    expect(jointModel(site).sleeveM).toBe(0)
  })

  test('messages tell the edge: where the line of resistance reaches 0, and from which coefficient on the joint would be negative', () => {
    const cold = thrown(() => jointModel({ ...site, ambientC: -160, conductors: [{ ...wire, temperatureCoefficient20PerK: 0.006 }, wire] }))
    expect(cold.allowed).toContain(`above ${(20 - 1 / 0.006).toPrecision(4)}`)
    expect(cold.code).toBe('contradiction')
    const joint = thrown(() => jointResistance(0.01, 0.02, -80))
    expect(joint.allowed).toContain('below 0.01:')
    expect(joint.code).toBe('contradiction')
    expect(jointResistance(0.01, 0.0099, -80)).toEqual({ R: 0.01, a: 0.0099 })
    expect(jointResistance(0.01, undefined, -80)).toEqual({ R: 0.01, a: 0 })
    expect(() => jointModel({ ...site, ambientC: 20 - 1 / 0.00625, conductors: [{ ...wire, temperatureCoefficient20PerK: 0.00625 }, wire] })).toThrow(
      DomainError,
    )
  })

  test('the joint own heat: I^2 R (1 + a (T - 20))', () => {
    expect(ownHeatW(3, 0.5, 0.01, 70)).toBeCloseTo(4.5 * 1.5, 14)
  })
})
