import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { DomainError } from '../errors/index.ts'
import { filletConductanceSPerM } from './filletConductance.ts'
import { lapJointResistanceOhm } from './lapJointResistance.ts'
import { twistedJointOverlap } from './twistedJoint.ts'
import { wrappedJointBondWidthMm, wrappedJointOverlap } from './wrappedJoint.ts'

const solder = Object.freeze({ filletWidthMm: 0.5, layerMm: 0.05, layerOhmM: 1.5e-7, resistivityOhmM: 1.7241e-8 })
const conductorsOhmPerM = Object.freeze([0.0172, 0.03] as const)
const filletOf = (diameterMm: number, filmOhmM2 = 0) =>
  filletConductanceSPerM({ diameterMm, resistivityOhmM: 1.7241e-8, gapMm: 0.05, bondWidthMm: 0.5, solderOhmM: 1.5e-7, filmOhmM2 })
const wrap = Object.freeze({ ...solder, conductorsOhmPerM, coreDiameterMm: 1.13, wrapDiameterMm: 0.9, turns: 5, pitchMm: 1.5 })
const twist = Object.freeze({ ...solder, conductorsOhmPerM, diametersMm: [1.13, 0.8] as const, turns: 2, pitchMm: 5 })

function parameterOf(run: () => unknown): string {
  try {
    run()
  } catch (error) {
    if (error instanceof DomainError) return error.parameter
    throw error
  }
  return 'nothing refused'
}

describe('wrappedJointBondWidthMm', () => {
  test('hand case: core 1/pi mm, pitch 1 mm: a turn is sqrt(2) mm of fillet', () => {
    expect(wrappedJointBondWidthMm({ coreDiameterMm: 1 / Math.PI, pitchMm: 1, filletWidthMm: 0.3 })).toBeCloseTo(0.3 * Math.SQRT2, 14)
  })

  test('stretched out it is the fillet of a straight lap; close turns with wide fillets wet the whole perimeter and no more', () => {
    expect(wrappedJointBondWidthMm({ coreDiameterMm: 1, pitchMm: 1e9, filletWidthMm: 0.5 })).toBeCloseTo(0.5, 12)
    expect(wrappedJointBondWidthMm({ coreDiameterMm: 1, pitchMm: 0.5, filletWidthMm: 0.6 })).toBe(Math.PI)
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 0.1, max: 10, noNaN: true }),
        fc.double({ min: 0.01, max: 10, noNaN: true }),
        (D, p, w) => {
          const width = wrappedJointBondWidthMm({ coreDiameterMm: D, pitchMm: p, filletWidthMm: w })
          return width <= Math.PI * D && wrappedJointBondWidthMm({ coreDiameterMm: D, pitchMm: 2 * p, filletWidthMm: w }) <= width
        },
      ),
    )
  })

  test('refuses by name', () => {
    const good = { coreDiameterMm: 1, pitchMm: 1, filletWidthMm: 1 }
    for (const name of ['coreDiameterMm', 'pitchMm', 'filletWidthMm'] as const) {
      expect(parameterOf(() => wrappedJointBondWidthMm({ ...good, [name]: 0 }))).toBe(name)
      expect(parameterOf(() => wrappedJointBondWidthMm({ ...good, [name]: Number.NaN }))).toBe(name)
    }
  })
})

describe('wrappedJointOverlap', () => {
  test('unrolled: turns times pitch, helix of the wrapped wire, bond over the core; the lap formula takes it as it is', () => {
    const found = wrappedJointOverlap(wrap)
    const bondWidthMm = wrappedJointBondWidthMm(wrap)
    expect(found).toEqual({
      overlapMm: 7.5,
      conductorsOhmPerM: [0.0172, 0.03 * Math.hypot(1, (Math.PI * 2.03) / 1.5)],
      interfaceSPerM: (filletOf(0.9) * bondWidthMm) / 0.5,
      bondWidthMm,
    })
    expect(lapJointResistanceOhm(found)).toBeGreaterThan(0)
  })

  test('a film counts', () => {
    const g = (filletOf(0.9, 1e-10) * wrappedJointBondWidthMm(wrap)) / 0.5
    expect(wrappedJointOverlap({ ...wrap, filmOhmM2: 1e-10 }).interfaceSPerM).toBe(g)
  })

  test('close turns are allowed, overlying ones are not', () => {
    expect(wrappedJointOverlap({ ...wrap, pitchMm: 0.9 }).overlapMm).toBeCloseTo(4.5, 14)
    expect(parameterOf(() => wrappedJointOverlap({ ...wrap, pitchMm: 0.89 }))).toBe('pitchMm')
  })

  test.each([
    ['coreDiameterMm', { coreDiameterMm: 0 }],
    ['wrapDiameterMm', { wrapDiameterMm: 0 }],
    ['turns', { turns: 0 }],
    ['turns', { turns: 1e308, pitchMm: 10 }],
    ['pitchMm', { pitchMm: Number.NaN }],
    ['filletWidthMm', { filletWidthMm: -1 }],
    ['layerMm', { layerMm: -1 }],
    ['layerMm', { layerMm: 0.91 }],
    ['filletWidthMm', { filletWidthMm: 0.91 }],
    ['layerOhmM', { layerOhmM: 0 }],
    ['resistivityOhmM', { resistivityOhmM: 0 }],
    ['filmOhmM2', { filmOhmM2: -1 }],
    ['conductorsOhmPerM.0', { conductorsOhmPerM: [-1, 1] }],
    ['conductorsOhmPerM.1', { conductorsOhmPerM: [1, 1.7e308] }],
  ])('refuses %s: %j', (parameter, change) => {
    expect(parameterOf(() => wrappedJointOverlap({ ...wrap, ...change } as never))).toBe(parameter)
  })
})

describe('twistedJointOverlap', () => {
  test('unrolled: the bond is the fillet, both wires are longer by their own helix', () => {
    const found = twistedJointOverlap(twist)
    expect(found.overlapMm).toBe(10)
    expect(found.bondWidthMm).toBe(0.5)
    expect(found.conductorsOhmPerM[0] / 0.0172).toBeCloseTo(Math.sqrt(1 + (Math.PI * 1.13 * 0.2) ** 2), 14)
    expect(found.conductorsOhmPerM[1] / 0.03).toBeCloseTo(Math.sqrt(1 + (Math.PI * 0.8 * 0.2) ** 2), 14)
    expect(found.interfaceSPerM).toBe(filletOf(0.8))
  })

  test('with almost no twist it equals the straight lap', () => {
    const found = twistedJointOverlap({ ...twist, turns: 1e-6, pitchMm: 1e7 })
    const straight = { overlapMm: 10, conductorsOhmPerM, interfaceSPerM: filletOf(0.8) }
    expect(lapJointResistanceOhm(found) / lapJointResistanceOhm(straight)).toBeCloseTo(1, 12)
  })

  test('tightest at pi times the thicker wire, whichever that is', () => {
    const tightest = Math.PI * 1.13
    expect(twistedJointOverlap({ ...twist, pitchMm: tightest }).conductorsOhmPerM[0] / 0.0172).toBeCloseTo(Math.SQRT2, 14)
    expect(parameterOf(() => twistedJointOverlap({ ...twist, pitchMm: tightest * 0.999 }))).toBe('pitchMm')
    expect(parameterOf(() => twistedJointOverlap({ ...twist, diametersMm: [0.8, 1.13], pitchMm: tightest * 0.999 }))).toBe('pitchMm')
  })

  test.each([
    ['diametersMm.0', { diametersMm: [0, 1] }],
    ['diametersMm.1', { diametersMm: [1] }],
    ['diametersMm.0', { diametersMm: undefined }],
    ['pitchMm', { pitchMm: 0 }],
    ['filletWidthMm', { filletWidthMm: 0 }],
    ['turns', { turns: Number.NaN }],
    ['layerMm', { layerMm: Number.NaN }],
  ])('refuses %s: %j', (parameter, change) => {
    expect(parameterOf(() => twistedJointOverlap({ ...twist, ...change } as never))).toBe(parameter)
  })
})
