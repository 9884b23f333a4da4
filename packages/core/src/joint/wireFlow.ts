import { ConvergenceError } from '../errors/index.ts'
import { naturalFlowWPerM, radiationFlowWPerM, surfaceRayleigh } from '../heat/inner.ts'
import { type JointModel, referenceC, type SideModel, type WayOut } from './jointModel.ts'
import { risingRoot, risingRootAbove } from './risingRoot.ts'

/** Nodes and weights of five-point Gauss quadrature on -1 to 1, in closed form. */
const inner = Math.sqrt(5 - 2 * Math.sqrt(10 / 7)) / 3
const outer = Math.sqrt(5 + 2 * Math.sqrt(10 / 7)) / 3
const gauss = [
  { at: -outer, weight: (322 - 13 * Math.sqrt(70)) / 900 },
  { at: -inner, weight: (322 + 13 * Math.sqrt(70)) / 900 },
  { at: 0, weight: 128 / 225 },
  { at: inner, weight: (322 + 13 * Math.sqrt(70)) / 900 },
  { at: outer, weight: (322 - 13 * Math.sqrt(70)) / 900 },
] as const
/** Quadrature panels; the error of five points is of tenth order in their width. */
const pieces = 4
/** Rayleigh numbers at which Morgan's law jumps. */
const morganEdges = [1e-2, 1e2, 1e4, 1e7] as const
/** Within this fraction of the far rise the slope of the flow, 0/0 there, is taken at the far temperature. */
const nearFar = 1e-4
/** Highest rise in K searched for jumps. */
const highestRiseK = 5000

/** Heat loss of a surface at ts, in W/m; still air. */
export function surfaceLoss(model: JointModel, way: WayOut, ts: number): number {
  const natural = naturalFlowWPerM(ts, model.ambientC, way.outsideM, model.pressurePa, model.morgan)
  return natural + radiationFlowWPerM(ts, model.ambientC, way.outsideM, way.emissivity)
}

/** A long wire heated by its current alone: conductor, surface and loss far from the joint. */
export interface FarWire {
  readonly coreC: number
  readonly surfaceC: number
  readonly lossWPerM: number
  /** Surface temperatures at which Morgan's law jumps, ascending. */
  readonly jumpsC: readonly number[]
}

/** The long wire far from the joint. It has a steady state: its heating rises by I^2 R20 alpha a kelvin, and the wall conducts more than that. */
export function farWire(model: JointModel, side: SideModel): FarWire {
  const way = side.wire
  const heating = model.currentA * model.currentA * side.r20
  const b = heating * side.alpha
  const a = 1 - b * way.wallMKPerW
  const cold = heating * (1 + side.alpha * (model.ambientC - referenceC))
  const ts = risingRootAbove((x) => a * surfaceLoss(model, way, x) - cold - b * (x - model.ambientC), model.ambientC, 1)
  if (ts === null) throw new ConvergenceError('far temperature, in W/m', cold)
  const lossWPerM = surfaceLoss(model, way, ts)
  return { coreC: ts + way.wallMKPerW * lossWPerM, surfaceC: ts, lossWPerM, jumpsC: model.morgan ? morganJumps(model, way) : [] }
}

/** Near end of a long wire at a surface temperature: conductor temperature, heat flow, and the derivatives of both. */
export interface WireEnd {
  readonly coreC: number
  readonly flowW: number
  /** Derivative of the flow by the conductor's temperature, in W/K. */
  readonly flowWPerK: number
  /** Derivative of the conductor's temperature by the surface's. */
  readonly corePerSurface: number
}

/** Step in K of the numerical derivative of a loss at a rise; it affects convergence only, not the result. */
export function slopeStepK(rise: number): number {
  return 1e-5 * (1 + rise)
}

/** The long wire's near end by the first integral of its equation: flow^2 = 2 kA int (q - I^2 R') dT. Integrated over the surface temperature; the wall and the linear resistance are exact, only int (q - q_far) dTs needs quadrature. */
export function wireEnd(model: JointModel, side: SideModel, far: FarWire, ts: number): WireEnd {
  const way = side.wire
  const R = way.wallMKPerW
  const b = model.currentA * model.currentA * side.r20 * side.alpha
  const loss = surfaceLoss(model, way, ts)
  const τ = ts - far.surfaceC
  const Δq = loss - far.lossWPerM
  const integral = extraLoss(model, way, far, ts) - 0.5 * b * τ * τ + R * Δq * (0.5 * (1 - b * R) * Δq - b * τ)
  const flow = Math.sqrt(2 * side.kA * Math.max(0, integral)) * Math.sign(τ)
  const step = slopeStepK(ts - model.ambientC)
  const lossPerK = (surfaceLoss(model, way, ts + step) - loss) / step
  const corePerSurface = 1 + R * lossPerK
  const steady = Math.sqrt(side.kA * Math.max(0, lossPerK / corePerSurface - b))
  const pull = side.kA * (Δq - b * (τ + R * Δq))
  const near = Math.abs(τ) < nearFar * (1 + far.surfaceC - model.ambientC)
  return { coreC: ts + R * loss, flowW: flow, flowWPerK: near || flow === 0 ? steady : pull / flow, corePerSurface }
}

/** int (q - q_far) dTs from the far surface temperature to ts, panel by panel between jumps. */
function extraLoss(model: JointModel, way: WayOut, far: FarWire, ts: number): number {
  const low = Math.min(ts, far.surfaceC)
  const high = Math.max(ts, far.surfaceC)
  let from = low
  let sum = 0
  for (const jump of far.jumpsC) {
    if (jump <= low || jump >= high) continue
    sum += smoothLoss(model, way, far.lossWPerM, from, jump)
    from = jump
  }
  sum += smoothLoss(model, way, far.lossWPerM, from, high)
  return ts < far.surfaceC ? -sum : sum
}

/** One smooth panel, in the sixth root of the rise, in which both convection laws and radiation are smooth down to 0. */
function smoothLoss(model: JointModel, way: WayOut, farLoss: number, from: number, to: number): number {
  const low = (from - model.ambientC) ** (1 / 6)
  const half = ((to - model.ambientC) ** (1 / 6) - low) / (2 * pieces)
  let sum = 0
  for (let k = 0; k < pieces; k++) {
    const middle = low + (2 * k + 1) * half
    for (const { at, weight } of gauss) {
      const z = middle + at * half
      const z5 = z * z * z * z * z
      sum += weight * z5 * (surfaceLoss(model, way, model.ambientC + z5 * z) - farLoss)
    }
  }
  return 6 * half * sum
}

/** Surface temperatures at which the Rayleigh number crosses an edge of Morgan's law: it rises to a peak, then falls as the air thins. */
export function morganJumps(model: JointModel, way: WayOut): readonly number[] {
  const Ra = (ts: number): number => surfaceRayleigh(ts, model.ambientC, way.outsideM, model.pressurePa)
  let left = model.ambientC
  let right = model.ambientC + highestRiseK
  const end = right
  while (right - left > 1e-9 * end) {
    const a = left + (right - left) / 3
    const b = right - (right - left) / 3
    if (Ra(a) < Ra(b)) left = a
    else right = b
  }
  const found: number[] = []
  for (const edge of morganEdges) {
    if (Ra(left) <= edge) continue
    found.push(risingRoot((ts) => Ra(ts) - edge, model.ambientC, left))
    if (Ra(end) < edge) found.push(risingRoot((ts) => edge - Ra(ts), left, end))
  }
  return found.sort((a, b) => a - b)
}
