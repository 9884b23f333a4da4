import { ConvergenceError } from '../errors/index.ts'
import { wireRunawayA } from './jointLinear.ts'
import { type JointModel, ownHeatW, referenceC } from './jointModel.ts'
import type { JointState } from './jointSite.ts'
import { moveTo, startZone, sweep, type Zone } from './sleeveZone.ts'

/** Steps of the search; each halves the digits that are missing once it is near. */
const mostSteps = 80
/** Share of the rise to which all temperatures are found, and the one that is enough where a jump of Morgan's law keeps them from settling. */
const closeEnough = 1e-10
const closeToJump = 1e-6
/** Steps after which only such a jump can be in the way. */
const patience = 30
/** Where the joint's heat outgrows what the sides take at the present temperature, the answer lies far above: this many K and this many times. */
const upK = 100
const upTimes = 2

/** Both sides of a joint; like wires share one. Null where a wire alone has no steady temperature. */
function bothZones(model: JointModel): readonly [Zone, Zone] | null {
  const first = startZone(model, model.sides[0])
  const second = model.sides[1] === model.sides[0] ? first : startZone(model, model.sides[1])
  return first === null || second === null ? null : [first, second]
}

function settled(moved: number, rise: number, step: number): boolean {
  return moved <= (step < patience ? closeEnough : closeToJump) * (1 + rise)
}

/** Heat that both sides take with the joint at a temperature, in W; 0 where a wire alone is that hot already. */
export function takenByCorrelation(model: JointModel, jointC: number): number {
  const zones = bothZones(model)
  if (zones === null || zones[0].far.coreC >= jointC || zones[1].far.coreC >= jointC) return 0
  const first = flowAt(zones[0], jointC - model.ambientC)
  return first + (zones[1] === zones[0] ? first : flowAt(zones[1], jointC - model.ambientC))
}

function flowAt(zone: Zone, rise: number): number {
  for (let step = 0; step < mostSteps; step++) {
    sweep(zone)
    if (settled(moveTo(zone, rise), rise, step)) return zone.Y * rise - zone.J
  }
  throw new ConvergenceError('temperatures under the sleeve, flow in W', zone.Y * rise - zone.J)
}

/** The joint at rest with natural convection and radiation. */
export function stateByCorrelation(model: JointModel, R: number, a: number): JointState {
  const { currentA, ambientC } = model
  const bound = wireRunawayA(model, true)
  const largestCurrentA = bound === Infinity ? null : bound
  const sleeved = model.sleeveM > 0
  const zones = currentA === 0 ? null : bothZones(model)
  if (zones === null) {
    const ambient = [ambientC, ambientC] as const
    return { jointC: ambientC, farC: ambient, wireFlowW: [0, 0], sleeveEndC: sleeved ? ambient : null, largestCurrentA, residual: 0 }
  }
  const [first, second] = zones
  const cold = ownHeatW(currentA, R, a, ambientC)
  const perK = ownHeatW(currentA, R, a, referenceC) * a
  let rise = 0
  let residual = cold
  for (let step = 0; step < mostSteps; step++) {
    sweep(first)
    if (second !== first) sweep(second)
    residual = cold + perK * rise - (first.Y + second.Y) * rise + first.J + second.J
    const stiffness = first.Y + second.Y - perK
    rise = stiffness > 0 ? Math.max(0, (cold + first.J + second.J) / stiffness) : upTimes * rise + upK
    const moved = Math.max(moveTo(first, rise), second === first ? 0 : moveTo(second, rise))
    if (settled(moved, rise, step)) {
      return {
        jointC: ambientC + rise,
        farC: [first.far.coreC, second.far.coreC],
        wireFlowW: [first.Y * rise - first.J, second.Y * rise - second.J],
        sleeveEndC: sleeved ? [ambientC + first.endRise, ambientC + second.endRise] : null,
        largestCurrentA,
        residual: Math.abs(residual),
      }
    }
  }
  throw new ConvergenceError('joint temperature, in W', Math.abs(residual))
}
