import { type JointModel, referenceC, type SideModel, type WayOut } from './jointModel.ts'
import { surfaceC, surfaceLoss } from './wireFlow.ts'

/** Corrections of a surface temperature before the bracketed search takes over. */
const mostCorrections = 6
/** Share of the rise to which a surface temperature is found; the loss is then corrected along the slope, so it errs by a hundredth of that. */
const closeEnough = 1e-7
/** Step in K for the first slope. */
const slopeStepK = 0.1

/** Loss of a stretch by the temperature of its conductor. It remembers its last answer: neighbouring calls then need two evaluations of the surface. */
export interface ZoneLoss {
  readonly model: JointModel
  readonly way: WayOut
  /** I^2 R20 in W/m, and the temperature coefficient. */
  readonly heating: number
  readonly alpha: number
  coreC: number
  surfaceC: number
  /** Slope of the surface's loss by its own temperature, in W/(m K). */
  lossPerK: number
}

/** Begins at a conductor temperature at or above ambient. */
export function zoneLoss(model: JointModel, side: SideModel, way: WayOut, coreC: number): ZoneLoss {
  const ts = surfaceC(model, way, coreC)
  const lossPerK = (surfaceLoss(model, way, ts + slopeStepK) - surfaceLoss(model, way, ts)) / slopeStepK
  return { model, way, heating: model.currentA * model.currentA * side.r20, alpha: side.alpha, coreC, surfaceC: ts, lossPerK }
}

/** Loss less own heating, in W/m, with the conductor at core. */
export function zoneNet(zone: ZoneLoss, core: number): number {
  const heating = zone.heating * (1 + zone.alpha * (core - referenceC))
  return (zone.way.wallMKPerW === 0 ? surfaceLoss(zone.model, zone.way, core) : lossThroughWall(zone, core)) - heating
}

function lossThroughWall(zone: ZoneLoss, core: number): number {
  const { model, way } = zone
  const R = way.wallMKPerW
  const tolerance = closeEnough * (1 + Math.abs(core - model.ambientC))
  let slope = zone.lossPerK
  let ts = zone.surfaceC + (core - zone.coreC) / (1 + R * slope)
  let loss = surfaceLoss(model, way, ts)
  for (let k = 0; k < mostCorrections; k++) {
    const miss = (ts + R * loss - core) / (1 + R * slope)
    if (Math.abs(miss) <= tolerance) {
      zone.coreC = core
      zone.surfaceC = ts - miss
      zone.lossPerK = slope
      return loss - slope * miss
    }
    const next = surfaceLoss(model, way, ts - miss)
    const steeper = (loss - next) / miss
    if (steeper > 0) slope = steeper
    ts -= miss
    loss = next
  }
  const found = surfaceC(model, way, core)
  return surfaceLoss(model, way, found)
}
