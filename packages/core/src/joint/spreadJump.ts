import type { JointModel, WayOut } from './jointModel.ts'
import { slopeStepK, surfaceLoss } from './wireFlow.ts'

/** Morgan's law jumps by up to 0.8 %: under the sleeve each jump is smoothed over this fraction of its rise on either side, so that a grid resolves it. */
const spread = 0.05

/** A jump of the loss, in W/m, at a surface rise. */
export interface Jump {
  readonly rise: number
  readonly halfWidth: number
  readonly height: number
}

/** The jump at a surface temperature: the difference of the smooth pieces beside it. */
export function jump(model: JointModel, way: WayOut, atC: number): Jump {
  const rise = atC - model.ambientC
  const aside = slopeStepK(rise)
  const height = surfaceLoss(model, way, atC + aside) - 2 * surfaceLoss(model, way, atC - aside) + surfaceLoss(model, way, atC - 3 * aside)
  return { rise, halfWidth: spread * rise, height }
}

/** Loss of the sleeve's surface at a rise, with each jump smoothed over its width. */
export function spreadLoss(model: JointModel, way: WayOut, jumps: readonly Jump[], surface: number): number {
  let loss = surfaceLoss(model, way, model.ambientC + surface)
  for (const { rise, halfWidth, height } of jumps) {
    const off = (surface - rise) / halfWidth
    if (off > -1 && off < 1) loss += 0.5 * height * (off - Math.sign(off))
  }
  return loss
}
