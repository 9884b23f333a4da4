import type { WireHeat, WireStore } from '../../packages/core/src/ampacity/index.ts'
import { root } from '../numerics.ts'
import { lossWPerM } from './air.ts'

type Inputs = WireHeat & WireStore & { readonly currentA: number; readonly limitC: number; readonly timeS: number; readonly initialC: number }
const given = (value: number | undefined): number => value as number

/** One insulated wire: solves for the surface at which heat generated equals heat lost; the copper is hotter by the wall's drop. */
function wireOf(i: Inputs) {
  const d = given(i.conductorDiameterMm) / 1000
  const outside = d + (2 * i.insulationThicknessMm) / 1000
  const wall = i.insulationThicknessMm === 0 ? 0 : Math.log(outside / d) / (2 * Math.PI * i.insulationConductivityWPerMK)
  const ohm = (c: number) => (given(i.resistivity20OhmM) / (i.areaMm2 * 1e-6)) * (1 + given(i.temperatureCoefficient20PerK) * (c - 20))
  const loss = (surfaceC: number) => lossWPerM(surfaceC, outside, i)
  const conductor = (surfaceC: number) => surfaceC + loss(surfaceC) * wall
  return { d, outside, ohm, loss, conductor }
}

/** Lowest surface temperature, from the air upwards, with heat generated equal to heat lost. */
export function remadeSteadyC(i: Inputs): number {
  const { ohm, loss, conductor } = wireOf(i)
  const excess = (s: number) => i.currentA ** 2 * ohm(conductor(s)) - loss(s)
  let low = i.ambientC
  for (let high = i.ambientC + 0.5; high < 3000; high += 0.5) {
    if (excess(high) < 0) return conductor(root((s) => -excess(s), low, high))
    low = high
  }
  return Number.NaN
}

export function remadeSteadyA(i: Inputs): number {
  const { ohm, loss, conductor } = wireOf(i)
  const surface = root((s) => conductor(s) - i.limitC, i.ambientC - 50, i.limitC)
  return Math.sqrt(loss(surface) / ohm(i.limitC))
}

/** Conductor temperature after a time: fourth-order steps, their length by the rate. */
export function remadeAfterC(i: Inputs): number {
  const { d, outside, ohm, loss, conductor } = wireOf(i)
  const store =
    i.areaMm2 * 1e-6 * given(i.conductorDensityKgPerM3) * given(i.conductorSpecificHeatJPerKgK) +
    (given(i.insulationShare) * given(i.insulationDensityKgPerM3) * given(i.insulationSpecificHeatJPerKgK) * Math.PI * (outside ** 2 - d ** 2)) / 4
  const lossAt = (c: number) => loss(root((s) => conductor(s) - c, Math.min(i.ambientC, c) - 1, Math.max(i.ambientC, c) + 1))
  const rate = (c: number) => (i.currentA ** 2 * ohm(c) - lossAt(c)) / store
  const n = 800
  const h = i.timeS / n
  let c = i.initialC
  for (let k = 0; k < n; k += 1) {
    const a = rate(c)
    const b = rate(c + (h / 2) * a)
    const e = rate(c + (h / 2) * b)
    c += (h / 6) * (a + 2 * b + 2 * e + rate(c + h * e))
  }
  return c
}
