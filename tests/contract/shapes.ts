import type { Correlation, InsulationName, MetalName, SolderName } from './names.ts'

// The public contract: What the models of heat, joints and fuses take and give.

export interface FusePoint {
  readonly multiple: number
  readonly shortestS: number | null
  readonly longestS: number | null
}

export interface WireHeat {
  readonly areaMm2: number
  readonly material?: MetalName
  readonly conductorDiameterMm?: number
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
  readonly filmWPerM2K?: number
}

export interface WireStore {
  readonly conductorDensityKgPerM3?: number
  readonly conductorSpecificHeatJPerKgK?: number
  readonly insulationDensityKgPerM3?: number
  readonly insulationSpecificHeatJPerKgK?: number
  readonly insulationShare?: number
}

export interface JointSide {
  readonly areaMm2: number
  readonly material?: MetalName
  readonly conductorDiameterMm?: number
  readonly insulationThicknessMm: number
  readonly insulationConductivityWPerMK: number
  readonly conductivityWPerMK?: number
  readonly resistivity20OhmM?: number
  readonly temperatureCoefficient20PerK?: number
  readonly emissivity?: number
  readonly filmWPerM2K?: number
}

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

export type Tool =
  | {
      readonly kind: 'iron'
      readonly setC: number
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
    }

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
  readonly alloy:
    | SolderName
    | {
        readonly name?: string
        readonly solidusC: number
        readonly liquidusC: number
        readonly densityKgPerM3: number
        readonly specificHeatJPerKgK: number
        readonly latentHeatJPerKg: number
      }
  readonly wettingSuperheatK?: number
  readonly toolOffS: number
  readonly observeS?: number
  readonly sampleTimesS?: readonly number[]
  readonly accuracy?: number
}

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

export type LapPair = { readonly overlapMm: number; readonly conductorsOhmPerM: readonly [number, number]; readonly interfaceSPerM: number }

export interface HeatChange {
  readonly lever: 'contactResistanceKPerW' | 'tipResistanceKPerW' | 'setC' | 'airC' | 'airSpeedMPerS' | 'maximumW' | 'stubMm' | 'clip' | 'alloy' | 'toolOffS'
  readonly from: number | string | null
  readonly to: number | string
  readonly result: HeatJointResult
}
