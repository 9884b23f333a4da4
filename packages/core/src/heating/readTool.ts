import { DomainError } from '../errors/index.ts'
import { heatJointDefaults } from './heatJointDefaults.ts'
import type { HeatJointInput, HotAirTool, Tool } from './heatJointTypes.ts'
import { heatLimits, requireJointTemperature, requireWithin } from './heatLimits.ts'
import type { HeatSource, StreamFilm } from './heatModel.ts'
import type { Sweep } from './readWire.ts'
import { constantFilm, crossFlowFilm, crossFlowWPerM2K } from './streamFilm.ts'

/** Range of the air's viscosity law, 100 to 1900 K. */
export const airLowC = -173
export const airHighC = 1626
const airSource = "Sutherland's law, 100 to 1900 K"

/** Refuses air outside the range of its viscosity law. */
export function requireAir(parameter: string, temperatureC: number): void {
  if (temperatureC >= airLowC && temperatureC <= airHighC) return
  throw new DomainError(parameter, temperatureC, `from ${airLowC} to ${airHighC} with airSpeedMPerS, or under a tube`, airSource, 'contradiction')
}

/** Air pressure; standard pressure for an iron. */
export function pressureOf(tool: Tool): number {
  const standard = heatJointDefaults.pressurePa.value
  return tool.kind === 'iron' ? standard : requireWithin('tool.pressurePa', tool.pressurePa ?? standard, 'pressurePa')
}

/** Temperatures of the clips on the wires. */
export function clipTemperaturesC(i: HeatJointInput): readonly number[] {
  return i.conductors.flatMap(({ clip }, c) => (clip ? [requireJointTemperature(`conductors.${c}.clip.temperatureC`, clip.temperatureC)] : []))
}

/** The film coefficient of a stream on a cylinder, given or from its speed, times factor. */
export function readStream(tool: HotAirTool, i: HeatJointInput, diameterM: number, factor: number): StreamFilm {
  const airC = requireJointTemperature('tool.airC', tool.airC)
  const pressurePa = pressureOf(tool)
  if (tool.airSpeedMPerS !== undefined) requireWithin('tool.airSpeedMPerS', tool.airSpeedMPerS, 'airSpeedMPerS')
  if (tool.filmWPerM2K !== undefined) return constantFilm(factor * requireWithin('tool.filmWPerM2K', tool.filmWPerM2K, 'filmWPerM2K'))
  if (tool.airSpeedMPerS === undefined) throw new DomainError('tool.airSpeedMPerS', undefined, 'airSpeedMPerS or filmWPerM2K', undefined, 'missing')
  requireAir('tool.airC', airC)
  requireAir('ambientC', i.ambientC)
  const clipsC = clipTemperaturesC(i).map((clipC) => Math.min(Math.max(clipC, airLowC), airHighC))
  const all = [airC, i.ambientC, ...clipsC]
  return crossFlowFilm({
    ambientC: i.ambientC,
    // Widened by 1 K either way: covers trial values, and the interval is never empty.
    lowC: Math.max(Math.min(...all) - 1, airLowC),
    highC: Math.min(Math.max(...all) + 1, airHighC),
    airC,
    airSpeedMPerS: tool.airSpeedMPerS,
    pressurePa,
    diameterM,
    factor,
  })
}

/** A tip with less heat capacity follows its heater at once. */
const leastMassJPerK = 1e-9

/** Heat source on the bare joint. */
export function readSource(i: HeatJointInput, diameterM: number, contactFactor: number, streamFactor: number): HeatSource {
  const { tool } = i
  if (tool.kind === 'hot-air') return { kind: 'air', airRiseK: tool.airC - i.ambientC, film: readStream(tool, i, diameterM, streamFactor) }
  const setRiseK = requireJointTemperature('tool.setC', tool.setC) - i.ambientC
  const maximumW = tool.maximumW === undefined ? Infinity : requireWithin('tool.maximumW', tool.maximumW, 'powerW')
  const tip = requireWithin('tool.tipResistanceKPerW', tool.tipResistanceKPerW, 'smallResistanceKPerW')
  const contact = contactFactor * requireWithin('tool.contactResistanceKPerW', tool.contactResistanceKPerW, 'resistanceKPerW')
  const mass = requireWithin('tool.tipHeatCapacityJPerK', tool.tipHeatCapacityJPerK ?? heatJointDefaults.tipHeatCapacityJPerK.value, 'tipHeatCapacityJPerK')
  if (mass < leastMassJPerK) return { kind: 'iron', setRiseK, maximumW, resistanceKPerW: tip + contact }
  if (tip < heatLimits.resistanceKPerW[0]) {
    const allowed = `${heatLimits.resistanceKPerW[0]} or above where tipHeatCapacityJPerK is above 0: heat takes a way into the tip`
    throw new DomainError('tool.tipResistanceKPerW', tip, allowed, undefined, 'contradiction')
  }
  return { kind: 'heavy-iron', setRiseK, maximumW, tipResistanceKPerW: tip, contactResistanceKPerW: contact, capacityJPerK: mass }
}

/** Film coefficient on the swept wire, from the stream's speed and the wire's diameter. */
function sweptFilmBySpeed(tool: HotAirTool, surfaceC: number): number {
  if (tool.sweptDiameterMm === undefined)
    throw new DomainError('tool.sweptFilmWPerM2K', undefined, 'a value where sweptMm is above 0, or sweptDiameterMm', undefined, 'missing')
  if (tool.airSpeedMPerS === undefined)
    throw new DomainError('tool.airSpeedMPerS', undefined, 'a value where sweptDiameterMm stands for the film', undefined, 'missing')
  requireAir('tool.airC', tool.airC)
  const diameterM = tool.sweptDiameterMm / 1000
  const airSpeedMPerS = requireWithin('tool.airSpeedMPerS', tool.airSpeedMPerS, 'airSpeedMPerS')
  return crossFlowWPerM2K({ surfaceC: Math.min(surfaceC, airHighC), airC: tool.airC, airSpeedMPerS, pressurePa: pressureOf(tool), diameterM })
}

/** The stream along the wires; null if it heats the joint alone. */
export function readSweep(tool: Tool, ambientC: number, surfaceC: number, streamFactor: number): Sweep | null {
  if (tool.kind !== 'hot-air') return null
  const toM = requireWithin('tool.sweptMm', tool.sweptMm ?? heatJointDefaults.sweptMm.value, 'sweptMm') / 1000
  if (tool.sweptFilmWPerM2K !== undefined) requireWithin('tool.sweptFilmWPerM2K', tool.sweptFilmWPerM2K, 'filmWPerM2K')
  if (tool.sweptDiameterMm !== undefined) requireWithin('tool.sweptDiameterMm', tool.sweptDiameterMm, 'diameterMm')
  if (toM === 0) return null
  const riseK = requireJointTemperature('tool.airC', tool.airC) - ambientC
  return { toM, filmWPerM2K: streamFactor * (tool.sweptFilmWPerM2K ?? sweptFilmBySpeed(tool, surfaceC)), riseK }
}
