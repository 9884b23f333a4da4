import { frozen } from '../errors/inner.ts'
import type { Correlation } from '../heat/index.ts'
import { heatDefaults } from '../heat/index.ts'
import type { Interval, MetalName, Provenance } from '../materials/index.ts'

/** One horizontal wire in air: its heat sources and heat loss. Defaults are in wireDefaults. */
export interface WireHeat {
  readonly areaMm2: number
  readonly material?: MetalName
  /** Default: a solid round of that area; nominal areas may exceed the true one a little. */
  readonly conductorDiameterMm?: number
  /** Multiplies the resistance, not the heat capacity. */
  readonly layFactor?: number
  readonly resistivity20OhmM?: number
  readonly temperatureCoefficient20PerK?: number
  readonly insulationThicknessMm: number
  readonly insulationConductivityWPerMK: number
  readonly emissivity?: number
  readonly ambientC: number
  readonly airSpeedMPerS?: number
  readonly pressurePa?: number
  readonly solarAbsorbedWPerM?: number
  readonly correlation?: Correlation
  /** Replaces convection and radiation; the sun still counts. */
  readonly filmWPerM2K?: number
}

/** Heat capacity of a wire: the conductor and a share of its insulation as one lump. */
export interface WireStore {
  readonly conductorDensityKgPerM3?: number
  readonly conductorSpecificHeatJPerKgK?: number
  readonly insulationDensityKgPerM3?: number
  readonly insulationSpecificHeatJPerKgK?: number
  readonly insulationShare?: number
}

/** Result by both still-air correlations; a verdict uses the unfavourable end. */
export interface Band extends Interval {
  readonly models: readonly { readonly correlation: Correlation; readonly value: number }[]
}

/** Defaults of the wire models; metal properties are the nominal ones. */
export const wireDefaults = /* @__PURE__ */ frozen({
  material: 'annealed-copper',
  layFactor: 1,
  emissivity: 0.9,
  airSpeedMPerS: heatDefaults.airSpeedMPerS,
  pressurePa: heatDefaults.pressurePa,
  solarAbsorbedWPerM: heatDefaults.solarAbsorbedWPerM,
  correlation: heatDefaults.correlation,
  currentA: 0,
  repeated: false,
  insulationDensityKgPerM3: 1350,
  insulationSpecificHeatJPerKgK: 1050,
  /** Share of the insulation's heat capacity that follows the conductor after about one time constant. */
  insulationShare: 0.85,
  /** Rise above the air at which the time constant is taken. */
  riseK: 1,
  /** Effective conductivity across a bundle: wires, insulation and the air between. */
  bundleConductivityWPerMK: 0.2,
  provenance: {
    status: 'from memory',
    source:
      'emissivity of common insulations 0.9; PVC compound 1350 kg/m3 and 1050 J/(kg K); share from radial conduction compared with one lump, 0.86 to 0.95 past 10 s; bundles 0.2 to 0.3 W/(m K)',
  },
} as const satisfies Readonly<Record<string, unknown>> & { readonly provenance: Provenance })
