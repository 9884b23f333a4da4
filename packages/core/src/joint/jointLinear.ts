import type { JointModel, SideModel, WayOut } from './jointModel.ts'
import { referenceC } from './jointModel.ts'

/** Below this |(gamma l)^2| the three zone functions use their series, exact to double precision. */
const smallZone = 1e-6
/** Bisections of a current to double precision. */
const halvings = 60
/** Fraction of a bounding current at which stability is tested, to see if the bound itself is the limit. */
const justBelow = 1 - 1e-13
/** Film of infinite conductance: only the wall's conductance remains, or a surface at ambient temperature. */
const endlessWPerMK = 1e30

/** Rises above ambient are linear in the joint's rise: flow into a wire = Y rise - B; rise of the sleeve's end = (scale rise + lift)/c0. */
interface LinearSide {
  readonly stable: boolean
  readonly farRise: number
  readonly Y: number
  readonly B: number
  readonly scale: number
  readonly lift: number
  readonly c0: number
}

/** G' in W/(m K): wall and film in series. endless: without the film, the limit of radiation at high temperature. */
function conductancePerM(way: WayOut, endless: boolean): number {
  const filmMKPerW = endless ? 1 / endlessWPerMK : 1 / (Math.PI * way.outsideM * (way.filmWPerM2K ?? 0))
  return 1 / (way.wallMKPerW + filmMKPerW)
}

/** One wire at a current: a long fin with the sleeve's zone as a two-port in front. Rising resistance lowers G' by I^2 R20 alpha. */
export function linearSide(model: JointModel, side: SideModel, currentA: number, endless: boolean): LinearSide {
  const heating = currentA * currentA * side.r20
  const w = heating * (1 + side.alpha * (model.ambientC - referenceC))
  const Ge = conductancePerM(side.wire, endless) - heating * side.alpha
  if (!(Ge > 0)) return { stable: false, farRise: 0, Y: 0, B: 0, scale: 0, lift: 0, c0: 0 }
  const farRise = w / Ge
  const Y = Math.sqrt(side.kA * Ge)
  const B = Y * farRise
  if (side.sleeve === undefined) return { stable: true, farRise, Y, B, scale: 1, lift: 0, c0: 1 }
  const G1 = conductancePerM(side.sleeve, endless) - heating * side.alpha
  return withSleeve(side.kA, G1, model.sleeveM, w, farRise, Y, B)
}

/** cosh(gamma l), sinh(gamma l)/gamma and (cosh(gamma l) - 1)/gamma^2, all times e^(-gamma l); trigonometric where gamma^2 is negative. */
function withSleeve(kA: number, G1: number, l: number, w: number, farRise: number, Y: number, B: number): LinearSide {
  const x = (G1 / kA) * l * l
  const u = Math.sqrt(Math.abs(x))
  let scale = 1
  let C = 1 + x / 2
  let S = l * (1 + x / 6)
  let P = (l * l * (1 + x / 12)) / 2
  if (x >= smallZone) {
    scale = Math.exp(-u)
    C = (1 + scale * scale) / 2
    S = (-Math.expm1(-2 * u) / (2 * u)) * l
    P = ((Math.expm1(-u) / u) ** 2 / 2) * l * l
  } else if (x <= -smallZone) {
    C = Math.cos(u)
    S = (Math.sin(u) / u) * l
    P = 2 * ((Math.sin(u / 2) / u) * l) ** 2
  }
  const c0 = C + (Y * S) / kA
  // Past its first zero the zone runs away by itself, whatever the joint.
  const stable = c0 > 0 && (x >= 0 || u < Math.PI)
  return { stable, farRise, Y: (G1 * S + Y * C) / c0, B: (B * scale + w * S + (w * Y * P) / kA) / c0, scale, lift: (B * S + w * P) / kA, c0 }
}

/** True if a joint whose heat rises by I^2 R a W/K has a steady state. */
export function settles(model: JointModel, ownOhmPerK: number, currentA: number, endless: boolean): boolean {
  const first = linearSide(model, model.sides[0], currentA, endless)
  const second = linearSide(model, model.sides[1], currentA, endless)
  return first.stable && second.stable && first.Y + second.Y > currentA * currentA * ownOhmPerK
}

/** The smaller runaway current of the two long wires alone; Infinity if neither runs away. */
export function wireRunawayA(model: JointModel, endless: boolean): number {
  let smaller = Infinity
  for (const { wire, r20, alpha } of model.sides) {
    if (alpha > 0 && (wire.wallMKPerW > 0 || !endless)) smaller = Math.min(smaller, Math.sqrt(conductancePerM(wire, endless) / r20 / alpha))
  }
  return smaller
}

/** A current at which the zone under the sleeve has certainly run away: half a wave of its trigonometric functions fits in. */
function sleeveRunawayA(model: JointModel, endless: boolean): number {
  let smaller = Infinity
  for (const { sleeve, kA, r20, alpha } of model.sides) {
    if (alpha > 0 && sleeve !== undefined)
      smaller = Math.min(smaller, Math.sqrt((conductancePerM(sleeve, endless) + kA * (Math.PI / model.sleeveM) ** 2) / r20 / alpha))
  }
  return smaller
}

/** Largest current at which the joint has a steady state; null if unbounded. ownOhmPerK is the joint's resistance at 20 degC times its coefficient. */
export function largestJointCurrentA(model: JointModel, ownOhmPerK: number, endless: boolean): number | null {
  const cold = linearSide(model, model.sides[0], 0, endless).Y + linearSide(model, model.sides[1], 0, endless).Y
  const own = ownOhmPerK > 0 ? Math.sqrt(cold / ownOhmPerK) : Infinity
  const bound = Math.min(wireRunawayA(model, endless), sleeveRunawayA(model, endless), own)
  if (bound === Infinity) return null
  if (settles(model, ownOhmPerK, bound * justBelow, endless)) return bound
  let low = 0
  let high = bound
  for (let k = 0; k < halvings; k++) {
    const middle = 0.5 * (low + high)
    if (settles(model, ownOhmPerK, middle, endless)) low = middle
    else high = middle
  }
  return low
}
