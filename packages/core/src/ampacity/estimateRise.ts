import { heatDefaults, stefanBoltzmannWPerM2K4, zeroCelsiusK } from '../heat/index.ts'
import type { Balance } from './balance.ts'

/** Starting guess for findRise, within about 10 %, with air properties as powers of temperature about 300 K. Leaves the rise in b.riseK and returns the slope of ln(shed/heat) there. Evaluates no term of the balance. */
export function estimateRise(b: Balance, heatWPerM: number, perK: number): number {
  const D = b.outsideM
  const rough = heatWPerM / (0.085 + 19 * D)
  const Tf = b.ambientC + zeroCelsiusK + 0.5 * rough
  const t = 300 / Tf
  const t2 = t * t
  const density = b.pressurePa / heatDefaults.pressurePa
  const bend = (0.5 * rough) / Tf
  const root = Math.cbrt(Math.sqrt(8.9e7 * D * D * D * rough * density * density * t2 * t2 * Math.sqrt(t)))
  const warm = b.morgan ? 0.95 * root : 0.6 + 0.322 * root
  let Nu = b.morgan ? warm : warm * warm
  let exponent = 1 + 0.8 * bend + (1 - 4.5 * bend) * (b.morgan ? 1 / 6 : (0.322 * root) / (3 * warm))
  if (b.airSpeedMPerS > 0) {
    const forced = 0.3 + 0.51 * Math.sqrt((b.airSpeedMPerS * D * density * t2) / 1.6e-5)
    if (forced > Nu) {
      Nu = forced
      exponent = 1
    }
  }
  const convection = Nu * 0.0262 * Math.PI * (0.2 + 0.8 / t)
  const radiation = b.emissivity * stefanBoltzmannWPerM2K4 * Math.PI * D * 4 * Tf * Tf * Tf
  const gap = heatWPerM + perK * rough
  const slope = (convection * exponent + radiation * (1 + 3 * bend)) / (convection + radiation) - (perK * rough) / gap
  b.riseK = slope > 0.2 ? rough * Math.exp(Math.log(gap / ((convection + radiation) * rough)) / slope) : rough
  return slope > 0.2 ? slope : 1
}
