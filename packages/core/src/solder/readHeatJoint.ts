import { DomainError, requireBetween, requireChoice, requireNotNegative, requirePositive, requireTemperature } from '../errors/index.ts'
import { knownNominal, solder } from '../materials/index.ts'
import type { Wire } from './finZones.ts'
import { heatJointDefaults } from './heatJointDefaults.ts'
import type { AlloyValues, HeatJointInput, Tool } from './heatJointTypes.ts'
import type { HeatModel, HeatSource } from './heatModel.ts'
import { readConductor, type Sweep } from './readWire.ts'
import { constantFilm, crossFlowFilm } from './streamFilm.ts'

/** Air this cold or hot (100 to 1900 K) is outside the viscosity law that gives its film coefficient. */
const airLowC = -173
const airHighC = 1626
/** Finer than this the run takes seconds; coarser says nothing. */
const finestAccuracy = 0.001
const coarsestAccuracy = 10
const mostConductors = 4

/** The alloy's five values, by name or as given. */
export function alloyValues(alloy: HeatJointInput['alloy'], ambientC: number): AlloyValues {
  let values: AlloyValues
  if (typeof alloy === 'string') {
    const known = solder(alloy)
    values = {
      solidusC: known.solidusC.nominal,
      liquidusC: known.liquidusC.nominal,
      densityKgPerM3: known.densityKgPerM3.nominal,
      specificHeatJPerKgK: knownNominal(known, 'specificHeatJPerKgK', known.specificHeatJPerKgK),
      latentHeatJPerKg: knownNominal(known, 'latentHeatJPerKg', known.latentHeatJPerKg),
    }
  } else if (typeof alloy === 'object' && alloy !== null) values = alloy
  else throw new DomainError('alloy', alloy, 'the name of a solder, or its values', undefined, alloy === undefined ? 'missing' : 'wrong-choice')
  requireTemperature('alloy.solidusC', values.solidusC)
  requireTemperature('alloy.liquidusC', values.liquidusC)
  requirePositive('alloy.densityKgPerM3', values.densityKgPerM3)
  requireNotNegative('alloy.specificHeatJPerKgK', values.specificHeatJPerKgK)
  requireNotNegative('alloy.latentHeatJPerKg', values.latentHeatJPerKg)
  if (!(values.solidusC > ambientC)) throw new DomainError('alloy.solidusC', values.solidusC, `above ambientC, ${ambientC}`, undefined, 'contradiction')
  if (values.liquidusC < values.solidusC)
    throw new DomainError('alloy.liquidusC', values.liquidusC, `solidusC, ${values.solidusC}, or above`, undefined, 'contradiction')
  return values
}

function readSource(tool: Tool, i: HeatJointInput, diameterM: number, clipsC: readonly number[]): HeatSource {
  if (tool.kind === 'iron') {
    const setRiseK = requireTemperature('tool.setC', tool.setC) - i.ambientC
    const maximumW = tool.maximumW === undefined ? Infinity : requirePositive('tool.maximumW', tool.maximumW)
    const tip = requireNotNegative('tool.tipResistanceKPerW', tool.tipResistanceKPerW)
    const contact = requirePositive('tool.contactResistanceKPerW', tool.contactResistanceKPerW)
    const mass = requireNotNegative('tool.tipHeatCapacityJPerK', tool.tipHeatCapacityJPerK ?? heatJointDefaults.tipHeatCapacityJPerK.value)
    if (mass === 0) return { kind: 'iron', setRiseK, maximumW, resistanceKPerW: tip + contact }
    requirePositive('tool.tipResistanceKPerW', tip, 'a tip that stores heat needs a way to it')
    return { kind: 'heavy-iron', setRiseK, maximumW, tipResistanceKPerW: tip, contactResistanceKPerW: contact, capacityJPerK: mass }
  }
  const airC = requireTemperature('tool.airC', tool.airC)
  const pressurePa = requirePositive('tool.pressurePa', tool.pressurePa ?? heatJointDefaults.pressurePa.value)
  if (tool.airSpeedMPerS !== undefined) requireNotNegative('tool.airSpeedMPerS', tool.airSpeedMPerS)
  const airRiseK = airC - i.ambientC
  if (tool.filmWPerM2K !== undefined) return { kind: 'air', airRiseK, film: constantFilm(requireNotNegative('tool.filmWPerM2K', tool.filmWPerM2K)) }
  if (tool.airSpeedMPerS === undefined) throw new DomainError('tool.airSpeedMPerS', undefined, 'airSpeedMPerS or filmWPerM2K', undefined, 'missing')
  requireBetween('tool.airC', airC, airLowC, airHighC, "Sutherland's law, 100 to 1900 K")
  requireBetween('ambientC', i.ambientC, airLowC, airHighC, "Sutherland's law, 100 to 1900 K")
  const all = [airC, i.ambientC, ...clipsC.map((c) => Math.min(Math.max(c, airLowC), airHighC))]
  const film = crossFlowFilm({
    ambientC: i.ambientC,
    // A kelvin more on either side, so that a trial value stays on the fit and the span is never nothing.
    lowC: Math.max(Math.min(...all) - 1, airLowC),
    highC: Math.min(Math.max(...all) + 1, airHighC),
    airC,
    airSpeedMPerS: tool.airSpeedMPerS,
    pressurePa,
    diameterM,
  })
  return { kind: 'air', airRiseK, film }
}

function readSweep(tool: Tool, ambientC: number): Sweep | null {
  if (tool.kind !== 'hot-air') return null
  const toM = requireNotNegative('tool.sweptMm', tool.sweptMm ?? heatJointDefaults.sweptMm.value) / 1000
  if (tool.sweptFilmWPerM2K !== undefined) requireNotNegative('tool.sweptFilmWPerM2K', tool.sweptFilmWPerM2K)
  if (toM === 0) return null
  if (tool.sweptFilmWPerM2K === undefined) throw new DomainError('tool.sweptFilmWPerM2K', undefined, 'a value where sweptMm is above 0', undefined, 'missing')
  return { toM, filmWPerM2K: tool.sweptFilmWPerM2K, riseK: tool.airC - ambientC }
}

const sameWire = (a: Wire, b: Wire): boolean => JSON.stringify({ ...a, tails: 0 }) === JSON.stringify({ ...b, tails: 0 })

/** Checks every number of the input and puts it in SI units. stubsInOpen is false where a tube keeps the air from the stubs. */
export function readHeatJoint(i: HeatJointInput, stubsInOpen = true): HeatModel {
  const ambientC = requireTemperature('ambientC', i.ambientC)
  const defaults = heatJointDefaults
  requireChoice('tool.kind', i.tool?.kind, ['iron', 'hot-air'])
  const { joint, conductors } = i
  const lapM = requirePositive('joint.lapMm', joint?.lapMm) / 1000
  const diameterM = requirePositive('joint.diameterMm', joint.diameterMm) / 1000
  const surfaceM2 = requirePositive('joint.surfaceMm2', joint.surfaceMm2 ?? Math.PI * joint.diameterMm * joint.lapMm) / 1e6
  const solderM3 = requireNotNegative('joint.solderMm3', joint.solderMm3) / 1e9
  const filmWPerM2K = requireNotNegative('joint.filmWPerM2K', joint.filmWPerM2K ?? defaults.jointFilmWPerM2K.value)
  const emissivity = requireBetween('joint.emissivity', joint.emissivity ?? defaults.jointEmissivity.value, 0, 1)
  if (!Array.isArray(conductors) || conductors.length < 1 || conductors.length > mostConductors) {
    throw new DomainError(
      'conductors',
      conductors?.length,
      `1 to ${mostConductors} conductors`,
      undefined,
      conductors === undefined ? 'missing' : 'out-of-range',
    )
  }
  const sweep = readSweep(i.tool, ambientC)
  const alloy = alloyValues(i.alloy, ambientC)
  const wires: Wire[] = []
  const wireOf: number[] = []
  let lapStoreJPerMK = 0
  conductors.forEach((side, c) => {
    const read = readConductor(side, `conductors.${c}`, ambientC, sweep, stubsInOpen)
    lapStoreJPerMK += read.lapStoreJPerMK
    const found = wires.findIndex((wire) => sameWire(wire, read.wire))
    if (found < 0) wires.push(read.wire)
    else wires[found] = { ...read.wire, tails: read.wire.tails + (wires[found]?.tails ?? 0) }
    wireOf.push(found < 0 ? wires.length - 1 : found)
  })
  const source = readSource(
    i.tool,
    i,
    diameterM,
    conductors.flatMap((side) => (side.clip ? [side.clip.temperatureC] : [])),
  )
  const toolOffS = requirePositive('toolOffS', i.toolOffS)
  const observeS = requireBetween('observeS', i.observeS ?? toolOffS + defaults.observeAfterToolOffS.value, toolOffS, Number.MAX_VALUE)
  const sampleTimesS = i.sampleTimesS ?? []
  sampleTimesS.forEach((at, k) => {
    requireBetween(`sampleTimesS.${k}`, at, 0, observeS)
  })
  const solderKg = solderM3 * alloy.densityKgPerM3
  return {
    ambientC,
    source,
    surfaceM2,
    filmWPerM2K,
    emissivity,
    capacityJPerK: lapM * lapStoreJPerMK + solderKg * alloy.specificHeatJPerKgK,
    melt: { solidusRiseK: alloy.solidusC - ambientC, liquidusRiseK: alloy.liquidusC - ambientC, latentJ: solderKg * alloy.latentHeatJPerKg },
    wettedRiseK: alloy.liquidusC - ambientC + requireNotNegative('wettingSuperheatK', i.wettingSuperheatK ?? defaults.wettingSuperheatK.value),
    wires,
    wireOf,
    toolOffS,
    observeS,
    sampleTimesS,
    accuracy: requireBetween('accuracy', i.accuracy ?? defaults.accuracy.value, finestAccuracy, coarsestAccuracy),
  }
}
