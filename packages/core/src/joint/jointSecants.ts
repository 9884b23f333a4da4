import { type JointModel, ownHeatW, referenceC } from './jointModel.ts'
import { type HotJoint, type HotSide, type Shot, shoot } from './sleeveZone.ts'

/** Secant steps before the bracketed search takes over. */
const mostSteps = 30
/** Share of the rise to which the joint is found. */
const closeEnough = 1e-10
/** First guesses of a sleeve's end, as rises above its far wire, in K. */
const firstRiseK = 20
const secondRiseK = 40

/** Both sides' ends are moved together along their last slopes until the two meet at one temperature with the flows in balance. */
export function bySecants(model: JointModel, [first, second]: readonly [HotSide, HotSide], R: number, a: number): HotJoint | null {
  if (first.endless !== null || second.endless !== null) return null
  const perK = ownHeatW(model.currentA, R, a, referenceC + 1) - ownHeatW(model.currentA, R, a, referenceC)
  const left = start(first)
  const right = first.side === second.side ? left : start(second)
  for (let k = 0; k < mostSteps; k++) {
    const p = left.last
    const q = right.last
    // Flows along their slopes against the joint's own heat: one linear equation for the joint's temperature.
    const surplus = ownHeatW(model.currentA, R, a, p.jointC) - p.flowW - q.flowW - right.perK * (p.jointC - q.jointC)
    const T = p.jointC + surplus / (left.perK + right.perK - perK)
    if (!(T > model.ambientC && T < Infinity)) return null
    const tolerance = closeEnough * (1 + T - model.ambientC)
    if (Math.abs(T - p.jointC) <= tolerance && Math.abs(T - q.jointC) <= tolerance) return { jointC: T, shots: [p, q] }
    advance(first, left, T)
    if (right !== left) advance(second, right, T)
  }
  return null
}

/** A side's last shot and its two slopes by the joint's temperature: of the flow, and of the sleeve's end. */
interface Secant {
  last: Shot
  perK: number
  endPerK: number
}

function start(hot: HotSide): Secant {
  const secant = { last: shoot(hot, hot.far.coreC + firstRiseK), perK: 0, endPerK: 1 }
  turn(secant, shoot(hot, hot.far.coreC + secondRiseK))
  return secant
}

function advance(hot: HotSide, secant: Secant, T: number): void {
  turn(secant, shoot(hot, secant.last.endC + secant.endPerK * (T - secant.last.jointC)))
}

function turn(secant: Secant, shot: Shot): void {
  const step = shot.jointC - secant.last.jointC
  if (step !== 0) {
    secant.perK = (shot.flowW - secant.last.flowW) / step
    secant.endPerK = (shot.endC - secant.last.endC) / step
  }
  secant.last = shot
}
