import type { Interval, MetalName, ProofVerdict, Reason } from './names.ts'
import type { FusePoint, WireHeat, WireStore } from './shapes.ts'

// The public contract: what the rooms of core export.

export interface CircuitRoom {
  voltageDropV(i: {
    readonly currentA: number
    readonly outResistanceOhm: number
    readonly returnResistanceOhm: number
    readonly jointsOhm?: readonly number[]
  }): number
  dropBudget(i: { readonly currentA: number; readonly elements: readonly { readonly name: string; readonly resistanceOhm: number }[] }): {
    readonly dropV: number
    readonly shares: readonly { readonly name: string; readonly dropV: number; readonly share: number }[]
  }
  areaForDropMm2(i: {
    readonly currentA: number
    readonly outLengthM: number
    readonly returnLengthM: number
    readonly allowedDropV: number
    readonly material: MetalName
    readonly temperatureC: number
  }): number
  loadCurrentA(i: {
    readonly supplyV: number
    readonly seriesOhm: number
    readonly load:
      | { readonly kind: 'current'; readonly currentA: number }
      | { readonly kind: 'resistance'; readonly resistanceOhm: number }
      | { readonly kind: 'power'; readonly powerW: number }
  }): number
  coilResistanceAtOhm(i: { readonly resistanceOhm: number; readonly atC: number; readonly wantedC: number; readonly material?: MetalName }): number
  locateDrop(i: {
    readonly currentA: number
    readonly currentUncertaintyA?: number
    readonly points: readonly { readonly name: string; readonly voltageV: number; readonly uncertaintyV?: number; readonly expectedOhmToNext?: number }[]
  }): {
    readonly stretches: readonly {
      readonly from: string
      readonly to: string
      readonly dropV: number
      readonly lowV: number
      readonly highV: number
      readonly resistanceOhm: number
      readonly lowOhm: number
      readonly highOhm: number
      readonly share: number
      readonly excess: 'yes' | 'no' | 'cannot tell'
    }[]
    readonly worst: { readonly from: string; readonly to: string } | null
  }
  smallestSizeForDrop(i: {
    readonly series: 'AWG' | 'IEC 60228'
    readonly currentA: number
    readonly outLengthM: number
    readonly returnLengthM: number
    readonly allowedDropV: number
    readonly material: MetalName
    readonly temperatureC: number
  }): { readonly size: string; readonly areaMm2: number; readonly dropV: number } | null
}

export interface ProtectionRoom {
  terminalCurrentA(i: {
    readonly ratedCurrentA: number
    readonly ratedAmbientC: number
    readonly limitC: number
    readonly ambientC: number
    readonly reserveFactor?: number
  }): number
  fuseForWire(i: {
    readonly loadA: number
    readonly wireA: number
    readonly inrush?: { readonly currentA: number; readonly timeS: number }
    readonly stallA?: number
    readonly ambientC: number
    readonly series: 'ISO 8820-3'
    readonly loadFraction?: number
  }): {
    readonly ratedA: number | null
    readonly candidates: readonly {
      readonly ratedA: number
      readonly atAmbientA: number
      readonly carriesLoad: boolean
      readonly carriesInrush: boolean | null
      readonly protectsWire: boolean
      readonly reasons: readonly Reason[]
    }[]
  }
  fuseProtectsWire(i: {
    readonly ratedA: number
    readonly ambientFactor?: number
    readonly band: readonly FusePoint[]
    readonly wire: WireHeat & WireStore
    readonly initialC?: number
    readonly limitC: number
    readonly prospectiveA?: number
  }): {
    readonly protects: boolean
    readonly worst: { readonly currentA: number; readonly fuseLongestS: number | null; readonly wireS: number | null }
    readonly unprotected: readonly { readonly lowA: number; readonly highA: number }[]
  }
  fuseOpeningS(i: { readonly ratedA: number; readonly ambientFactor?: number; readonly band: readonly FusePoint[]; readonly currentA: number }): {
    readonly shortestS: number | null
    readonly longestS: number | null
  }
  prospectiveCurrentA(i: { readonly supplyV: number; readonly sourceOhm: number; readonly loopOhm: number }): number
}

export interface MeterRoom {
  readingInterval(i: {
    readonly reading: number
    readonly percentOfReading: number
    readonly counts: number
    readonly resolution: number
    readonly leadOhm?: number
    readonly leadUncertaintyOhm?: number
  }): { readonly low: number; readonly high: number; readonly standardUncertainty: number }
  twoWireProof(i: {
    readonly readingOhm: number
    readonly meter: {
      readonly percentOfReading: number
      readonly counts: number
      readonly resolutionOhm: number
      readonly leadOhm?: number
      readonly leadUncertaintyOhm?: number
    }
    readonly currentA: number
    readonly allowedDropV: number
  }): { readonly verdict: ProofVerdict; readonly dropLowV: number; readonly dropHighV: number }
  dropTestVerdict(i: {
    readonly measuredV: number
    readonly uncertaintyV: number
    readonly testA: number
    readonly workingA: number
    readonly allowedDropV: number
  }): { readonly verdict: ProofVerdict; readonly dropLowV: number; readonly dropHighV: number }
  fourWireResistanceOhm(i: { readonly forwardV: number; readonly reversedV?: number; readonly currentA: number }): number
  continuityProof(i: { readonly toneBelowOhm: Interval; readonly toned: boolean; readonly currentA: number; readonly allowedDropV: number }): {
    readonly verdict: ProofVerdict
    readonly dropLowV: number
    readonly dropHighV: number | null
  }
}
