import { ConvergenceError } from '../errors/index.ts'
import { wireRunawayA } from './jointLinear.ts'
import { type JointModel, ownHeatW } from './jointModel.ts'
import { bySecants } from './jointSecants.ts'
import type { JointState } from './jointSite.ts'
import { risingRootAbove } from './risingRoot.ts'
import { type HotJoint, type HotSide, hotSide, shotAt } from './sleeveZone.ts'

/** Step in K with which the joint's temperature is bracketed. */
const bracketK = 40

/** The joint temperature at which both sides take what the joint makes; null where none is found. */
export function hotJoint(model: JointModel, hot: readonly [HotSide, HotSide], R: number, a: number): HotJoint | null {
  return bySecants(model, hot, R, a) ?? byBracket(model, hot, R, a)
}

/** Heat that both sides take with the joint at a temperature, in W; 0 where a wire alone is that hot already. */
export function takenByCorrelation(model: JointModel, jointC: number): number {
  const first = hotSide(model, model.sides[0])
  const second = model.sides[1] === model.sides[0] ? first : hotSide(model, model.sides[1])
  if (first === null || second === null || first.far.coreC >= jointC || second.far.coreC >= jointC) return 0
  const one = shotAt(first, jointC)
  const other = second === first ? one : shotAt(second, jointC)
  return one === null || other === null ? 0 : one.flowW + other.flowW
}

/** Each side is asked for its flow at the same temperature, which is bracketed from the ambient up: nothing in the model is colder. */
function byBracket(model: JointModel, [first, second]: readonly [HotSide, HotSide], R: number, a: number): HotJoint | null {
  const excess = (T: number): number => {
    const taken = (shotAt(first, T)?.flowW ?? Number.NaN) + (shotAt(second, T)?.flowW ?? Number.NaN)
    return taken - ownHeatW(model.currentA, R, a, T)
  }
  const jointC = risingRootAbove(excess, model.ambientC, bracketK)
  if (jointC === null) return null
  const one = shotAt(first, jointC)
  const other = shotAt(second, jointC)
  return one === null || other === null ? null : { jointC, shots: [one, other] }
}

/** The joint at rest with natural convection and radiation. */
export function stateByCorrelation(model: JointModel, R: number, a: number): JointState {
  const { currentA, ambientC, sides } = model
  const bound = wireRunawayA(model, true)
  const largestCurrentA = bound === Infinity ? null : bound
  const sleeved = model.sleeveM > 0
  if (currentA === 0) {
    const ambient = [ambientC, ambientC] as const
    return { jointC: ambientC, farC: ambient, wireFlowW: [0, 0], sleeveEndC: sleeved ? ambient : null, largestCurrentA, residual: 0 }
  }
  const first = hotSide(model, sides[0])
  const second = sides[1] === sides[0] ? first : hotSide(model, sides[1])
  const found = first === null || second === null ? null : hotJoint(model, [first, second], R, a)
  if (first === null || second === null || found === null) throw new ConvergenceError('joint temperature, in W', ownHeatW(currentA, R, a, ambientC))
  const [one, other] = found.shots
  return {
    jointC: found.jointC,
    farC: [first.far.coreC, second.far.coreC],
    wireFlowW: [one.flowW, other.flowW],
    sleeveEndC: sleeved ? [one.endC, other.endC] : null,
    largestCurrentA,
    residual: Math.abs(ownHeatW(currentA, R, a, found.jointC) - one.flowW - other.flowW),
  }
}
