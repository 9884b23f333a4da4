import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** One size of road-vehicle cable; null is not known. */
export interface Iso6722Row {
  readonly areaMm2: number
  readonly plainOhmPerKm: number
  readonly metalCoatedOhmPerKm: number | null
  readonly conductorMaximumMm: number
  /** Largest outside diameter of the cable with a thin and with a thick wall. */
  readonly thinWallMaximumMm: number | null
  readonly thickWallMaximumMm: number | null
  /** True if the plain resistance was remembered with confidence; diameters are one step less certain. */
  readonly sure: boolean
}

/**
 * Road-vehicle cables of copper: largest resistance at 20 degC and largest diameters, every figure from memory.
 * For plausibility only, never for acceptance. Sizes 5, 8, 12, 20, 30, 40 and 60 mm2 exist and are left out.
 *
 * @source ISO 6722-1:2011, dimension and resistance tables: from memory
 */
export const iso6722 = /* @__PURE__ */ frozen({
  rows: [
    { areaMm2: 0.13, plainOhmPerKm: 136, metalCoatedOhmPerKm: 140, conductorMaximumMm: 0.55, thinWallMaximumMm: 1.05, thickWallMaximumMm: null, sure: false },
    { areaMm2: 0.22, plainOhmPerKm: 84.8, metalCoatedOhmPerKm: 86.5, conductorMaximumMm: 0.7, thinWallMaximumMm: 1.2, thickWallMaximumMm: null, sure: true },
    { areaMm2: 0.35, plainOhmPerKm: 54.4, metalCoatedOhmPerKm: 55.5, conductorMaximumMm: 0.9, thinWallMaximumMm: 1.4, thickWallMaximumMm: null, sure: true },
    { areaMm2: 0.5, plainOhmPerKm: 37.1, metalCoatedOhmPerKm: 38.2, conductorMaximumMm: 1.1, thinWallMaximumMm: 1.6, thickWallMaximumMm: 2.3, sure: true },
    { areaMm2: 0.75, plainOhmPerKm: 24.7, metalCoatedOhmPerKm: 25.4, conductorMaximumMm: 1.3, thinWallMaximumMm: 1.9, thickWallMaximumMm: 2.5, sure: true },
    { areaMm2: 1, plainOhmPerKm: 18.5, metalCoatedOhmPerKm: 19.1, conductorMaximumMm: 1.5, thinWallMaximumMm: 2.1, thickWallMaximumMm: 2.7, sure: true },
    { areaMm2: 1.25, plainOhmPerKm: 14.9, metalCoatedOhmPerKm: null, conductorMaximumMm: 1.7, thinWallMaximumMm: 2.3, thickWallMaximumMm: null, sure: false },
    { areaMm2: 1.5, plainOhmPerKm: 12.7, metalCoatedOhmPerKm: 13, conductorMaximumMm: 1.8, thinWallMaximumMm: 2.4, thickWallMaximumMm: 3, sure: true },
    { areaMm2: 2, plainOhmPerKm: 9.42, metalCoatedOhmPerKm: null, conductorMaximumMm: 2, thinWallMaximumMm: 2.8, thickWallMaximumMm: null, sure: false },
    { areaMm2: 2.5, plainOhmPerKm: 7.6, metalCoatedOhmPerKm: 7.82, conductorMaximumMm: 2.2, thinWallMaximumMm: 3, thickWallMaximumMm: 3.6, sure: true },
    { areaMm2: 3, plainOhmPerKm: 6.15, metalCoatedOhmPerKm: null, conductorMaximumMm: 2.4, thinWallMaximumMm: 3.4, thickWallMaximumMm: null, sure: false },
    { areaMm2: 4, plainOhmPerKm: 4.71, metalCoatedOhmPerKm: 4.85, conductorMaximumMm: 2.8, thinWallMaximumMm: 3.7, thickWallMaximumMm: 4.4, sure: true },
    { areaMm2: 6, plainOhmPerKm: 3.14, metalCoatedOhmPerKm: 3.23, conductorMaximumMm: 3.4, thinWallMaximumMm: 4.3, thickWallMaximumMm: 5, sure: true },
    { areaMm2: 10, plainOhmPerKm: 1.82, metalCoatedOhmPerKm: 1.85, conductorMaximumMm: 4.5, thinWallMaximumMm: 6, thickWallMaximumMm: 6.5, sure: true },
    { areaMm2: 16, plainOhmPerKm: 1.16, metalCoatedOhmPerKm: 1.18, conductorMaximumMm: 5.8, thinWallMaximumMm: 7.2, thickWallMaximumMm: 8.3, sure: true },
    { areaMm2: 25, plainOhmPerKm: 0.743, metalCoatedOhmPerKm: 0.757, conductorMaximumMm: 7.2, thinWallMaximumMm: 8.7, thickWallMaximumMm: 10.4, sure: true },
    { areaMm2: 35, plainOhmPerKm: 0.527, metalCoatedOhmPerKm: 0.538, conductorMaximumMm: 8.5, thinWallMaximumMm: null, thickWallMaximumMm: 11.6, sure: true },
    { areaMm2: 50, plainOhmPerKm: 0.368, metalCoatedOhmPerKm: 0.375, conductorMaximumMm: 10.5, thinWallMaximumMm: null, thickWallMaximumMm: 13.5, sure: true },
    { areaMm2: 70, plainOhmPerKm: 0.259, metalCoatedOhmPerKm: 0.264, conductorMaximumMm: 12.5, thinWallMaximumMm: null, thickWallMaximumMm: 15.5, sure: true },
    { areaMm2: 95, plainOhmPerKm: 0.196, metalCoatedOhmPerKm: 0.2, conductorMaximumMm: 14.8, thinWallMaximumMm: null, thickWallMaximumMm: 18, sure: true },
    { areaMm2: 120, plainOhmPerKm: 0.153, metalCoatedOhmPerKm: 0.156, conductorMaximumMm: 16.5, thinWallMaximumMm: null, thickWallMaximumMm: 19.7, sure: true },
  ],
  provenance: {
    status: 'from memory',
    source: 'ISO 6722-1, Road vehicles, single-core copper cables of 60 V and 600 V',
    edition: '2011, since replaced by ISO 19642',
    clause: 'dimensions and conductor resistances',
  },
} as const satisfies { readonly rows: readonly Iso6722Row[]; readonly provenance: Provenance })
