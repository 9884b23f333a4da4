import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Interval, MetalName } from '../materials/index.ts'
import { awgToAreaMm2, awgToDiameterMm } from './awg.ts'
import { formatAwg } from './awgText.ts'
import { identifyWire } from './identifyWire.ts'
import { massKgPerM } from './mass.ts'
import { resistanceOhmPerM } from './resistance.ts'

const about = (value: number, share: number): Interval => ({ low: value * (1 - share), high: value * (1 + share) })
const gauges = fc.integer({ min: -5, max: 40 })
const solid = (gauge: number, material: MetalName, temperatureC = 20) => ({
  strandCount: 1,
  conductorDiameterMm: about(awgToDiameterMm(gauge), 0.005),
  massKgPerM: about(massKgPerM({ areaMm2: awgToAreaMm2(gauge), material }), 0.01),
  resistanceOhmPerM: about(resistanceOhmPerM({ areaMm2: awgToAreaMm2(gauge), material, temperatureC }), 0.01),
  temperatureC,
})
const first = (input: Parameters<typeof identifyWire>[0]) => identifyWire(input)[0]

describe('every gauge is found again', () => {
  test.each(['annealed-copper', 'copper-clad-aluminium', 'aluminium-1350'] as const)(
    'solid %s, caliper, scale and ohmmeter, at any temperature',
    (material) => {
      fc.assert(
        fc.property(gauges, fc.double({ min: -60, max: 200, noNaN: true }), (gauge, temperatureC) => {
          expect(first(solid(gauge, material, temperatureC))).toMatchObject({ standard: 'AWG', size: formatAwg(gauge), material, conflicts: [] })
        }),
      )
    },
  )

  test('by mass and resistance alone the metal comes out, whatever the size', () => {
    fc.assert(
      fc.property(gauges, fc.constantFrom('annealed-copper', 'copper-clad-aluminium'), (gauge, material: MetalName) => {
        const { massKgPerM: mass, resistanceOhmPerM: resistance } = solid(gauge, material)
        expect(first({ massKgPerM: mass, resistanceOhmPerM: resistance })).toMatchObject({ material, conflicts: [] })
      }),
    )
  })
})

describe('copper-clad aluminium distinguished from copper', () => {
  const strands = { strandCount: 16, strandDiameterMm: about(0.2545, 0.01) }

  test('16 strands of 0.25 mm that resist 33 mohm/m are no copper: every copper of that size conflicts', () => {
    const found = identifyWire({ ...strands, resistanceOhmPerM: about(0.0333, 0.02) })
    expect(found[0]).toMatchObject({ standard: 'AWG', size: '18', material: 'copper-clad-aluminium', conflicts: [] })
    for (const { material, conflicts } of found) if (material === 'annealed-copper') expect(conflicts.length).toBeGreaterThan(0)
  })

  test('the same strands at 2.8 g/m are no copper either, and at 7.4 g/m are', () => {
    expect(first({ ...strands, massKgPerM: about(0.00278, 0.02) })).toMatchObject({ size: '18', material: 'copper-clad-aluminium', conflicts: [] })
    expect(first({ ...strands, massKgPerM: about(0.0074, 0.02) })).toMatchObject({ size: '18', material: 'annealed-copper', conflicts: [] })
  })

  test('geometry alone cannot decide: both fit, copper is listed first', () => {
    const fits = identifyWire(strands).filter(({ size, conflicts }) => size === '18' && conflicts.length === 0)
    expect(fits.map(({ material }) => material)).toEqual(expect.arrayContaining(['annealed-copper', 'copper-clad-aluminium']))
    expect(fits[0]?.material).toBe('annealed-copper')
  })
})

describe('conflicts', () => {
  test('a corroded wire: caliper and strands say 1.5 mm2, the resistance disagrees and is named', () => {
    const found = first({ strandCount: 30, strandDiameterMm: about(0.25, 0.01), conductorDiameterMm: about(1.58, 0.02), resistanceOhmPerM: about(0.08, 0.02) })
    expect(found).toMatchObject({ conflicts: ['resistanceOhmPerM'] })
  })

  test('two readings that fit a size each but not each other: the one farther off is named', () => {
    // 18 AWG copper: mass at the top of the gauge's range, resistance that implies the bottom of it.
    const found = identifyWire({ massKgPerM: about(0.0081, 0.002), resistanceOhmPerM: about(0.0244, 0.002) })
    const copper = found.find(({ standard, size, material }) => standard === 'AWG' && size === '18' && material === 'annealed-copper')
    expect(copper?.conflicts).toHaveLength(1)
  })

  test('fits come before conflicts, fewer conflicts before more, and what everything contradicts is left out', () => {
    const reading = fc.double({ min: 0.0005, max: 5, noNaN: true })
    fc.assert(
      fc.property(reading, reading, reading, (diameter, mass, resistance) => {
        const input = { conductorDiameterMm: about(diameter, 0.03), massKgPerM: about(mass, 0.03), resistanceOhmPerM: about(resistance, 0.03) }
        const counts = identifyWire(input).map(({ conflicts }) => conflicts.length)
        expect(counts).toEqual(counts.toSorted((a, b) => a - b))
        for (const count of counts) expect(count).toBeLessThan(3)
      }),
    )
  })

  test('the same input gives the same list, and is not changed', () => {
    const input = Object.freeze({ strandCount: 7, strandDiameterMm: Object.freeze(about(0.4, 0.02)) })
    expect(identifyWire(input)).toEqual(identifyWire(input))
  })
})

describe('edges', () => {
  const good = solid(18, 'annealed-copper')
  test.each(['conductorDiameterMm', 'massKgPerM', 'resistanceOhmPerM', 'strandDiameterMm'] as const)(
    '%s: ends at and past 0, not numbers, and turned about',
    (name) => {
      for (const value of [0, -1, Number.NaN, Number.POSITIVE_INFINITY, undefined]) {
        expect(() => identifyWire({ ...good, [name]: { low: value, high: 1 } })).toThrow(
          expect.objectContaining({ name: 'DomainError', parameter: `${name}.low` }),
        )
        expect(() => identifyWire({ ...good, [name]: { low: 1, high: value } })).toThrow(
          expect.objectContaining({ name: 'DomainError', parameter: `${name}.high` }),
        )
      }
      expect(() => identifyWire({ ...good, [name]: { low: 2, high: 1 } })).toThrow(
        expect.objectContaining({ code: 'contradiction', parameter: `${name}.high` }),
      )
      expect(() => identifyWire({ ...good, [name]: 1 as unknown as Interval })).toThrow(expect.objectContaining({ name: 'DomainError', parameter: name }))
    },
  )

  test('strand count and temperature by name', () => {
    for (const strandCount of [0, 1.5, Number.NaN, Number.POSITIVE_INFINITY])
      expect(() => identifyWire({ ...good, strandCount })).toThrow(expect.objectContaining({ name: 'DomainError', parameter: 'strandCount' }))
    for (const temperatureC of [-60.1, 300.1, Number.NaN])
      expect(() => identifyWire({ ...good, temperatureC })).toThrow(expect.objectContaining({ name: 'DomainError', parameter: 'temperatureC' }))
  })

  test('a strand count alone, or strands uncounted, tell no size', () => {
    for (const input of [{}, { strandCount: 7 }, { strandDiameterMm: about(0.2, 0.01) }, { temperatureC: 20 }])
      expect(() => identifyWire(input)).toThrow(expect.objectContaining({ name: 'DomainError', code: 'missing' }))
  })

  test('readings at the ends of the numbers give a list, not a crash', () => {
    for (const value of [Number.MIN_VALUE, Number.MAX_VALUE]) {
      const interval = { low: value, high: value }
      expect(identifyWire({ conductorDiameterMm: interval })).toEqual([])
      expect(Array.isArray(identifyWire({ ...good, massKgPerM: interval, resistanceOhmPerM: interval }))).toBe(true)
    }
  })
})
