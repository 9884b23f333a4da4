import { lapJointResistanceOhm } from '@strandwise/core/joint'
import { expect, test } from 'vitest'
import { explain } from './explain.ts'
import { formulas } from './formulas.ts'

const lap = { overlapMm: 10, conductorsOhmPerM: [0.0172, 0.0172], interfaceSPerM: 100_000 } as const

test('a closed form: value and unit of the core function, the formula, the values put in, each step', () => {
  const shown = explain('lapJointResistanceOhm', lap)
  expect(shown.value).toBe(lapJointResistanceOhm(lap))
  expect([shown.id, shown.unit]).toEqual(['lapJointResistanceOhm', 'Ω'])
  expect(shown.symbols.map(({ name, value }) => [name, value])).toEqual([
    ['L', 10],
    ['r_1', 0.0172],
    ['r_2', 0.0172],
    ['g', 100_000],
  ])
  expect(shown.formulaTex).toContain('\\tanh\\left(\\frac{u}{2}\\right)')
  expect(shown.substitutedTex).toContain('\\tanh\\left(\\frac{0.58652}{2}\\right)')
  expect(shown.substitutedTex).toMatch(/= 0\.0011145\\,\\mathrm\{\\Omega\{\}\}$/)
  expect(shown.steps.map(({ text, value }) => [text, value?.toPrecision(4)])).toEqual([
    ['both conductors together', '0.03440'],
    ['one over the transfer length', '58.65'],
    ['overlap in transfer lengths', '0.5865'],
    ['resistance over the overlap', '0.001115'],
  ])
  expect(shown.plain).toMatch(/^R = r_1 \* r_2 .* with L = 10 mm, r_1 = 0\.0172 Ω\/m, .*: R = 0\.0011145 Ω$/)
  expect(shown.source.status).toBe('derived')
  expect(shown.validity[0]).toContain('lower bound')
})

test('negative values and powers of ten stand in brackets', () => {
  const { steps } = explain('resistanceOhm', { areaMm2: 1, lengthM: 10, material: 'annealed-copper', temperatureC: -20 })
  expect(steps[0]?.tex).toContain('\\left(-20\\right)-20')
  expect(steps[1]?.tex).toContain('\\left(1.4531\\times 10^{-8}\\right)')
})

test('sizes with many zeros stand as powers of ten, those between as they are', () => {
  const { steps } = explain('interfaceConductanceSPerM', { bondWidthMm: 0.65, layerMm: 0.1, layerOhmM: 1.53e-7 })
  expect(steps.at(-1)?.tex).toMatch(/= 4\.2484\\times 10\^\{7\}\\,/)
  const shown = explain('resistanceOhm', { areaMm2: 1, lengthM: 0.0052, material: 'annealed-copper', temperatureC: 20 })
  expect(shown.substitutedTex).toMatch(/= 8\.9653\\times 10\^\{-5\}\\,/)
  expect(shown.substitutedTex).toContain('0.0052')
})

test('a residual far below its terms is shown as 0 to rounding, and keeps its value', () => {
  const overlap = explain('breakEvenOverlapMm', { conductorsOhmPerM: [0.0172, 0.0172], interfaceSPerM: 4.27e7 })
  const residual = overlap.steps.at(-1)
  expect(residual?.tex).toMatch(/= \\text\{0, to rounding\}$/)
  expect(overlap.plain).toMatch(/residual 0, to rounding$/)
  expect(Math.abs(residual?.value ?? 1)).toBeLessThan(1e-15)
  expect(overlap.steps[0]?.tex).not.toContain('rounding')
})

test('positional functions take an object of their parameters', () => {
  expect(explain('awgToAreaMm2', { gauge: 18 }).value).toBeCloseTo(0.823047, 5)
  expect(explain('galvanicDifferenceV', { metal1: 'annealed-copper', metal2: 'tinned-copper' }).value).toBe(0.25)
})

test('a function with several results shows each, the first as the value', () => {
  const { value, steps } = explain('fitSleeve', { suppliedInsideMm: 6, recoveredInsideMm: 2, largestMm: 5, smallestMm: 2.5 })
  expect(value).toBeCloseTo(0.25, 12)
  expect(steps.map((step) => step.value?.toFixed(3))).toEqual(['0.250', '0.200', '0.250', '0.125'])
})

test('lists have as many symbols as entries', () => {
  const { symbols, plain } = explain('voltageDropV', { currentA: 4, outResistanceOhm: 0.05, returnResistanceOhm: 0.06, jointsOhm: [0.001, 0.002] })
  expect(symbols.map(({ name }) => name)).toEqual(['I', 'R_out', 'R_back', 'R_1', 'R_2'])
  expect(plain).toContain('V = I * (R_out + R_back + R_1 + R_2)')
})

test('what the core function refuses, explain refuses; an unknown function is told with the known ones', () => {
  expect(() => explain('criticalRadiusMm', { insulationConductivityWPerMK: 0, filmWPerM2K: 3 })).toThrow(
    expect.objectContaining({ name: 'DomainError', parameter: 'insulationConductivityWPerMK' }),
  )
  for (const id of ['pi', '__proto__', 'constructor', '']) {
    expect(() => explain(id, {})).toThrow(expect.objectContaining({ name: 'UnknownEntryError', known: Object.keys(formulas) }))
  }
})

test('every formula refuses nothing at all with one of the errors, whatever is missing', () => {
  for (const id of Object.keys(formulas)) {
    for (const inputs of [undefined, null, 5, {}]) {
      expect(() => explain(id, inputs as never), `${id} with ${JSON.stringify(inputs)}`).toThrow(
        expect.objectContaining({ name: expect.stringMatching(/^(DomainError|UnknownEntryError)$/) }),
      )
    }
  }
})

test('every formula stands under its own id, with a source, a range of validity, and fitting names', () => {
  for (const [id, formula] of Object.entries(formulas)) {
    expect(formula.id).toBe(id)
    expect(formula.source.source.length, id).toBeGreaterThan(3)
    expect(formula.validity.length, id).toBeGreaterThan(0)
  }
})
