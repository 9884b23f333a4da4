import { ConvergenceError } from '../errors/index.ts'
import { surfaceFlowWPerM } from '../heat/inner.ts'

/** One wire, or one bundle, as the solvers see it: SI, nothing optional. The last five fields are their working space. */
export interface Balance {
  readonly outsideM: number
  readonly emissivity: number
  readonly ambientC: number
  readonly airSpeedMPerS: number
  readonly pressurePa: number
  readonly morgan: boolean
  readonly sunWPerM: number
  /** From conductor to surface. */
  readonly insideMKPerW: number
  /** From surface to air with a given film coefficient, else null. */
  readonly filmMKPerW: number | null
  readonly resistance20OhmPerM: number
  readonly coefficientPerK: number
  readonly meltingC: number
  /** Rise of the surface above the air, and its heat loss, at the last evaluation. */
  riseK: number
  flowWPerM: number
  evaluations: number
  /** Fraction of the conductor's rise that is across the surface film, and the slope of the heat loss, at the last solution; 0 if unknown. */
  outerShare: number
  outerWPerMK: number
}

/** Allowed residual in W/m, or as a fraction of a heat below 1 W/m, down to 1/1000. */
const residualAllowed = 1e-9
const leastHeatWPerM = 1e-3
const evaluationsAllowed = 400
/** Error of the surface's rise, as a fraction of the conductor's, below which a final secant step needs no evaluation. */
const surfaceNear = 1e-7
/** Starting guess: fraction of the rise across the surface film of a common wire. */
export const startingShare = 0.9
/** Relative difference below which two surface rises are equal in floating point. */
const sameRise = 4e-16

/** Heat loss by convection and radiation at a rise of the surface above the air; the only place that adds these terms. */
export function shed(b: Balance, riseK: number): number {
  b.riseK = riseK
  b.evaluations += 1
  b.flowWPerM = surfaceFlowWPerM(b.ambientC + riseK, b.ambientC, b.outsideM, b.emissivity, b.airSpeedMPerS, b.pressurePa, b.morgan)
  return b.flowWPerM
}

/**
 * Finds the surface where heatWPerM + perK x rise is shed, between 0 and highestK; false where even highestK sheds too little.
 * The unknown is ln(rise), the function ln(heat/shed), nearly a straight line: inverse interpolation through three points,
 * kept in a bracket because Morgan's law jumps. Starts at b.riseK with that slope; scale turns the difference into the residual.
 */
export function findRise(b: Balance, heatWPerM: number, perK: number, scale: number, slope: number, highestK: number): boolean {
  let low = 0
  let high = Infinity
  let rise = Math.min(b.riseK, highestK)
  let x = Math.log(rise)
  let x0 = 0
  let h0 = 0
  let x1 = 0
  let h1 = 0
  for (let n = 0; n < evaluationsAllowed; n += 1) {
    const flow = shed(b, rise)
    const heat = heatWPerM + perK * rise
    const excess = heat - flow
    if (Math.abs(excess) * scale <= residualAllowed * Math.min(1, Math.max(leastHeatWPerM, flow))) return true
    if (excess > 0) {
      if (rise >= highestK) return false
      low = rise
    } else high = rise
    if (high <= low * (1 + sameRise)) return true
    const h = Math.log(heat / flow)
    let step = h / slope
    if (n > 0) {
      const d = (x - x1) / (h - h1)
      step = n === 1 ? -h * d : -h * d + (h * h1 * (d - (x1 - x0) / (h1 - h0))) / (h - h0)
    }
    // Bisect if a step leaves the bracket or the search stops converging.
    const next = n > 3 && high < Infinity && Math.abs(h) > 0.5 * Math.abs(h1) ? Number.NaN : rise * Math.exp(step)
    x0 = x1
    h0 = h1
    x1 = x
    h1 = h
    if (next > low && next < high && next < highestK) {
      rise = next
      x += step
      continue
    }
    if (next > low && next < high) rise = highestK
    else if (high === Infinity) rise = Math.min(4 * rise, highestK)
    else rise = low === 0 ? 0.25 * high : Math.sqrt(low * high)
    x = Math.log(rise)
  }
  throw new ConvergenceError('heat balance of a wire, in W/m', heatWPerM + perK * b.riseK - b.flowWPerM)
}

/**
 * Net heat into the surface, W/m, of a conductor at this temperature: finds the surface where rise + R (shed - sun) is the
 * conductor's rise. Starts from the last solution's outerShare.
 */
export function flowAtConductor(b: Balance, conductorC: number): number {
  const R = b.insideMKPerW
  if (b.filmMKPerW !== null) {
    const flow = (conductorC - b.ambientC - b.sunWPerM * b.filmMKPerW) / (R + b.filmMKPerW)
    b.flowWPerM = flow + b.sunWPerM
    b.riseK = b.flowWPerM * b.filmMKPerW
    return flow
  }
  const whole = conductorC - b.ambientC + R * b.sunWPerM
  if (whole === 0 || R === 0) return shed(b, whole) - b.sunWPerM
  let near = 0
  let far = whole
  let rise = b.outerShare * whole
  let perK = b.outerWPerMK
  let rise0 = 0
  let flow0 = 0
  for (let n = 0; n < evaluationsAllowed; n += 1) {
    const flow = shed(b, rise)
    const over = rise + R * flow - whole
    // Heat flow is nearly a power of the rise; without a second point the exponent 1.15 is close.
    if (n > 0 && rise !== rise0) perK = (flow - flow0) / (rise - rise0)
    if (!(perK > 0)) perK = (1.15 * flow) / rise
    const step = over / (1 + R * perK)
    if (Math.abs(over) <= surfaceNear * Math.abs(whole) || Math.abs(far - near) <= sameRise * Math.abs(far)) {
      b.riseK = rise - step
      b.flowWPerM = flow - perK * step
      b.outerShare = b.riseK / whole
      b.outerWPerMK = perK
      return b.flowWPerM - b.sunWPerM
    }
    if (over > 0 === whole > 0) far = rise
    else near = rise
    rise0 = rise
    flow0 = flow
    rise -= step
    // A step may pass to the other side of the air: only what lies strictly between is kept.
    if (!((rise - near) * (far - rise) > 0) || n > 12) rise = 0.5 * (near + far)
  }
  throw new ConvergenceError('surface of a wire, in K', rise0)
}
