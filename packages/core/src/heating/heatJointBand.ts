import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'
import type { HeatJointInput, HeatJointResult } from './heatJointTypes.ts'
import { requireWithin } from './heatLimits.ts'
import { runHeatModel } from './heatResult.ts'
import { readHeatJoint } from './readHeatJoint.ts'

/** Default uncertainty factors of heatJointBand. */
export const heatJointBandDefaults = /* @__PURE__ */ frozen({
  contactFactor: { value: 3, provenance: { status: 'from memory', source: 'a wetted tip contact is known to a factor of three either way' } },
  /** For every still-air film that is not given. */
  filmFactor: {
    value: 1.3,
    provenance: { status: 'derived', source: 'covers the distance of the correlations and of the rule by which a film is taken once' },
  },
  streamFactor: { value: 1.5, provenance: { status: 'from memory', source: 'a hand-held stream against the one in the correlation' } },
} as const satisfies Readonly<Record<string, { readonly value: number; readonly provenance: Provenance }>>)

/**
 * Gives the heating of a joint at the best, nominal and worst end of the uncertainties: an iron's contact, a stream's film, still air.
 *
 * Still-air films vary only if the input does not give them. The joint's emissivity varies with its film, 0.05 to 0.3, unless either is given.
 * A tool's filmWPerM2K replaces the film coefficient computed from its airSpeedMPerS.
 *
 * @equation R_contact / f, R_contact, R_contact f; h f, h, h / f
 * @symbol R_contact - tool.contactResistanceKPerW - K/W - contact of tip and joint
 * @symbol h - tool.filmWPerM2K - W/(m2 K) - every film coefficient of the stream, by speed or as given
 * @symbol f - contactFactor - 1 - how far off the contact may be, either way; streamFactor for a stream
 * @domain optional contactFactor: from 1 to 1000
 * @domain optional streamFactor: from 1 to 1000
 * @domain optional filmFactor: from 1 to 1000
 * @domain as heatJoint
 * @throws DomainError outside the domain
 * @throws UnknownEntryError as heatJoint does
 * @throws ConvergenceError where no step is short enough
 * @example
 * heatJointBand({
 *   ambientC: 20,
 *   tool: { kind: 'iron', setC: 360, maximumW: 60, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5.5 },
 *   conductors: [{ areaMm2: 0.75, stubMm: 6, insulation: 'PVC', insulationOutsideMm: 2, clip: { distanceMm: 4, resistanceKPerW: 8, temperatureC: 20 } }],
 *   alloy: { solidusC: 183, liquidusC: 191, densityKgPerM3: 8500, specificHeatJPerKgK: 176, latentHeatJPerKg: 45000 },
 *   toolOffS: 3,
 *   sampleTimesS: [0.2],
 *   contactFactor: 3,
 *   filmFactor: 1.3,
 * }) // { best: { steadyC: 323.48524 }, nominal: { steadyC: 298.93129 }, worst: { steadyC: 244.06976 } }
 * @example
 * heatJointBand({
 *   ambientC: 20,
 *   tool: { kind: 'hot-air', airC: 350, airSpeedMPerS: 5, filmWPerM2K: 150, pressurePa: 101325, sweptMm: 8, sweptFilmWPerM2K: 120, sweptDiameterMm: 2 },
 *   joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5.5 },
 *   conductors: [{ areaMm2: 2.5, stubMm: 6, insulation: 'PTFE', insulationOutsideMm: 3.4, tails: 2 }],
 *   alloy: 'SAC305',
 *   toolOffS: 60,
 *   streamFactor: 1.5,
 * }) // { best: { steadyC: 199.61552 }, nominal: { steadyC: 158.61153 }, worst: { steadyC: 120.87283 } }
 * @source the project's model of a lap joint, at the ends of what is known of its tool
 */
export function heatJointBand(i: HeatJointInput & { readonly contactFactor?: number; readonly streamFactor?: number; readonly filmFactor?: number }): {
  readonly best: HeatJointResult
  readonly nominal: HeatJointResult
  readonly worst: HeatJointResult
} {
  const contact = requireWithin('contactFactor', i.contactFactor ?? heatJointBandDefaults.contactFactor.value, 'factor')
  const stream = requireWithin('streamFactor', i.streamFactor ?? heatJointBandDefaults.streamFactor.value, 'factor')
  const film = requireWithin('filmFactor', i.filmFactor ?? heatJointBandDefaults.filmFactor.value, 'factor')
  const at = (contactFactor: number, streamFactor: number, filmFactor: number): HeatJointResult =>
    runHeatModel(readHeatJoint(i, { contactFactor, streamFactor, filmFactor })).result
  const nominal = at(1, 1, 1)
  return { best: at(1 / contact, stream, 1 / film), nominal, worst: at(contact, 1 / stream, film) }
}
