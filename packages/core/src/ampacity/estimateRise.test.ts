import { expect, test } from 'vitest'
import { shed } from './balance.ts'
import { estimateRise } from './estimateRise.ts'
import { resolveWire } from './resolveWire.ts'
import { steadyConductorC } from './steady.ts'

const base = { insulationThicknessMm: 0.7, insulationConductivityWPerMK: 0.17, temperatureCoefficient20PerK: 0 }
const currents: readonly (readonly [number, number])[] = [
  [0.5, 3],
  [0.5, 9],
  [4, 20],
  [4, 50],
  [35, 90],
  [35, 240],
]

test.each([
  ['still air, by Churchill and Chu', {}],
  ['still air, by Morgan', { correlation: 'morgan' }],
  ['a draught', { airSpeedMPerS: 1 }],
  ['a wind', { airSpeedMPerS: 12 }],
  ['thin air', { pressurePa: 50_000 }],
  ['wind in thin air', { airSpeedMPerS: 6, pressurePa: 50_000 }],
  ['a bright surface', { emissivity: 0.1 }],
  ['hot air', { ambientC: 120 }],
] as const)('%s: within a tenth or so of the rise that balances, and of the slope there', (_name, change) => {
  for (const [areaMm2, currentA] of currents) {
    const b = resolveWire({ ...base, areaMm2, ambientC: 30, ...change })
    steadyConductorC(b, currentA, 1000)
    const rise = b.riseK
    const heat = currentA ** 2 * b.resistance20OhmPerM
    const slope = estimateRise(b, heat, 0)
    const at = `${areaMm2} mm2, ${currentA} A, ${rise.toFixed(1)} K`
    expect(b.riseK / rise, at).toBeGreaterThan(0.88)
    expect(b.riseK / rise, at).toBeLessThan(1.15)
    const exact = Math.log(shed(b, rise * 1.01) / shed(b, rise / 1.01)) / (2 * Math.log(1.01))
    expect(slope / exact, at).toBeGreaterThan(0.88)
    expect(slope / exact, at).toBeLessThan(1.15)
  }
})

test('heat that grows with the rise: the start lies as much higher, its slope is that of both', () => {
  const b = resolveWire({ ...base, areaMm2: 1, ambientC: 30, temperatureCoefficient20PerK: 0.00393 })
  steadyConductorC(b, 20, 1000)
  const rise = b.riseK
  const g = 400 * b.resistance20OhmPerM * 0.00393
  const scale = 1 - g * b.insideMKPerW
  const heat = (400 * b.resistance20OhmPerM * (1 + 0.00393 * 10)) / scale
  const perK = g / scale
  const slope = estimateRise(b, heat, perK)
  expect(b.riseK / rise).toBeGreaterThan(0.88)
  expect(b.riseK / rise).toBeLessThan(1.15)
  const share = (by: number) => shed(b, rise * by) / (heat + perK * rise * by)
  expect(slope / (Math.log(share(1.01) / share(1 / 1.01)) / (2 * Math.log(1.01)))).toBeCloseTo(1, 0)
})

test('where the heat grows nearly as fast as it is shed, the start is a rough one and the slope is 1', () => {
  const b = resolveWire({ ...base, areaMm2: 1, ambientC: 30, emissivity: 0, correlation: 'morgan' })
  const rough = 10 / (0.085 + 19 * b.outsideM)
  expect(estimateRise(b, 10, 1e9)).toBe(1)
  expect(b.riseK).toBeCloseTo(rough, 12)
})
