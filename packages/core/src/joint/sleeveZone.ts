import type { JointModel, SideModel } from './jointModel.ts'
import { type Jump, jump } from './spreadJump.ts'
import { type FarWire, farWire, morganJumps, slopeStepK, surfaceLoss, type WireEnd, wireEnd } from './wireFlow.ts'

/** Grid steps per unit of gamma l, and their minimum: the error of Numerov's method, of fourth order, is below 1e-8 of the rise. */
const stepsPerLength = 40
const fewestSteps = 32
/** Morgan's jumps are steep even when smoothed, so his law gets finer steps. */
const morganRefinement = 2
/** Longest zone in units of 1/gamma; beyond this the ends do not influence each other, so longer zones are cut to it. */
const longestZone = 64

/** One side of the joint on a grid: node 0 is the sleeve's end, where the long wire begins, the last node the joint; without a sleeve both coincide. Each step linearises the heat balance of all nodes and eliminates from the end to the joint, which leaves flow = Y rise - J. */
export interface Zone {
  readonly model: JointModel
  readonly side: SideModel
  readonly far: FarWire
  readonly jumps: readonly Jump[]
  /** Grid step in m. */
  readonly h: number
  /** By node, rises above ambient: the sleeve's surface, its conductor, and the derivative of the conductor by the surface. */
  readonly surface: Float64Array
  readonly core: Float64Array
  readonly corePerSurface: Float64Array
  /** Surface temperature at the near end of the long wire, and its derivatives. */
  wireSurfaceC: number
  wire: WireEnd
  /** Rise of the sleeve's end. */
  endRise: number
  Y: number
  J: number
  /** (Loss less own heating)/kA, linearised in the rise: slope and constant, by node. */
  readonly slope: Float64Array
  readonly constant: Float64Array
  /** rise[k] = P[k] rise[k + 1] + Q[k]. */
  readonly P: Float64Array
  readonly Q: Float64Array
}

/** Initial state: everything firstRiseK above the far wire. */
export function startZone(model: JointModel, side: SideModel, firstRiseK: number): Zone {
  const far = farWire(model, side)
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
