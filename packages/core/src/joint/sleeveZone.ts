import type { JointModel, SideModel, WayOut } from './jointModel.ts'
import { risingRoot, risingRootAbove } from './risingRoot.ts'
import { type FarWire, farWire, flowIntoWire } from './wireFlow.ts'
import { type ZoneLoss, zoneLoss, zoneNet } from './zoneLoss.ts'

/** Steps of the integration per unit of gamma l, and the fewest: Nystrom's rule of order five then errs by less than 1e-8 of the rise. */
const stepsPerLength = 24
const fewestSteps = 12
/** Length of a zone, in units of its own decay, past which its far end is out of the joint's reach to the last digits. */
const endlessZone = 16
/** Temperature in degC that ends an integration as too high; no metal is solid there. */
const runawayC = 1e5

/** What a side gives at the joint when its sleeve's end stands at endC; without sleeve the end is the joint. */
export interface Shot {
  readonly endC: number
  readonly jointC: number
  readonly flowW: number
}

/** A joint at rest: its temperature and what either side takes. */
export interface HotJoint {
  readonly jointC: number
  readonly shots: readonly [Shot, Shot]
}

/** One side, ready to be asked for the flow at a joint temperature. */
export interface HotSide {
  readonly model: JointModel
  readonly side: SideModel
  readonly far: FarWire
  readonly zone: ZoneLoss | null
  readonly steps: number
  /** The sleeve's own far state where its zone is so long that the joint doesn't feel its end. */
  readonly endless: FarWire | null
}

/** Null where the long wire has no steady temperature. */
export function hotSide(model: JointModel, side: SideModel): HotSide | null {
  const far = farWire(model, side, side.wire)
  if (far === null) return null
  if (side.sleeve === undefined) return { model, side, far, zone: null, steps: 0, endless: null }
  const zone = zoneLoss(model, side, side.sleeve, far.coreC)
  const own = zone.lossPerK / (1 + side.sleeve.wallMKPerW * zone.lossPerK) - zone.heating * side.alpha
  const length = model.sleeveM * Math.sqrt(Math.max(0, own) / side.kA)
  const endless = length > endlessZone ? farWire(model, side, side.sleeve) : null
  return { model, side, far, zone, steps: Math.max(fewestSteps, Math.ceil(stepsPerLength * length)), endless }
}

/** Starts at the sleeve's end with the wire's flow and integrates inward; infinite where the profile leaves the plausible range on the way. */
export function shoot(hot: HotSide, endC: number): Shot {
  const { model, side, far, zone, steps } = hot
  const flow = flowIntoWire(model, side, side.wire, far, endC)
  if (zone === null) return { endC, jointC: endC, flowW: flow }
  const kA = side.kA
  const h = model.sleeveM / steps
  const hh = h * h
  let T = endC
  let slope = flow / kA
  for (let k = 0; k < steps; k++) {
    const before = slope
    const k1 = zoneNet(zone, T) / kA
    const k2 = zoneNet(zone, T + (h / 5) * slope + (hh / 50) * k1) / kA
    const k3 = zoneNet(zone, T + ((2 * h) / 3) * slope + (hh / 27) * (7 * k2 - k1)) / kA
    const k4 = zoneNet(zone, T + h * slope + hh * (0.3 * k1 - (2 / 35) * k2 + (9 / 35) * k3)) / kA
    T += h * slope + (hh / 336) * (14 * k1 + 100 * k2 + 54 * k3)
    slope += (h / 336) * (14 * k1 + 125 * k2 + 162 * k3 + 35 * k4)
    // Below ambient there is no way back up: everything that heats bends the profile further down.
    if (T < model.ambientC || (Number.isNaN(T) && before < 0)) return { endC, jointC: -Infinity, flowW: -Infinity }
    if (!(T < runawayC)) return { endC, jointC: Infinity, flowW: Infinity }
  }
  return { endC, jointC: T, flowW: kA * slope }
}

/** The shot that ends at a joint temperature, found by bracketing its end; null where none does. */
export function shotAt(hot: HotSide, jointC: number): Shot | null {
  if (hot.zone === null) return shoot(hot, jointC)
  if (hot.endless !== null) return endlessShot(hot, hot.endless, jointC)
  const rise = jointC - hot.model.ambientC
  const endC = risingRootAbove((end) => shoot(hot, end).jointC - jointC, hot.model.ambientC, 1 + rise)
  return endC === null ? null : { ...shoot(hot, endC), jointC }
}

/** A zone without end seen from the joint; its end lies between the two far temperatures, where wire and sleeve exchange the same heat. */
function endlessShot(hot: HotSide, own: FarWire, jointC: number): Shot {
  const { model, side, far } = hot
  const sleeve = side.sleeve as WayOut
  const exchange = (end: number): number => flowIntoWire(model, side, side.wire, far, end) + flowIntoWire(model, side, sleeve, own, end)
  const endC = risingRoot(exchange, Math.min(far.coreC, own.coreC), Math.max(far.coreC, own.coreC))
  return { endC, jointC, flowW: flowIntoWire(model, side, sleeve, own, jointC) }
}
