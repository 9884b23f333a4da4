import { stefanBoltzmannWPerM2K4, zeroCelsiusK } from '../../heat/index.ts'
import type { HeatModel, HeatSource, HeatState, HeatTube, Melt, TubeOnLap } from '../heatModel.ts'
import { filmAt } from '../streamFilm.ts'

/** Indices of the list that `exchange` fills: heat flows in W and their derivatives in W/K. */
export const X = { joint: 0, jointByJoint: 1, jointByBody: 2, body: 3, bodyByJoint: 4, bodyByBody: 5, heatIn: 6, surface: 7 } as const

/** Heat against temperature of the joint: straight lines with bends at solidus and liquidus. */
export interface HeatCurve {
  readonly capacityJPerK: number
  readonly melt: Melt
  readonly solidusJ: number
  readonly liquidusJ: number
}

export function heatCurve(capacityJPerK: number, melt: Melt): HeatCurve {
  return { capacityJPerK, melt, solidusJ: capacityJPerK * melt.solidusRiseK, liquidusJ: capacityJPerK * melt.liquidusRiseK + melt.latentJ }
}

/** Rise of the joint at this heat; constant while a eutectic melts. */
export function riseOf(curve: HeatCurve, heatJ: number): number {
  const { melt, solidusJ, liquidusJ } = curve
  if (heatJ <= solidusJ) return heatJ / curve.capacityJPerK
  if (heatJ >= liquidusJ) return (heatJ - melt.latentJ) / curve.capacityJPerK
  return melt.solidusRiseK + ((heatJ - solidusJ) * (melt.liquidusRiseK - melt.solidusRiseK)) / (liquidusJ - solidusJ)
}

/** dT/dH at this heat; 0 on a eutectic's plateau. */
export function slopeOf(curve: HeatCurve, heatJ: number): number {
  const { melt, solidusJ, liquidusJ } = curve
  return heatJ <= solidusJ || heatJ >= liquidusJ ? 1 / curve.capacityJPerK : (melt.liquidusRiseK - melt.solidusRiseK) / (liquidusJ - solidusJ)
}

/** Heat of the joint at a rise; the upper end of a eutectic's plateau. */
export function heatOf(curve: HeatCurve, riseK: number): number {
  const { melt, capacityJPerK } = curve
  if (riseK >= melt.liquidusRiseK) return capacityJPerK * riseK + melt.latentJ
  const share = Math.max(0, (riseK - melt.solidusRiseK) / (melt.liquidusRiseK - melt.solidusRiseK))
  return capacityJPerK * riseK + share * melt.latentJ
}

/** Radiative film coefficient between two surfaces, W/(m2 K). */
function radiationWPerM2K(emissivity: number, oneC: number, otherC: number): number {
  const a = oneC + zeroCelsiusK
  const b = otherC + zeroCelsiusK
  return emissivity * stefanBoltzmannWPerM2K4 * (a * a + b * b) * (a + b)
}

/** Loss of the joint's own surface: convection (forced in a stream, else natural) and radiation. */
function surface(model: HeatModel, rise: number, streamed: boolean, out: Float64Array): void {
  const { ambientC, emissivity, surfaceM2 } = model
  const film = streamed ? 0 : model.filmWPerM2K
  const k = rise + ambientC + zeroCelsiusK
  const lost = surfaceM2 * (radiationWPerM2K(emissivity, rise + ambientC, ambientC) + film) * rise
  out[X.joint] = (out[X.joint] as number) - lost
  out[X.jointByJoint] = (out[X.jointByJoint] as number) - surfaceM2 * (4 * emissivity * stefanBoltzmannWPerM2K4 * k * k * k + film)
  out[X.surface] = (out[X.surface] as number) + lost
}

/** Conductance in W/K from the middle of the tube's wall to the joint. */
function innerWPerK(model: HeatModel, source: HeatTube, lap: TubeOnLap, rise: number, body: number): number {
  const inner =
    lap.gripWPerK ??
    lap.gapM * filmAt(source.gapAir, (rise + body) / 2) + lap.gapM2 * radiationWPerM2K(source.gapEmissivity, body + model.ambientC, rise + model.ambientC)
  return 1 / (lap.halfWallKPerW + 1 / inner)
}

/** A tube over the lap, in a stream or in still air, and its heat flow to the joint; the joint itself is not exposed to air. */
function tube(model: HeatModel, source: HeatTube, { toolOn, recovered }: HeatState, rise: number, body: number, out: Float64Array): void {
  const { ambientC } = model
  const lap = recovered ? source.onLapRecovered : source.onLapLoose
  const link = innerWPerK(model, source, lap, rise, body)
  const flow = link * (body - rise)
  const film = toolOn ? filmAt(lap.stream, body) : lap.stillFilmWPerM2K
  const outer = film === 0 ? 0 : 1 / (1 / (film * lap.outsideM2) + lap.halfWallKPerW)
  const taken = outer * ((toolOn ? source.airRiseK : 0) - body)
  const k = body + ambientC + zeroCelsiusK
  const radiated = lap.outsideM2 * radiationWPerM2K(source.emissivity, body + ambientC, ambientC) * body
  out[X.joint] = flow
  out[X.jointByJoint] = -link
  out[X.jointByBody] = link
  out[X.heatIn] = toolOn ? taken : 0
  out[X.surface] = toolOn ? radiated : radiated - taken
  out[X.body] = taken - radiated - flow
  out[X.bodyByJoint] = link
  out[X.bodyByBody] = -link - outer - 4 * lap.outsideM2 * source.emissivity * stefanBoltzmannWPerM2K4 * k * k * k
}

/** Heat flows into the joint, wires apart, and into the tip or tube, at these rises. */
export function exchange(model: HeatModel, state: HeatState, rise: number, body: number, out: Float64Array): void {
  const { source } = model
  out.fill(0)
  if (source.kind === 'tube') tube(model, source, state, rise, body, out)
  else {
    if (state.toolOn) tool(model, source, rise, body, out)
    surface(model, rise, state.toolOn && source.kind === 'air', out)
  }
}

/** Heat flows from an iron or a stream on the bare joint. */
function tool(model: HeatModel, source: Exclude<HeatSource, HeatTube>, rise: number, body: number, out: Float64Array): void {
  switch (source.kind) {
    case 'iron': {
      // The heater delivers the demand up to its power.
      const asked = (source.setRiseK - rise) / source.resistanceKPerW
      const power = Math.min(asked, source.maximumW)
      out[X.joint] = power
      out[X.jointByJoint] = asked > source.maximumW ? 0 : -1 / source.resistanceKPerW
      out[X.heatIn] = power
      break
    }
    case 'heavy-iron': {
      const g = 1 / source.contactResistanceKPerW
      const power = g * (body - rise)
      const asked = (source.setRiseK - body) / source.tipResistanceKPerW
      const byHeater = asked > source.maximumW ? 0 : -1 / source.tipResistanceKPerW
      out[X.joint] = power
      out[X.jointByJoint] = -g
      out[X.jointByBody] = g
      out[X.body] = Math.min(asked, source.maximumW) - power
      out[X.bodyByJoint] = g
      out[X.bodyByBody] = byHeater - g
      out[X.heatIn] = power
      break
    }
    case 'air': {
      const g = filmAt(source.film, rise) * model.surfaceM2
      const power = g * (source.airRiseK - rise)
      out[X.joint] = power
      out[X.jointByJoint] = -g
      out[X.heatIn] = power
    }
  }
}
