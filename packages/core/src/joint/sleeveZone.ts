import { type JointModel, referenceC, type SideModel, type WayOut } from './jointModel.ts'
import { type FarWire, farWire, morganJumps, slopeStepK, surfaceLoss, type WireEnd, wireEnd } from './wireFlow.ts'

/** Steps of the grid per unit of gamma l, and the fewest: Numerov's rule errs with the fourth power of a step, by less than 1e-8 of the rise. */
const stepsPerLength = 32
const fewestSteps = 24
/** Morgan's law jumps by up to 0.8 %: under the sleeve each jump is spread over this share of its rise on either side, so that a grid can follow it. */
const spread = 0.05
/** Finer steps there. */
const morganRefinement = 2
/** Length of a zone, in units of its own decay, past which neither end feels the other to the last digits: longer ones are cut down to it. */
const longestZone = 64

/**
 * One side of the joint on a grid: node 0 is the sleeve's end, where the long wire takes over, the last node the joint; without sleeve both are one.
 * Each step makes the heat balance of all nodes linear in their temperatures, and runs from the end to the joint: there the side is flow = Y rise - J.
 */
export interface Zone {
  readonly model: JointModel
  readonly side: SideModel
  readonly far: FarWire
  readonly jumps: readonly Jump[]
  /** Length of a step in m. */
  readonly h: number
  /** By node, over ambient: the sleeve's surface, the conductor that belongs to it, and its change with the surface. */
  readonly surface: Float64Array
  readonly core: Float64Array
  readonly corePerSurface: Float64Array
  /** Surface temperature of the long wire's end, and what belongs to it. */
  wireSurfaceC: number
  wire: WireEnd
  /** Rise of the sleeve's end. */
  endRise: number
  Y: number
  J: number
  /** Loss less own heating over kA, made linear in the rise: slope and constant, by node. */
  readonly slope: Float64Array
  readonly constant: Float64Array
  /** rise[k] = P[k] rise[k + 1] + Q[k]. */
  readonly P: Float64Array
  readonly Q: Float64Array
}

/** A jump of the loss, in W/m, at a rise of the surface. */
interface Jump {
  readonly rise: number
  readonly halfWidth: number
  readonly height: number
}

function jump(model: JointModel, way: WayOut, atC: number): Jump {
  const rise = atC - model.ambientC
  const aside = slopeStepK(rise)
  const height = surfaceLoss(model, way, atC + aside) - 2 * surfaceLoss(model, way, atC - aside) + surfaceLoss(model, way, atC - 3 * aside)
  return { rise, halfWidth: spread * rise, height }
}

/** Loss of the sleeve's surface with each jump spread evenly over its width. */
function spreadLoss(zone: Zone, way: WayOut, surface: number): number {
  let loss = surfaceLoss(zone.model, way, zone.model.ambientC + surface)
  for (const { rise, halfWidth, height } of zone.jumps) {
    const off = (surface - rise) / halfWidth
    if (off > -1 && off < 1) loss += 0.5 * height * (off - Math.sign(off))
  }
  return loss
}

/** Begins with everything firstRiseK above the far wire. Null where the long wire has no steady temperature. */
export function startZone(model: JointModel, side: SideModel, firstRiseK: number): Zone | null {
  const far = farWire(model, side)
  if (far === null) return null
  const way = side.sleeve
  let n = 0
  let l = 0
  if (way !== undefined) {
    const ts = far.surfaceC + firstRiseK
    const step = slopeStepK(ts - model.ambientC)
    const lossPerK = (surfaceLoss(model, way, ts + step) - surfaceLoss(model, way, ts)) / step
    const net = lossPerK / (1 + way.wallMKPerW * lossPerK) - model.currentA * model.currentA * side.r20 * side.alpha
    const decayPerM = Math.sqrt(Math.abs(net) / side.kA)
    const length = Math.min(model.sleeveM * decayPerM, longestZone)
    l = Math.min(model.sleeveM, longestZone / decayPerM)
    n = Math.max(fewestSteps, Math.ceil(stepsPerLength * length)) * (model.morgan ? morganRefinement : 1)
  }
  const jumps = way !== undefined && model.morgan ? morganJumps(model, way).map((atC) => jump(model, way, atC)) : []
  const nodes = (): Float64Array => new Float64Array(n + 1)
  return {
    model,
    side,
    far,
    jumps,
    h: n === 0 ? 0 : l / n,
    surface: nodes().fill(far.surfaceC - model.ambientC + firstRiseK),
    core: nodes(),
    corePerSurface: nodes(),
    wireSurfaceC: far.surfaceC + firstRiseK,
    wire: wireEnd(model, side, far, far.surfaceC + firstRiseK),
    endRise: 0,
    Y: 0,
    J: 0,
    slope: nodes(),
    constant: nodes(),
    P: nodes(),
    Q: nodes(),
  }
}

/** Makes the side linear about its present state and eliminates it from the sleeve's end to the joint. */
export function sweep(zone: Zone): void {
  const { model, side, h, P, Q, slope, constant } = zone
  const kA = side.kA
  zone.wire = wireEnd(model, side, zone.far, zone.wireSurfaceC)
  const W = zone.wire.flowWPerK
  const V = zone.wire.flowW - W * (zone.wire.coreC - model.ambientC)
  const n = slope.length - 1
  if (n === 0) {
    zone.Y = W
    zone.J = -V
    return
  }
  for (let k = 0; k <= n; k++) linearise(zone, k)
  const twelfth = (h * h) / 12
  const at = (list: Float64Array, k: number): number => list[k] as number
  // Ends: flow by the Hermite form of the same order, T1 - T0 - h T0' (1 + h^2 f'/12) = h^2 (5 f0 + f1)/12.
  const endScale = (h / kA) * (1 + twelfth * at(slope, 0))
  const first = 1 + endScale * W + 5 * twelfth * at(slope, 0)
  P[0] = (1 - twelfth * at(slope, 1)) / first
  Q[0] = -(endScale * V + twelfth * (5 * at(constant, 0) + at(constant, 1))) / first
  for (let k = 1; k < n; k++) {
    const lower = 1 - twelfth * at(slope, k - 1)
    const pivot = -2 - 10 * twelfth * at(slope, k) + lower * at(P, k - 1)
    P[k] = -(1 - twelfth * at(slope, k + 1)) / pivot
    Q[k] = (twelfth * (at(constant, k - 1) + 10 * at(constant, k) + at(constant, k + 1)) - lower * at(Q, k - 1)) / pivot
  }
  const lower = 1 - twelfth * at(slope, n - 1)
  const jointScale = kA / (h * (1 + twelfth * at(slope, n)))
  zone.Y = jointScale * (1 + 5 * twelfth * at(slope, n) - lower * at(P, n - 1))
  zone.J = jointScale * (lower * at(Q, n - 1) - twelfth * (5 * at(constant, n) + at(constant, n - 1)))
}

/** Takes over the temperatures that belong to a rise of the joint; returns how far any of them lies from the state that was made linear. */
export function moveTo(zone: Zone, jointRise: number): number {
  const { model, surface, core, corePerSurface, P, Q } = zone
  const n = surface.length - 1
  let rise = jointRise
  let moved = 0
  for (let k = n; k >= 0; k--) {
    if (k < n) rise = (P[k] as number) * rise + (Q[k] as number)
    if (n > 0) {
      const step = rise - (core[k] as number)
      moved = Math.max(moved, Math.abs(step))
      // Nothing is colder than ambient.
      surface[k] = Math.max(0, (surface[k] as number) + step / (corePerSurface[k] as number))
    }
  }
  const step = rise - (zone.wire.coreC - model.ambientC)
  zone.wireSurfaceC = Math.max(model.ambientC, zone.wireSurfaceC + step / zone.wire.corePerSurface)
  zone.endRise = rise
  return Math.max(moved, Math.abs(step))
}

/** Loss through the sleeve less own heating at one node, as a line through the present surface temperature. */
function linearise(zone: Zone, k: number): void {
  const { model, side } = zone
  const way = side.sleeve ?? side.wire
  const R = way.wallMKPerW
  const heating = model.currentA * model.currentA * side.r20
  const surface = zone.surface[k] as number
  const step = slopeStepK(surface)
  const loss = spreadLoss(zone, way, surface)
  const lossPerK = (spreadLoss(zone, way, surface + step) - loss) / step
  const core = surface + R * loss
  const perK = lossPerK / (1 + R * lossPerK)
  zone.core[k] = core
  zone.corePerSurface[k] = 1 + R * lossPerK
  zone.slope[k] = (perK - heating * side.alpha) / side.kA
  zone.constant[k] = (loss - perK * core - heating * (1 + side.alpha * (model.ambientC - referenceC))) / side.kA
}
