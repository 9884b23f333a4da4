import { frozen } from '../errors/inner.ts'
import type { Correlation } from '../heat/index.ts'
import { heatDefaults } from '../heat/index.ts'
import type { MetalName, Provenance } from '../materials/index.ts'

/** One of the two wires of a joint in service. Defaults are in jointDefaults; metal properties are the nominal ones. */
export interface JointSide {
  readonly areaMm2: number
  readonly material?: MetalName
  /** Default: a solid round of that area. */
  readonly conductorDiameterMm?: number
  readonly insulationThicknessMm: number
  readonly insulationConductivityWPerMK: number
  readonly conductivityWPerMK?: number
  readonly resistivity20OhmM?: number
  readonly temperatureCoefficient20PerK?: number
  readonly emissivity?: number
  /** Replaces convection and radiation. */
  readonly filmWPerM2K?: number
}

/** A joint in service: two long wires in still air, and an optional sleeve over the joint. */
export interface JointSite {
  readonly currentA: number
  readonly ambientC: number
  readonly conductors: readonly [JointSide, JointSide]
  readonly sleeve?: {
    readonly lengthMm: number
    readonly coreDiameterMm: number
    readonly outsideDiameterMm: number
    readonly conductivityWPerMK: number
    readonly emissivity?: number
    readonly filmWPerM2K?: number
  } | null
  readonly pressurePa?: number
  readonly correlation?: Correlation
}

/** Defaults of the model of a joint in service. */
export const jointDefaults = /* @__PURE__ */ frozen({
  material: 'annealed-copper',
  emissivity: 0.9,
  sleeveEmissivity: 0.9,
  jointResistanceCoefficientPerK: 0,
  pressurePa: heatDefaults.pressurePa,
  correlation: heatDefaults.correlation,
  provenance: { status: 'from memory', source: 'emissivity of common insulations and sleeves 0.9; a joint whose resistance is taken as measured hot' },
} as const satisfies Readonly<Record<string, unknown>> & { readonly provenance: Provenance })

/** Steady state of a joint in service; heat flows are positive from the joint into the wire. */
export interface JointState {
  readonly jointC: number
  readonly farC: readonly [number, number]
  readonly wireFlowW: readonly [number, number]
  readonly sleeveEndC: readonly [number, number] | null
  readonly largestCurrentA: number | null
  readonly residual: number
}
