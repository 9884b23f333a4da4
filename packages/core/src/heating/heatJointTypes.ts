import type { InsulationName, MetalName, SolderName } from '../materials/index.ts'

/** Heat source of the joint: an iron's tip or a stream of hot air. */
export type Tool =
  | {
      readonly kind: 'iron'
      readonly setC: number
      /** Unlimited if absent. */
      readonly maximumW?: number
      readonly tipResistanceKPerW: number
      readonly contactResistanceKPerW: number
      readonly tipHeatCapacityJPerK?: number
    }
  | {
      readonly kind: 'hot-air'
      readonly airC: number
      readonly airSpeedMPerS?: number
      readonly filmWPerM2K?: number
      readonly pressurePa?: number
      readonly sweptMm?: number
      readonly sweptFilmWPerM2K?: number
      /** Alternative to sweptFilmWPerM2K: diameter of the swept wire; the film is computed from air and speed. */
      readonly sweptDiameterMm?: number
    }

/** A stream of hot air. */
export type HotAirTool = Extract<Tool, { readonly kind: 'hot-air' }>

/** One conductor leaving the joint: copper, bare stub, insulation and clip. */
export interface HeatSide {
  readonly areaMm2: number
  readonly material?: MetalName
  readonly diameterMm?: number
  readonly tails?: 1 | 2
  readonly stubMm: number
  readonly stubFilmWPerM2K?: number
  readonly insulation?: InsulationName
  readonly insulationOutsideMm: number
  readonly insulationConductivityWPerMK?: number
  readonly insulationFilmWPerM2K?: number
  readonly insulationDensityKgPerM3?: number
  readonly insulationSpecificHeatJPerKgK?: number
  readonly insulationShare?: number
  readonly insulationLimitC?: number
  readonly clip?: { readonly distanceMm: number; readonly resistanceKPerW: number; readonly temperatureC: number } | null
  readonly densityKgPerM3?: number
  readonly specificHeatJPerKgK?: number
  readonly conductivityWPerMK?: number
}

/** Melting range, latent heat and the like of a solder that the library does not list. */
export interface AlloyValues {
  readonly name?: string
  readonly solidusC: number
  readonly liquidusC: number
  readonly densityKgPerM3: number
  readonly specificHeatJPerKgK: number
  readonly latentHeatJPerKg: number
}

/** A joint to be heated: the tool, the lap with its solder, one to four conductors, and the times. */
export interface HeatJointInput {
  readonly ambientC: number
  readonly tool: Tool
  readonly joint: {
    readonly lapMm: number
    readonly diameterMm: number
    readonly surfaceMm2?: number
    readonly solderMm3: number
    readonly filmWPerM2K?: number
    readonly emissivity?: number
  }
  readonly conductors: readonly HeatSide[]
  readonly alloy: SolderName | AlloyValues
  readonly wettingSuperheatK?: number
  readonly toolOffS: number
  readonly observeS?: number
  readonly sampleTimesS?: readonly number[]
  readonly accuracy?: number
}

/** Heating of the joint and of each insulation's edge; null means "not within the run". */
export interface HeatJointResult {
  readonly reachesLiquidus: boolean
  readonly everReachesLiquidus: boolean
  readonly solidusAtS: number | null
  readonly liquidusAtS: number | null
  readonly wettedAtS: number | null
  readonly resolidifiedAtS: number | null
  readonly steadyC: number
  readonly steadyEdgeC: readonly number[]
  readonly jointAtToolOffC: number
  readonly jointPeakC: number
  readonly insulationPeakC: readonly number[]
  readonly insulationOuterPeakC: readonly number[]
  readonly insulationExposureS: readonly number[]
  readonly jointC: readonly number[]
  readonly edgeC: readonly (readonly number[])[]
  readonly energyResidual: number
}

/** A change of one lever by the smallest sufficient amount. */
export interface HeatChange {
  readonly lever: 'contactResistanceKPerW' | 'tipResistanceKPerW' | 'setC' | 'airC' | 'airSpeedMPerS' | 'maximumW' | 'stubMm' | 'clip' | 'alloy' | 'toolOffS'
  readonly from: number | string | null
  readonly to: number | string
  readonly result: HeatJointResult
}
