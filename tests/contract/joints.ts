import type { MethodContext, Sleeve } from './context.ts'
import type { Interval, MetalName, MethodName, Provenance, Reason, SleeveMaterialName, SolderName } from './names.ts'
import type { HeatChange, HeatJointInput, HeatJointResult, JointSite, LapPair } from './shapes.ts'

// The public contract: what the rooms of core export.

export interface JointRoom {
  lapJointResistanceOhm(i: { readonly overlapMm: number; readonly conductorsOhmPerM: readonly [number, number]; readonly interfaceSPerM: number }): number
  transferLengthMm(i: { readonly conductorsOhmPerM: readonly [number, number]; readonly interfaceSPerM: number }): number
  interfaceConductanceSPerM(i: { readonly bondWidthMm: number; readonly layerMm: number; readonly layerOhmM: number; readonly filmOhmM2?: number }): number
  constrictionResistanceOhm(i: {
    readonly resistivity1OhmM: number
    readonly resistivity2OhmM: number
    readonly spotRadiusMm: number
    readonly spots?: number
    readonly clusterRadiusMm?: number
  }): number
  contactSpotRadiusMm(i: { readonly forceN: number; readonly hardnessMPa: number }): number
  crimpInterfaceResistanceOhm(i: {
    readonly forceN: number
    readonly hardnessMPa: number
    readonly resistivity1OhmM: number
    readonly resistivity2OhmM: number
    readonly spots?: number
    readonly clusterRadiusMm?: number
    readonly filmOhmM2?: number
    readonly realAreaFactor?: number
  }): number
  jointTemperatureC(i: JointSite & { readonly jointResistanceOhm: number; readonly jointResistanceCoefficientPerK?: number }): number
  acceptanceResistanceOhm(
    i: JointSite & { readonly jointLengthMm: number; readonly limitC?: number; readonly allowedDropV?: number; readonly plainWireMultiple?: number },
  ): {
    readonly resistanceOhm: number
    readonly governedBy: 'temperature' | 'drop' | 'plain-wire'
    readonly candidates: readonly { readonly limit: 'temperature' | 'drop' | 'plain-wire'; readonly resistanceOhm: number }[]
  }
  lapCurrents(i: LapPair & { readonly atMm: readonly number[] }): readonly { readonly firstShare: number; readonly interfacePerM: number }[]
  breakEvenOverlapMm(i: {
    readonly conductorsOhmPerM: readonly [number, number]
    readonly interfaceSPerM: number
    readonly plainOhmPerM?: number
  }): number | null
  lapNetworkResistanceOhm(i: {
    readonly conductorsOhmPerM: readonly [number, number]
    readonly stretches: readonly { readonly lengthMm: number; readonly interfaceSPerM: number }[]
  }): number
  jointState(i: JointSite & { readonly jointResistanceOhm: number; readonly jointResistanceCoefficientPerK?: number }): {
    readonly jointC: number
    readonly farC: readonly [number, number]
    readonly wireFlowW: readonly [number, number]
    readonly sleeveEndC: readonly [number, number] | null
    readonly largestCurrentA: number | null
    readonly residual: number
  }
  contactVoltageV(i: { readonly peakC: number; readonly bulkC: number }): number
  shearLagPeakRatio(i: { readonly lengthMm: number; readonly perMm: number }): number
}

export interface SolderRoom {
  lapLengthForStrengthMm(i: {
    readonly tensileMPa: number
    readonly areaMm2: number
    readonly shearMPa: number
    readonly safetyFactor: number
    readonly bondWidthMm: number
  }): number
  solderVolumeMm3(i: {
    readonly overlapMm: number
    readonly diametersMm: readonly [number, number]
    readonly valleyFill?: number
    readonly strandVoidMm2?: number
  }): number
  solderWireLengthMm(i: { readonly volumeMm3: number; readonly wireDiameterMm: number; readonly fluxVolumeFraction?: number }): number
}

export interface HeatingRoom {
  heatJoint(i: HeatJointInput): HeatJointResult
  heatJointBand(i: HeatJointInput & { readonly contactFactor?: number; readonly streamFactor?: number }): {
    readonly best: HeatJointResult
    readonly nominal: HeatJointResult
    readonly worst: HeatJointResult
  }
  heatJointAdvice(
    i: HeatJointInput & {
      readonly allowedExposureS?: number
      readonly alloys?: readonly SolderName[]
      readonly limits?: Readonly<Partial<Record<HeatChange['lever'], Interval>>>
    },
  ): { readonly toFlow: readonly HeatChange[]; readonly toSpareInsulation: readonly HeatChange[]; readonly both: readonly HeatChange[] }
  heatSolderSleeve(
    i: HeatJointInput & {
      readonly tube: {
        readonly insideMm: number
        readonly wallMm: number
        readonly lengthMm: number
        readonly recoveryC: number
        readonly conductivityWPerMK?: number
        readonly densityKgPerM3?: number
        readonly specificHeatJPerKgK?: number
        readonly gripWPerM2K?: number
      }
    },
  ): HeatJointResult & {
    readonly tubeRecoversAtS: number | null
    readonly ringMeltsAtS: number | null
    readonly firstToFail: 'tube' | 'ring' | 'conductor' | 'insulation' | null
  }
}

export interface CrimpRoom {
  compressionFraction(i: { readonly looseAreaMm2: number; readonly crimpedAreaMm2: number }): number
  barrelFill(i: { readonly conductorAreasMm2: readonly number[]; readonly barrelInsideMm: number }): number
  crimpHeightMm(i: {
    readonly conductorAreaMm2: number
    readonly barrelMetalAreaMm2: number
    readonly compressionFraction: number
    readonly crimpWidthMm: number
    readonly shapeFactor?: number
  }): number
  pullShareOfConductor(i: { readonly forceN: number; readonly areaMm2: number; readonly material: MetalName }): Interval
}

export interface SleeveRoom {
  recoveryRatio(i: { readonly suppliedInsideMm: number; readonly recoveredInsideMm: number }): number
  fitSleeve(i: { readonly suppliedInsideMm: number; readonly recoveredInsideMm: number; readonly largestMm: number; readonly smallestMm: number }): {
    readonly slidesOver: boolean
    readonly grips: boolean
    readonly marginSupplied: number
    readonly marginRecovered: number
    readonly unresolvedOfRecovered: number
    readonly unresolvedOfRange: number
  }
  recoveredWallMm(i: { readonly recoveredWallMm: number; readonly recoveredInsideMm: number; readonly ontoMm: number }): number
  cutLengthMm(i: { readonly jointMm: number; readonly overlapEachSideMm: number; readonly longitudinalChange: number | Interval }): number
  stackLayers(i: { readonly coreMm: number; readonly jointMm: number; readonly layers: readonly (Sleeve & { readonly overlapEachSideMm: number })[] }): {
    readonly outsideMm: number
    readonly layers: readonly {
      readonly ontoMm: number
      readonly wallMm: number
      readonly outsideMm: number
      readonly cutLengthMm: number
      readonly grips: boolean
    }[]
  }
  chooseSleeve(i: {
    readonly largestMm: number
    readonly smallestMm: number
    readonly stock: readonly Sleeve[]
    readonly outsideLimitMm?: number
  }): readonly { readonly sleeve: Sleeve; readonly fits: boolean; readonly outsideMm: number; readonly reasons: readonly Reason[] }[]
  steppedSleeve(i: { readonly sleeve: Sleeve; readonly steps: readonly { readonly diameterMm: number; readonly lengthMm: number }[] }): {
    readonly outsideMm: number
    readonly steps: readonly { readonly wallMm: number; readonly outsideMm: number; readonly grips: boolean }[]
    readonly cutLengthMm: Interval
  }
  temperatureOrder(i: { readonly sleeve: SleeveMaterialName; readonly alloy?: SolderName; readonly insulation: string }): {
    readonly remelts: boolean | null
    readonly spoilsInsulation: boolean | null
  }
}

export interface RoutingRoom {
  bundleDiameterMm(diametersMm: readonly number[]): number
  packBundle(diametersMm: readonly number[]): { readonly diameterMm: number; readonly centresMm: readonly { readonly xMm: number; readonly yMm: number }[] }
  minimumBendRadiusMm(i: { readonly outsideDiameterMm: number; readonly rule: 'unsupported' | 'supported' | 'coaxial'; readonly multiple?: number }): number
  bendStrain(i: { readonly strandDiameterMm: number; readonly bendRadiusMm: number }): number
  flexLifeCycles(i: {
    readonly strainAmplitude: number
    readonly ductilityCoefficient?: number
    readonly ductilityExponent?: number
    readonly scatterFactor?: number
  }): { readonly low: number; readonly cycles: number; readonly high: number }
  slackAfterCutBack(i: {
    readonly slackMm: number
    readonly cutBackMm: number
    readonly jointConsumesMm: number
    readonly jointsIfInserted?: number
    readonly serviceSlackMm?: number
  }): { readonly leftMm: number; readonly insertMm: number; readonly joints: number }
  freeSpanFrequencyHz(i: { readonly spanMm: number; readonly stiffnessNMm2: number; readonly massKgPerM: number; readonly ends: 'pinned' | 'fixed' }): number
}

export interface SuitabilityRoom {
  assessMethods(context: MethodContext): readonly {
    readonly method: MethodName
    readonly verdict: 'suitable' | 'conditional' | 'unsuitable'
    readonly reasons: readonly {
      readonly rule: string
      readonly effect: 'forbids' | 'requires' | 'favours'
      readonly text: string
      readonly changesIf?: string
      readonly source: Provenance
    }[]
  }[]
  galvanicDifferenceV(metal1: MetalName, metal2: MetalName): number
}
