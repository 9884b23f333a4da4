import { frozen } from '../errors/inner.ts'
import type { Correlation } from '../heat/index.ts'
import { heatDefaults } from '../heat/index.ts'
import type { Interval, MetalName, Provenance } from '../materials/index.ts'

/** One horizontal wire in air: what heats it and how it sheds the heat. Absent fields stand in wireDefaults. */
export interface WireHeat {
  readonly areaMm2: number
  readonly material?: MetalName
  /** Solid round of that area where absent; nominal areas may be a little larger than the circle. */
  readonly conductorDiameterMm?: number
  /** Multiplies the resistance, not the stored heat. */
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
  /** In place of convection and radiation; the sun still counts. */
  readonly filmWPerM2K?: number
}

/** What a wire stores: one temperature for the conductor and a share of its insulation. */
export interface WireStore {
  readonly conductorDensityKgPerM3?: number
  readonly conductorSpecificHeatJPerKgK?: number
  readonly insulationDensityKgPerM3?: number
  readonly insulationSpecificHeatJPerKgK?: number
  readonly insulationShare?: number
}

/** An answer by both still-air correlations; a verdict rests on the unfavourable end. */
export interface Band extends Interval {
  readonly models: readonly { readonly correlation: Correlation; readonly value: number }[]
}

/** What the wire models assume where nothing is said; a metal's own properties are its nominal ones. */
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
  /** Share of the insulation's heat that follows the conductor after about a time constant. */
  insulationShare: 0.85,
  /** Rise above the air at which a time constant is taken. */
  riseK: 1,
  /** Wires, their walls and the air between them, across a bundle. */
  bundleConductivityWPerMK: 0.2,
  provenance: {
    status: 'from memory',
    source:
      'emissivity of common insulations 0.9; PVC compound 1350 kg/m3 and 1050 J/(kg K); share from radial conduction compared with one lump, 0.86 to 0.95 past 10 s; bundles 0.2 to 0.3 W/(m K)',
  },
} as const satisfies Readonly<Record<string, unknown>> & { readonly provenance: Provenance })
