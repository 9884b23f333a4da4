import { absoluteZeroC, NoSteadyStateError, requireFiniteResult } from '../errors/index.ts'
import { morganBands } from '../heat/index.ts'
import { surfaceRayleigh } from '../heat/inner.ts'
import { type Balance, findRise, flowAtConductor, shed, startingShare } from './balance.ts'
import { estimateRise } from './estimateRise.ts'

const referenceC = 20
/** Rounding allowed at the ceiling, relative to absolute temperature. */
const ceilingSlack = 1e-9
/** Below one of Morgan's downward jumps a lower root can exist only within this factor in Rayleigh number. */
const lowerRootReach = 1.05

/** Current at which the conductor reaches this temperature; null if even zero current is too much. */
export function currentAtConductor(b: Balance, conductorC: number): number | null {
  if (conductorC <= b.ambientC) return null
  const flow = flowAtConductor(b, conductorC)
  if (!(flow > 0)) return null
  const allowedA = Math.sqrt(flow / b.resistance20OhmPerM / (1 + b.coefficientPerK * (conductorC - referenceC)))
  return requireFiniteResult('areaMm2', b.resistance20OhmPerM, allowedA)
}

/** Rise with a Rayleigh number just below an edge, from a rise a little above it. */
function riseBelowEdge(b: Balance, riseK: number, rayleigh: number, edge: number): number {
  let rise = riseK
  let Ra = rayleigh
  for (let n = 0; n < 60 && !(Ra < edge && Ra > edge * (1 - 1e-12)); n += 1) {
    rise *= (edge * (1 - 5e-13)) / Ra
    Ra = surfaceRayleigh(b.ambientC + rise, b.ambientC, b.outsideM, b.pressurePa)
  }
  return rise
}

/** At a drop of Morgan's law the balance may also hold below the drop; the lower root is the answer. */
function takeLowerRoot(b: Balance, heatWPerM: number, perK: number, scale: number): void {
  const rise = b.riseK
  const Ra = surfaceRayleigh(b.ambientC + rise, b.ambientC, b.outsideM, b.pressurePa)
  for (const { below: edge } of morganBands) {
    if (!(Ra >= edge && Ra < edge * lowerRootReach)) continue
    const before = riseBelowEdge(b, rise, Ra, edge)
    if (before < rise && heatWPerM + perK * before < shed(b, before) && findRise(b, heatWPerM, perK, scale, 1, before)) return
    shed(b, rise)
  }
}

/**
 * Steady temperature of the conductor, with b left at the solution; NaN without a steady state, Infinity if the surface alone passes ceilingC.
 *
 * With correlations the unknown is the surface rise: substituting the wall's drop and the conductor's resistance makes the heat linear in it.
 */
export function steadyConductorC(b: Balance, currentA: number, ceilingC: number): number {
  const { ambientC, insideMKPerW: R, filmMKPerW: film, coefficientPerK: al, sunWPerM } = b
  const w = currentA * currentA * b.resistance20OhmPerM
  requireFiniteResult('currentA', currentA, w)
  const g = w * al
  const scale = 1 - g * (film === null ? R : R + film)
  if (!(scale > 0)) return Number.NaN
  const atAmbient = 1 + al * (ambientC - referenceC)
  if (film !== null) {
    const heat = (w * (atAmbient + al * sunWPerM * film)) / scale
    b.evaluations += 1
    b.flowWPerM = heat + sunWPerM
    b.riseK = b.flowWPerM * film
    return ambientC + b.riseK + heat * R
  }
  const perK = g / scale
  const heat = (w * atAmbient) / scale + sunWPerM
  if (heat > 0) {
    const slope = estimateRise(b, heat, perK)
    const highest = Math.max(ceilingC - ambientC, 0) + 1
    if (!findRise(b, heat, perK, scale, slope, highest)) return Infinity
    if (b.morgan) takeLowerRoot(b, heat, perK, scale)
  } else shed(b, 0)
  return ambientC + b.riseK + R * (b.flowWPerM - sunWPerM)
}

/** The current that reaches ceilingC, solved from a fresh start; 0 if none is allowed. */
export function currentAtCeiling(b: Balance, ceilingC: number): number {
  b.outerShare = startingShare
  b.outerWPerMK = 0
  return currentAtConductor(b, ceilingC) ?? 0
}

/** Throws NoSteadyStateError with the current that reaches ceilingC. */
export function failSteady(b: Balance, cause: 'runaway' | 'ceiling', ceilingC: number): never {
  throw new NoSteadyStateError(cause, currentAtCeiling(b, ceilingC), ceilingC)
}

/** True if a steady temperature is at or below its ceiling, rounding aside. */
export function steadyWithin(conductorC: number, ceilingC: number): boolean {
  return conductorC <= ceilingC + ceilingSlack * (ceilingC - absoluteZeroC)
}

/** Steady temperature of the conductor; NoSteadyStateError if there is none or it passes ceilingC. */
export function conductorAtCurrent(b: Balance, currentA: number, ceilingC: number): number {
  const conductorC = steadyConductorC(b, currentA, ceilingC)
  if (Number.isNaN(conductorC)) return failSteady(b, 'runaway', ceilingC)
  return steadyWithin(conductorC, ceilingC) ? conductorC : failSteady(b, 'ceiling', ceilingC)
}
