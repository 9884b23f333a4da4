import { largestJointCurrentA, linearSide } from './jointLinear.ts'
import type { JointModel } from './jointModel.ts'
import type { JointState } from './jointSite.ts'
import { ownHeatW } from './ownResistance.ts'

/** Steady state of the joint with given film coefficients, in closed form. */
export function linearState(model: JointModel, R: number, a: number): JointState {
  const { currentA, ambientC } = model
  const first = linearSide(model, model.sides[0], currentA, false)
  const second = linearSide(model, model.sides[1], currentA, false)
  const rise = (ownHeatW(currentA, R, a, ambientC) + first.B + second.B) / (first.Y + second.Y - currentA * currentA * R * a)
  const wireFlowW = [first.Y * rise - first.B, second.Y * rise - second.B] as const
  return {
    jointC: ambientC + rise,
    farC: [ambientC + first.farRise, ambientC + second.farRise],
    wireFlowW,
    sleeveEndC:
      model.sleeveM === 0 ? null : [ambientC + (first.scale * rise + first.lift) / first.c0, ambientC + (second.scale * rise + second.lift) / second.c0],
    largestCurrentA: largestJointCurrentA(model, R * a, false),
    residual: Math.abs(ownHeatW(currentA, R, a, ambientC + rise) - wireFlowW[0] - wireFlowW[1]),
  }
}

/** Heat in W that both sides remove with the joint at a temperature; 0 if a wire alone is that hot already. */
export function takenLinear(model: JointModel, jointC: number): number {
  const first = linearSide(model, model.sides[0], model.currentA, false)
  const second = linearSide(model, model.sides[1], model.currentA, false)
  const rise = jointC - model.ambientC
  if (first.farRise >= rise || second.farRise >= rise) return 0
  return (first.Y + second.Y) * rise - first.B - second.B
}
