import { ConvergenceError } from '../errors/index.ts'
import { wireRunawayA } from './jointLinear.ts'
import { type JointModel, referenceC } from './jointModel.ts'
import type { JointState } from './jointSite.ts'
import { ownHeatW } from './ownResistance.ts'
import { moveTo, sweep } from './sleeveSweep.ts'
import { startZone, type Zone } from './sleeveZone.ts'

/** Iteration limit; convergence is quadratic near the solution. */
const mostSteps = 80
/** Relative tolerance of all rises. */
const closeEnough = 1e-10
/** At a jump of Morgan's law no temperature balances exactly; after so many steps a bracket as wide as a jump is accepted. */
const patience = 30
const widthOfJump = 5e-3
/** If the joint's heat exceeds what the sides remove, the solution is far above: step up by this many K and this factor. */
const upK = 100
const upTimes = 2

/** Starting rises over the far wire. The second, above any wire, comes down on a steady state that the first can miss where heating outgrows cooling over a range. */
const firstRisesK = [50, 2000] as const

/** Both sides of a joint; identical wires share one. */
function bothZones(model: JointModel, firstRiseK: number): readonly [Zone, Zone] {
  const first = startZone(model, model.sides[0], firstRiseK)
  return [first, model.sides[1] === model.sides[0] ? first : startZone(model, model.sides[1], firstRiseK)]
}

function settled(model: JointModel, moved: number, rise: number, step: number): boolean {
  return moved <= (model.morgan && step >= patience ? widthOfJump : closeEnough) * (1 + rise)
}

/** Heat in W that both sides remove with the joint at a temperature; 0 if a wire alone is that hot already. Needs wires with a steady state. */
export function takenByCorrelation(model: JointModel, jointC: number): number {
  const rise = jointC - model.ambientC
  for (const firstRiseK of firstRisesK) {
    const zones = bothZones(model, firstRiseK)
    if (zones[0].far.coreC >= jointC || zones[1].far.coreC >= jointC) return 0
    const first = flowAt(zones[0], rise)
    const second = zones[1] === zones[0] ? first : flowAt(zones[1], rise)
    if (first !== null && second !== null) return first + second
  }
  throw new ConvergenceError('temperatures under the sleeve, in K', rise)
}

function flowAt(zone: Zone, rise: number): number | null {
  for (let step = 0; step < mostSteps; step++) {
    sweep(zone)
    if (settled(zone.model, moveTo(zone, rise), rise, step)) return zone.Y * rise - zone.J
  }
  return null
}

/** The joint's rise with both sides in balance, and the residual heat of the last step; null if it does not converge. */
function balance(
  model: JointModel,
  [first, second]: readonly [Zone, Zone],
  cold: number,
  perK: number,
): { readonly rise: number; readonly residual: number } | null {
  let rise = 0
  for (let step = 0; step < mostSteps; step++) {
    sweep(first)
    if (second !== first) sweep(second)
    const residual = Math.abs(cold + perK * rise - (first.Y + second.Y) * rise + first.J + second.J)
    const stiffness = first.Y + second.Y - perK
    rise = stiffness > 0 ? Math.max(0, (cold + first.J + second.J) / stiffness) : upTimes * rise + upK
    const moved = Math.max(moveTo(first, rise), second === first ? 0 : moveTo(second, rise))
    if (settled(model, moved, rise, step)) return { rise, residual }
  }
  return null
}

/** Steady state of the joint with natural convection and radiation. */
export function stateByCorrelation(model: JointModel, R: number, a: number): JointState {
  const { currentA, ambientC } = model
  const bound = wireRunawayA(model, true)
  const largestCurrentA = bound === Infinity ? null : bound
  const sleeved = model.sleeveM > 0
  if (currentA === 0) {
    const ambient = [ambientC, ambientC] as const
    return { jointC: ambientC, farC: ambient, wireFlowW: [0, 0], sleeveEndC: sleeved ? ambient : null, largestCurrentA, residual: 0 }
  }
  const cold = ownHeatW(currentA, R, a, ambientC)
  const perK = ownHeatW(currentA, R, a, referenceC) * a
  for (const firstRiseK of firstRisesK) {
    const zones = bothZones(model, firstRiseK)
    const found = balance(model, zones, cold, perK)
    if (found === null) continue
    const [first, second] = zones
    return {
      jointC: ambientC + found.rise,
      farC: [first.far.coreC, second.far.coreC],
      wireFlowW: [first.Y * found.rise - first.J, second.Y * found.rise - second.J],
      sleeveEndC: sleeved ? [ambientC + first.endRise, ambientC + second.endRise] : null,
      largestCurrentA,
      residual: found.residual,
    }
  }
  throw new ConvergenceError('joint temperature, in W', cold)
}
