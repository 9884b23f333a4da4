import { frozen } from '../../errors/inner.ts'
import { stefanBoltzmannWPerM2K4, zeroCelsiusK } from '../../heat/index.ts'
import type { HeatModel, HeatSource, HeatTube } from '../heatModel.ts'
import { filmAt } from '../streamFilm.ts'

/** Places in the list that `exchange` fills: flows in W and their slopes in W/K. */
export const X = /* @__PURE__ */ frozen({ joint: 0, jointByJoint: 1, jointByBody: 2, body: 3, bodyByJoint: 4, bodyByBody: 5, heatIn: 6, surface: 7 } as const)

/** Radiation of a surface of 1 m2 to its surroundings, per kelvin of rise. */
function radiationWPerM2K(emissivity: number, surfaceC: number, ambientC: number): number {
  const s = surfaceC + zeroCelsiusK
  const a = ambientC + zeroCelsiusK
  return emissivity * stefanBoltzmannWPerM2K4 * (s * s + a * a) * (s + a)
}

/** What the joint's own surface loses; a stream replaces its still air, radiation stays. */
function surface(model: HeatModel, rise: number, streamed: boolean, out: Float64Array): void {
  const { ambientC, emissivity, surfaceM2 } = model
  const film = streamed ? 0 : model.filmWPerM2K
  const k = rise + ambientC + zeroCelsiusK
  const lost = surfaceM2 * (radiationWPerM2K(emissivity, rise + ambientC, ambientC) + film) * rise
  out[X.joint] = (out[X.joint] as number) - lost
  out[X.jointByJoint] = (out[X.jointByJoint] as number) - surfaceM2 * (4 * emissivity * stefanBoltzmannWPerM2K4 * k * k * k + film)
  out[X.surface] = (out[X.surface] as number) + lost
}

/** A tube in a stream or in still air, and what it hands to the joint; the joint itself meets no air. */
function tube(model: HeatModel, source: HeatTube, rise: number, body: number, out: Float64Array): void {
  const { ambientC } = model
  const { outsideM2, emissivity } = source
  const link = source.gripped
    ? source.tightWPerK
    : source.gapM * filmAt(source.gapAir, (rise + body) / 2) + source.gapM2 * radiationWPerM2K(source.gapEmissivity, body + ambientC, rise + ambientC)
  const flow = link * (body - rise)
  const k = body + ambientC + zeroCelsiusK
  const still = source.film === null ? source.stillFilmWPerM2K : 0
  const stream = source.film === null ? 0 : filmAt(source.film, body)
  const lost = outsideM2 * (radiationWPerM2K(emissivity, body + ambientC, ambientC) + still) * body
  out[X.joint] = flow
  out[X.jointByJoint] = -link
  out[X.jointByBody] = link
  out[X.heatIn] = outsideM2 * stream * (source.airRiseK - body)
  out[X.surface] = lost
  out[X.body] = (out[X.heatIn] as number) - lost - flow
  out[X.bodyByJoint] = link
  out[X.bodyByBody] = -link - outsideM2 * (4 * emissivity * stefanBoltzmannWPerM2K4 * k * k * k + still + stream)
}

/** Flows into the joint, without its wires, and into the tool's own mass, at these rises; limited: the heater gives its most. */
export function exchange(model: HeatModel, source: HeatSource, limited: boolean, rise: number, body: number, out: Float64Array): void {
  out.fill(0)
  switch (source.kind) {
    case 'iron': {
      const power = limited ? source.maximumW : (source.setRiseK - rise) / source.resistanceKPerW
      out[X.joint] = power
      out[X.jointByJoint] = limited ? 0 : -1 / source.resistanceKPerW
      out[X.heatIn] = power
      break
    }
    case 'heavy-iron': {
      const g = 1 / source.contactResistanceKPerW
      const power = g * (body - rise)
      out[X.joint] = power
      out[X.jointByJoint] = -g
      out[X.jointByBody] = g
      out[X.body] = (limited ? source.maximumW : (source.setRiseK - body) / source.tipResistanceKPerW) - power
      out[X.bodyByJoint] = g
      out[X.bodyByBody] = (limited ? 0 : -1 / source.tipResistanceKPerW) - g
      out[X.heatIn] = power
      break
    }
    case 'air': {
      const g = filmAt(source.film, rise) * model.surfaceM2
      const power = g * (source.airRiseK - rise)
      out[X.joint] = power
      out[X.jointByJoint] = -g
      out[X.heatIn] = power
      break
    }
    case 'tube':
      tube(model, source, rise, body, out)
      return
    case 'none':
  }
  surface(model, rise, source.kind === 'air', out)
}

/** Whether the heater gives its most at these rises. */
export function isLimited(source: HeatSource, rise: number, body: number): boolean {
  if (source.kind === 'iron') return (source.setRiseK - rise) / source.resistanceKPerW > source.maximumW
  if (source.kind === 'heavy-iron') return (source.setRiseK - body) / source.tipResistanceKPerW > source.maximumW
  return false
}

/** The rise below which the heater gives its most: the joint's, or that of a tip with mass; -Infinity where it never does. */
export function limitedBelowK(source: HeatSource): number {
  if (source.kind === 'iron') return source.setRiseK - source.maximumW * source.resistanceKPerW
  if (source.kind === 'heavy-iron') return source.setRiseK - source.maximumW * source.tipResistanceKPerW
  return -Infinity
}
