import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bendStrain } from './bendStrain.ts'
import { flexLifeCycles } from './flexLife.ts'
import { freeSpanFrequencyHz } from './freeSpanFrequency.ts'
import { minimumBendRadiusMm } from './minimumBendRadius.ts'
import { flexLifeDefaults } from './routingDefaults.ts'

const positive = fc.double({ min: 1e-3, max: 1e3, noNaN: true })

describe('minimumBendRadiusMm', () => {
  test.each([
    ['unsupported', 10],
    ['supported', 3],
    ['coaxial', 10],
  ] as const)('%s: %i diameters unless a multiple is given', (rule, multiple) => {
    expect(minimumBendRadiusMm({ outsideDiameterMm: 2.5, rule })).toBe(2.5 * multiple)
    expect(minimumBendRadiusMm({ outsideDiameterMm: 2.5, rule, multiple: 6 })).toBe(15)
  })

  test.each([
    [{ outsideDiameterMm: 0 }, 'outsideDiameterMm'],
    [{ outsideDiameterMm: Number.NaN }, 'outsideDiameterMm'],
    [{ rule: 'loose' }, 'rule'],
    [{ rule: undefined }, 'rule'],
    [{ multiple: 0 }, 'multiple'],
    [{ multiple: Number.POSITIVE_INFINITY }, 'multiple'],
  ])('%o is refused by name', (change, parameter) => {
    const i = { outsideDiameterMm: 2, rule: 'unsupported', ...change } as Parameters<typeof minimumBendRadiusMm>[0]
    expect(() => minimumBendRadiusMm(i)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })
})

describe('bendStrain', () => {
  test('by hand: radius of a strand diameter stretches a third; no radius at all doubles the outside; a straight strand none', () => {
    expect(bendStrain({ strandDiameterMm: 0.3, bendRadiusMm: 0.3 })).toBeCloseTo(1 / 3, 15)
    expect(bendStrain({ strandDiameterMm: 0.3, bendRadiusMm: 0 })).toBe(1)
    expect(bendStrain({ strandDiameterMm: 0.3, bendRadiusMm: 1e300 })).toBeCloseTo(0, 300)
  })

  test('is d/(2R + d), the same in another unit, and falls as the bend widens', () => {
    fc.assert(
      fc.property(positive, positive, (d, R) => {
        const strain = bendStrain({ strandDiameterMm: d, bendRadiusMm: R })
        expect(Math.abs(strain / (d / (2 * R + d)) - 1)).toBeLessThan(1e-14)
        expect(Math.abs(bendStrain({ strandDiameterMm: d / 25.4, bendRadiusMm: R / 25.4 }) / strain - 1)).toBeLessThan(1e-14)
        expect(bendStrain({ strandDiameterMm: d, bendRadiusMm: 1.01 * R })).toBeLessThan(strain)
      }),
    )
  })

  test.each([
    [{ strandDiameterMm: 0 }, 'strandDiameterMm'],
    [{ strandDiameterMm: Number.NEGATIVE_INFINITY }, 'strandDiameterMm'],
    [{ bendRadiusMm: -1e-9 }, 'bendRadiusMm'],
    [{ bendRadiusMm: Number.NaN }, 'bendRadiusMm'],
  ])('%o is refused by name', (change, parameter) => {
    expect(() => bendStrain({ strandDiameterMm: 0.3, bendRadiusMm: 3, ...change })).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })
})

describe('flexLifeCycles', () => {
  test('a strain equal to the ductility breaks it in half a cycle', () => {
    expect(flexLifeCycles({ strainAmplitude: 0.3 }).cycles).toBe(0.5)
  })

  test('by hand: a tenth of the ductility with exponent -0.5 gives half of a hundred cycles, a factor 4 either way', () => {
    const life = flexLifeCycles({ strainAmplitude: 0.02, ductilityCoefficient: 0.2, ductilityExponent: -0.5, scatterFactor: 4 })
    expect(life.cycles).toBeCloseTo(50, 10)
    expect(life.low).toBeCloseTo(12.5, 10)
    expect(life.high).toBeCloseTo(200, 10)
  })

  test('the defaults are those of one record, marked from memory', () => {
    const { provenance, ...defaults } = flexLifeDefaults
    expect(provenance.status).toBe('from memory')
    expect(flexLifeCycles({ strainAmplitude: 0.01, ...defaults })).toEqual(flexLifeCycles({ strainAmplitude: 0.01 }))
  })

  test('turned round, the life gives its strain back; less strain lives longer', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 1, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.double({ min: -0.9, max: -0.3, noNaN: true }),
        (e, e_f, c) => {
          const { cycles } = flexLifeCycles({ strainAmplitude: e, ductilityCoefficient: e_f, ductilityExponent: c })
          expect(Math.abs((e_f * (2 * cycles) ** c) / e - 1)).toBeLessThan(1e-11)
          expect(flexLifeCycles({ strainAmplitude: e / 2, ductilityCoefficient: e_f, ductilityExponent: c }).cycles).toBeGreaterThan(cycles)
        },
      ),
    )
  })

  test.each([
    [{ strainAmplitude: 0 }, 'strainAmplitude'],
    [{ strainAmplitude: Number.NaN }, 'strainAmplitude'],
    [{ strainAmplitude: 5e-324 }, 'strainAmplitude'],
    [{ ductilityCoefficient: 0 }, 'ductilityCoefficient'],
    [{ ductilityExponent: 0 }, 'ductilityExponent'],
    [{ ductilityExponent: Number.NEGATIVE_INFINITY }, 'ductilityExponent'],
    [{ scatterFactor: 0.99 }, 'scatterFactor'],
    [{ scatterFactor: Number.POSITIVE_INFINITY }, 'scatterFactor'],
    [{ scatterFactor: 1e308, strainAmplitude: 1e-4 }, 'scatterFactor'],
  ])('%o is refused by name', (change, parameter) => {
    expect(() => flexLifeCycles({ strainAmplitude: 0.01, ductilityExponent: -0.5, ...change })).toThrow(
      expect.objectContaining({ name: 'DomainError', parameter }),
    )
  })
})

describe('freeSpanFrequencyHz', () => {
  const span = Object.freeze({ spanMm: 200, stiffnessNMm2: 1500, massKgPerM: 0.01, ends: 'pinned' } as const)

  test('by hand in metres: pi/(2 L^2) sqrt(EI/m) where pinned', () => {
    expect(freeSpanFrequencyHz(span)).toBeCloseTo((Math.PI / (2 * 0.2 ** 2)) * Math.sqrt(1500e-6 / 0.01), 10)
  })

  test('the root of the fixed beam solves cos k cosh k = 1, and is 2.27 times that of the pinned beam', () => {
    const ratio = freeSpanFrequencyHz({ ...span, ends: 'fixed' }) / freeSpanFrequencyHz(span)
    const k = Math.sqrt(ratio) * Math.PI
    expect(Math.cos(k) * Math.cosh(k)).toBeCloseTo(1, 10)
    expect(k).toBeGreaterThan(Math.PI)
    expect(k).toBeLessThan(2 * Math.PI)
  })

  test('half the span, four times the frequency; four times the stiffness or a quarter of the mass, twice', () => {
    fc.assert(
      fc.property(positive, positive, positive, fc.constantFrom('pinned', 'fixed'), (spanMm, stiffnessNMm2, massKgPerM, ends) => {
        const f = freeSpanFrequencyHz({ spanMm, stiffnessNMm2, massKgPerM, ends })
        expect(freeSpanFrequencyHz({ spanMm: spanMm / 2, stiffnessNMm2, massKgPerM, ends }) / f).toBeCloseTo(4, 12)
        expect(freeSpanFrequencyHz({ spanMm, stiffnessNMm2: 4 * stiffnessNMm2, massKgPerM, ends }) / f).toBeCloseTo(2, 12)
        expect(freeSpanFrequencyHz({ spanMm, stiffnessNMm2, massKgPerM: massKgPerM / 4, ends }) / f).toBeCloseTo(2, 12)
      }),
    )
  })

  test.each([
    [{ spanMm: 0 }, 'spanMm'],
    [{ spanMm: 1e-200 }, 'spanMm'],
    [{ stiffnessNMm2: Number.NaN }, 'stiffnessNMm2'],
    [{ massKgPerM: 0 }, 'massKgPerM'],
    [{ massKgPerM: Number.POSITIVE_INFINITY }, 'massKgPerM'],
    [{ ends: 'free' }, 'ends'],
  ])('%o is refused by name', (change, parameter) => {
    const i = { ...span, ...change } as Parameters<typeof freeSpanFrequencyHz>[0]
    expect(() => freeSpanFrequencyHz(i)).toThrow(expect.objectContaining({ name: 'DomainError', parameter }))
  })
})
