import { type SolderName, solder, solders } from '../../materials/index.ts'
import { heatJoint } from '../heatJoint.ts'
import type { HeatChange, HeatJointInput } from '../heatJointTypes.ts'
import { requireWithin } from '../heatLimits.ts'
import { changesFor } from './adviceChanges.ts'
import { heatJointAdviceDefaults } from './adviceLevers.ts'
import { type GivenLimits, readLimits } from './adviceLimits.ts'

/**
 * Finds the smallest single change that makes a joint flow, that spares its insulation, and that does both; empty if nothing needs changing.
 *
 * Each lever is moved alone and solved for the smallest sufficient move; a lever that cannot reach the goal is absent. Flowing means liquidus and superheat within the run;
 * sparing means that no insulation's edge is above its limit for longer than allowed. The input with `to` in it gives `result`. Stubs only grow, and a given observeS
 * moves with a later toolOffS. A clip is set on each bare stub, as near to the insulation as works. The alloy is the one with the nearest liquidus; its compatibility with the wire's plating is not checked here.
 * A tool's filmWPerM2K replaces the film coefficient computed from its airSpeedMPerS.
 *
 * @equation least |ln(to/from)| with wettedAtS not null, or insulationExposureS <= allowed
 * @symbol to - result - 1 - where the lever goes, in its own unit
 * @symbol from - tool.setC - 1 - its present value
 * @symbol allowed - allowedExposureS - s - how long an edge may be above its limit
 * @domain optional allowedExposureS: from 0 to 1e8
 * @domain limits.contactResistanceKPerW.low: from 1e-6 to 1e9
 * @domain limits.contactResistanceKPerW.high: from 1e-6 to 1e9
 * @domain limits.tipResistanceKPerW.low: from 0 to 1e9
 * @domain limits.tipResistanceKPerW.high: from 0 to 1e9
 * @domain limits.setC.low: from -273 to 3000
 * @domain limits.setC.high: from -273 to 3000
 * @domain limits.airC.low: from -273 to 3000
 * @domain limits.airC.high: from -273 to 3000
 * @domain limits.airSpeedMPerS.low: from 0 to 1e4
 * @domain limits.airSpeedMPerS.high: from 0 to 1e4
 * @domain limits.maximumW.low: from 1e-6 to 1e6
 * @domain limits.maximumW.high: from 1e-6 to 1e6
 * @domain limits.stubMm.low: from 0 to 1e4
 * @domain limits.stubMm.high: from 0 to 1e4
 * @domain limits.clip.low: from 0.01 to 1e4
 * @domain limits.clip.high: from 0.01 to 1e4
 * @domain limits.alloy.low: from -273 to 3000
 * @domain limits.alloy.high: from -273 to 3000
 * @domain limits.toolOffS.low: from 1e-9 to 1e7
 * @domain limits.toolOffS.high: from 1e-9 to 1e7
 * @domain as heatJoint
 * @throws DomainError outside the domain
 * @throws UnknownEntryError as heatJoint does
 * @throws ConvergenceError where no step is short enough
 * @example
 * heatJointAdvice({
 *   ambientC: 20,
 *   tool: { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 12 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5.5 },
 *   conductors: [{ areaMm2: 0.75, stubMm: 6, insulation: 'PVC', insulationOutsideMm: 2, clip: { distanceMm: 4, resistanceKPerW: 8, temperatureC: 20 } }],
 *   alloy: { solidusC: 183, liquidusC: 191, densityKgPerM3: 8500, specificHeatJPerKgK: 176, latentHeatJPerKg: 45000 },
 *   toolOffS: 3,
 *   sampleTimesS: [0.2],
 *   allowedExposureS: 0,
 *   limits: { contactResistanceKPerW: { low: 1, high: 60 }, tipResistanceKPerW: { low: 0.3, high: 10 }, setC: { low: 200, high: 420 }, airC: { low: 100, high: 500 }, airSpeedMPerS: { low: 1, high: 20 }, maximumW: { low: 10, high: 150 }, stubMm: { low: 0, high: 25 }, clip: { low: 2, high: 25 }, alloy: { low: 0, high: 320 }, toolOffS: { low: 0.2, high: 30 } },
 * }) // { toFlow: [], toSpareInsulation: [], both: [] }
 * @example
 * heatJointAdvice({
 *   ambientC: 20,
 *   tool: { kind: 'hot-air', airC: 350, airSpeedMPerS: 10, filmWPerM2K: 150, pressurePa: 101325, sweptMm: 8, sweptFilmWPerM2K: 120, sweptDiameterMm: 2 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5.5 },
 *   conductors: [{ areaMm2: 0.5, stubMm: 6, insulation: 'PTFE', insulationOutsideMm: 1.6 }],
 *   alloy: 'SAC305',
 *   alloys: ['Sn42Bi58'],
 *   toolOffS: 5,
 * }) // { toFlow: [{ lever: 'toolOffS', from: 5, to: 25.3 }, { lever: 'alloy', from: 'SAC305', to: 'Sn42Bi58' }] }
 * @source the project's model of a lap joint, solved for each lever
 */
export function heatJointAdvice(
  i: HeatJointInput & { readonly allowedExposureS?: number; readonly alloys?: readonly SolderName[]; readonly limits?: GivenLimits },
): { readonly toFlow: readonly HeatChange[]; readonly toSpareInsulation: readonly HeatChange[]; readonly both: readonly HeatChange[] } {
  const allowedExposureS = requireWithin('allowedExposureS', i.allowedExposureS ?? heatJointAdviceDefaults.allowedExposureS, 'sampleS')
  const alloys = i.alloys ?? (Object.keys(solders) as SolderName[])
  for (const name of alloys) solder(name)
  const { allowedExposureS: _allowed, alloys: _alloys, limits: given, ...input } = i
  const search = { input, start: heatJoint(input), allowedExposureS, alloys, limits: readLimits(given) }
  return { toFlow: changesFor(search, 'flow'), toSpareInsulation: changesFor(search, 'spare'), both: changesFor(search, 'both') }
}
