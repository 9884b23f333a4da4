import { DomainError } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'
import { airProperties } from '../heat/index.ts'
import type { Provenance } from '../materials/index.ts'
import type { HeatJointInput } from './heatJointTypes.ts'
import { requireJointTemperature, requireWithin } from './heatLimits.ts'
import type { HeatModel, HeatTube } from './heatModel.ts'
import { airHighC, airLowC, readStream, requireAir } from './readTool.ts'
import { tabled } from './streamFilm.ts'

/** What heatSolderSleeve assumes of a tube where its input is silent. */
export const solderSleeveDefaults = /* @__PURE__ */ frozen({
  conductivityWPerMK: { value: 0.25, provenance: { status: 'from memory', source: 'polyolefin and fluoropolymer tubes, order of magnitude' } },
  densityKgPerM3: { value: 1000, provenance: { status: 'from memory', source: 'cross-linked polyolefin, rounded' } },
  specificHeatJPerKgK: { value: 1900, provenance: { status: 'from memory', source: 'cross-linked polyolefin, rounded' } },
  gripWPerM2K: { value: 500, provenance: { status: 'from memory', source: 'a soft wall pressed on metal with little air between, a guess' } },
  /** Of the tube's bore and the joint together, while the tube hangs loose. */
  gapEmissivity: { value: 0.9, provenance: { status: 'from memory', source: 'plastic bore; bright copper would take less' } },
} as const satisfies Readonly<Record<string, { readonly value: number; readonly provenance: Provenance }>>)

/** A tube that shrinks over the joint with a ring of solder in it. */
export interface SolderSleeveTube {
  readonly insideMm: number
  readonly wallMm: number
  readonly lengthMm: number
  readonly recoveryC: number
  readonly conductivityWPerMK?: number
  readonly densityKgPerM3?: number
  readonly specificHeatJPerKgK?: number
  readonly gripWPerM2K?: number
}

/** Air is tabled a little beyond the hottest and coldest that tube and joint can be. */
const beyondK = 1

/** The tube over a joint that was read in the open, in SI units. */
export function readTube(i: HeatJointInput & { readonly tube: SolderSleeveTube }, open: HeatModel, streamFactor = 1): HeatTube {
  const { tube, joint, tool, ambientC } = i
  // A caller without types may hand over an iron.
  if (tool.kind !== 'hot-air') throw new DomainError('tool.kind', tool.kind, 'hot-air: a solder sleeve is shrunk in a stream', undefined, 'wrong-choice')
  requireAir('tool.airC', tool.airC)
  requireAir('ambientC', ambientC)
  const defaults = solderSleeveDefaults
  const jointM = joint.diameterMm / 1000
  const lapM = joint.lapMm / 1000
  const insideM = requireWithin('tube.insideMm', tube?.insideMm, 'tubeMm') / 1000
  if (insideM <= jointM)
    throw new DomainError('tube.insideMm', tube.insideMm, `above joint.diameterMm, ${joint.diameterMm}: the tube slides over`, undefined, 'contradiction')
  const wallM = requireWithin('tube.wallMm', tube.wallMm, 'tubeMm') / 1000
  const lengthM = requireWithin('tube.lengthMm', tube.lengthMm, 'lapMm') / 1000
  const recoveryRiseK = requireJointTemperature('tube.recoveryC', tube.recoveryC) - ambientC
  if (recoveryRiseK <= 0)
    throw new DomainError('tube.recoveryC', tube.recoveryC, `above ambientC, ${ambientC}: the tube has not shrunk yet`, undefined, 'contradiction')
  const k = requireWithin('tube.conductivityWPerMK', tube.conductivityWPerMK ?? defaults.conductivityWPerMK.value, 'conductivityWPerMK')
  const density = requireWithin('tube.densityKgPerM3', tube.densityKgPerM3 ?? defaults.densityKgPerM3.value, 'densityKgPerM3')
  const heat = requireWithin('tube.specificHeatJPerKgK', tube.specificHeatJPerKgK ?? defaults.specificHeatJPerKgK.value, 'specificHeatJPerKgK')
  const grip = requireWithin('tube.gripWPerM2K', tube.gripWPerM2K ?? defaults.gripWPerM2K.value, 'gripWPerM2K')
  const outsideM = insideM + 2 * wallM
  const gapM2 = Math.PI * jointM * lapM
  const wallKPerW = Math.log1p((2 * wallM) / jointM) / (2 * Math.PI * k * lapM)
  const hottestC = Math.max(tool.airC, ambientC) + beyondK
  const coldestC = Math.min(tool.airC, ambientC, ...i.conductors.map((side) => side.clip?.temperatureC ?? ambientC)) - beyondK
  return {
    kind: 'tube',
    airRiseK: tool.airC - ambientC,
    film: readStream(tool, i, outsideM, streamFactor),
    stillFilmWPerM2K: open.filmWPerM2K,
    emissivity: open.emissivity,
    outsideM2: Math.PI * outsideM * lengthM,
    capacityJPerK: (density * heat * Math.PI * (outsideM * outsideM - insideM * insideM) * lengthM) / 4,
    recoveryRiseK,
    gripped: false,
    tightWPerK: 1 / (1 / (grip * gapM2) + wallKPerW),
    gapM: (2 * Math.PI * lapM) / Math.log(insideM / jointM),
    gapAir: tabled(ambientC, coldestC, hottestC, (temperatureC) => airProperties(Math.min(Math.max(temperatureC, airLowC), airHighC)).conductivityWPerMK),
    gapM2,
    gapEmissivity: defaults.gapEmissivity.value,
  }
}
