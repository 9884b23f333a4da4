import type { HeatModel, HeatSource, HeatTube } from './heatModel.ts'
import type { Wire } from './solver/finZones.ts'
import { constantFilm } from './streamFilm.ts'

/** A free tail of 1 mm2 of copper, 6 mm of it bare. */
export const wire: Wire = {
  tails: 1,
  conductanceWM: 391e-6,
  stubM: 0.006,
  bareStoreJPerMK: 3.4,
  insulatedStoreJPerMK: 5.9,
  bareLossWPerMK: 0.06,
  insulatedLossWPerMK: 0.1,
  swept: null,
  clip: null,
  limitRiseK: 80,
  outerShare: 1,
  sweptOuterShare: 1,
}

/** A stream over 10 mm of it. */
export const stream = { toM: 0.01, bareLossWPerMK: 0.7, insulatedLossWPerMK: 0.5, riseK: 300 } as const

/** A tube that hangs loose in a stream. */
export const tube: HeatTube = {
  kind: 'tube',
  airRiseK: 330,
  film: constantFilm(140),
  stillFilmWPerM2K: 12,
  emissivity: 0.8,
  outsideM2: 390e-6,
  capacityJPerK: 0.3,
  recoveryRiseK: 100,
  gripped: false,
  tightWPerK: 0.04,
  gapM: 0.1,
  gapAir: constantFilm(0.03),
  gapM2: 60e-6,
  gapEmissivity: 0.9,
}

/** A small joint with this tool and these wires. */
export const jointModel = (source: HeatSource, wires: readonly Wire[] = []): HeatModel => ({
  ambientC: 20,
  source,
  surfaceM2: 80e-6,
  filmWPerM2K: 15,
  emissivity: 0.3,
  capacityJPerK: 0.06,
  melt: { solidusRiseK: 163, liquidusRiseK: 170, latentJ: 2 },
  wettedRiseK: 200,
  wires,
  wireOf: wires.map((_, w) => w),
  toolOffS: 1,
  observeS: 2,
  sampleTimesS: [],
  accuracy: 1,
})
