import { surfaceFlowWPerM } from '../heat/inner.ts'
import { bundleCases, type WireBundle } from './bundleBalance.ts'
import { bundleStates, hottest } from './bundleStates.ts'

const referenceC = 20
/** Bisections; a double has 53 bits. */
const halvings = 60

/**
 * Gives the air temperature at which a single wire would be as hot as in its bundle: the effective ambient of a joint in that bundle.
 *
 * Never below the ambient; equal to it for a wire that its bundle does not warm.
 *
 * @equation bundleTemperatureC = conductorTemperatureC with ambientC = Te, at the same current
 * @symbol I - currentA - A - current in each loaded wire
 * @symbol n - loadedWires - 1 - wires that carry it
 * @symbol D - bundleOutsideMm - mm - outside diameter of the bundle
 * @symbol Ta - ambientC - C - temperature of the air outside the bundle
 * @symbol Te - result - C - effective ambient
 * @domain as bundleTemperatureC
 * @throws DomainError outside the domain, and for a bundle too thin to hold its wires
 * @throws UnknownEntryError for a metal that the table does not hold
 * @throws NoSteadyStateError where the bundle settles nowhere below the melting point
 * @example
 * effectiveAmbientC({ areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30, currentA: 8, loadedWires: 7, bundleOutsideMm: 7 }) // 50.0569
 * @source derived: the heat balance of one wire, solved for its air
 */
export function effectiveAmbientC(i: WireBundle & { readonly currentA: number }): number {
  const { centreC } = hottest(bundleStates(i))
  const b = bundleCases(i)[2].balance
  const heatWPerM = i.currentA * i.currentA * b.resistance20OhmPerM * (1 + b.coefficientPerK * (centreC - referenceC))
  const surfaceC = centreC - heatWPerM * b.insideMKPerW
  const shedWPerM = heatWPerM + b.sunWPerM
  if (b.filmMKPerW !== null) return Math.max(b.ambientC, surfaceC - shedWPerM * b.filmMKPerW)
  const flow = (airC: number): number => surfaceFlowWPerM(surfaceC, airC, b.outsideM, b.emissivity, b.airSpeedMPerS, b.pressurePa, b.morgan)
  let [low, high] = [b.ambientC, surfaceC]
  if (!(flow(low) > shedWPerM)) return b.ambientC
  for (let n = 0; n < halvings; n += 1) {
    const middle = 0.5 * (low + high)
    if (flow(middle) > shedWPerM) low = middle
    else high = middle
  }
  return high
}
