import type { MethodContext, PracticeRule } from './context.ts'
import type { Band, Correlation, Interval, MetalName, Provenance } from './names.ts'
import type { WireHeat, WireStore } from './shapes.ts'

// The public contract: what the rooms of core export.

export interface TablesRoom {
  maximumResistanceOhmPerM(i: {
    readonly standard: 'IEC 60228' | 'ISO 6722-1'
    readonly areaMm2: number
    readonly conductorClass?: 1 | 2 | 5 | 6
    readonly coating: 'plain' | 'metal-coated'
  }): number
  minimumPullForceN(i: {
    readonly standard: 'UL 486A-486B' | 'SAE AS7928' | 'IEC 60352-2' | 'NASA-STD-8739.4'
    readonly areaMm2?: number
    readonly gauge?: number
    readonly contactSize?: number
  }): number
}

export interface RulesRoom {
  readonly practiceRules: readonly PracticeRule[]
  rulesFor(section: PracticeRule['decides'], context: Readonly<Partial<MethodContext>>): readonly PracticeRule[]
}

export interface HeatRoom {
  airProperties(
    temperatureC: number,
    pressurePa?: number,
  ): {
    readonly densityKgPerM3: number
    readonly viscosityPaS: number
    readonly conductivityWPerMK: number
    readonly prandtl: number
    readonly expansionPerK: number
  }
  naturalConvectionNusselt(i: { readonly rayleigh: number; readonly prandtl: number; readonly correlation?: Correlation }): number
  forcedConvectionNusselt(i: { readonly reynolds: number; readonly prandtl: number }): number
  heatFlowWPerM(i: {
    readonly surfaceC: number
    readonly ambientC: number
    readonly diameterMm: number
    readonly emissivity: number
    readonly airSpeedMPerS?: number
    readonly pressurePa?: number
    readonly solarAbsorbedWPerM?: number
    readonly correlation?: Correlation
  }): {
    readonly naturalWPerM: number
    readonly forcedWPerM: number
    readonly convectionWPerM: number
    readonly radiationWPerM: number
    readonly totalWPerM: number
  }
  criticalRadiusMm(i: { readonly insulationConductivityWPerMK: number; readonly filmWPerM2K: number }): number
  insulationResistanceMKPerW(i: { readonly conductorDiameterMm: number; readonly outsideDiameterMm: number; readonly conductivityWPerMK: number }): number
  finConductanceWPerK(i: {
    readonly conductivityWPerMK: number
    readonly areaMm2: number
    readonly lossWPerMK: number
    readonly lengthMm?: number
    readonly end?: 'insulated' | 'held'
  }): number
}

export interface ConductorRoom {
  awgToDiameterMm(gauge: number): number
  awgToAreaMm2(gauge: number): number
  areaMm2ToAwg(areaMm2: number): number
  nearestAwg(areaMm2: number): number
  parseAwg(text: string): number
  formatAwg(gauge: number): string
  mm2ToCircularMils(areaMm2: number): number
  circularMilsToMm2(circularMils: number): number
  strandedAreaMm2(i: { readonly strandCount: number; readonly strandDiameterMm: number }): number
  strandedDiameterMm(i: { readonly strandCount: number; readonly strandDiameterMm: number }): number
  resistivityOhmM(material: MetalName, temperatureC: number): number
  resistanceOhm(i: {
    readonly areaMm2: number
    readonly lengthM: number
    readonly material: MetalName
    readonly temperatureC: number
    readonly layFactor?: number
  }): number
  resistanceOhmPerM(i: { readonly areaMm2: number; readonly material: MetalName; readonly temperatureC: number; readonly layFactor?: number }): number
  remainingAreaMm2(i: { readonly areaMm2: number; readonly strandCount: number; readonly brokenStrands: number; readonly corrodedDepthMm: number }): number
  layFactor(i: { readonly layerDiameterMm: number; readonly pitchMm: number }): number
  massKgPerM(i: { readonly areaMm2: number; readonly material: MetalName; readonly layFactor?: number }): number
  skinDepthMm(i: { readonly material: MetalName; readonly temperatureC: number; readonly frequencyHz: number }): number
  identifyWire(i: {
    readonly conductorDiameterMm?: Interval
    readonly strandCount?: number
    readonly strandDiameterMm?: Interval
    readonly massKgPerM?: Interval
    readonly resistanceOhmPerM?: Interval
    readonly temperatureC?: number
  }): readonly {
    readonly standard: 'AWG' | 'SAE J1128' | 'ISO 6722-1' | 'IEC 60228'
    readonly size: string
    readonly areaMm2: number
    readonly material: MetalName
    readonly conflicts: readonly string[]
  }[]
}

export interface AmpacityRoom {
  conductorTemperatureC(i: WireHeat & { readonly currentA: number; readonly ceilingC?: number }): number
  steadyCurrentA(i: WireHeat & { readonly limitC: number }): number | null
  conductorTemperatureBandC(i: WireHeat & { readonly currentA: number }): Band
  steadyCurrentBandA(i: WireHeat & { readonly limitC: number }): Band | null
  ambientFactor(i: { readonly limitC: number; readonly ambientC: number; readonly referenceAmbientC: number }): number
  groupingFactor(i: { readonly loadedConductors: number; readonly table: 'nec' | 'iec-bunched' | 'iec-single-layer' | '33-cfr-183.425' | 'as50881' }): number
  altitudeFactor(i: { readonly altitudeM: number }): number
  dutyCurrentA(i: { readonly onS: number; readonly offS: number; readonly timeConstantS: number; readonly steadyA: number }): number
  deratedCurrentA(i: { readonly baseA: number; readonly links: readonly { readonly name: string; readonly factor: number; readonly source: Provenance }[] }): {
    readonly currentA: number
    readonly links: readonly { readonly name: string; readonly factor: number; readonly currentA: number; readonly source: Provenance }[]
  }
  thermalTimeConstantS(i: WireHeat & WireStore & { readonly currentA?: number; readonly atC?: number }): number
  temperatureAfterC(i: WireHeat & WireStore & { readonly currentA: number; readonly timeS: number; readonly initialC?: number }): number
  timeToTemperatureS(i: WireHeat & WireStore & { readonly currentA: number; readonly wantedC: number; readonly initialC?: number }): number | null
  adiabaticFaultCurrentA(i: {
    readonly areaMm2: number
    readonly timeS: number
    readonly material: 'copper' | 'aluminium' | 'steel' | 'lead'
    readonly initialC: number
    readonly finalC: number
  }): number
  fusingCurrentPreeceA(i: { readonly diameterMm: number; readonly material: 'copper' | 'aluminium' | 'iron' | 'tin' | 'tin-lead' | 'lead' }): number
  fusingTimeOnderdonkS(i: { readonly areaMm2: number; readonly currentA: number; readonly initialC: number; readonly meltingC?: number }): number
  wireState(i: WireHeat & { readonly currentA: number }): {
    readonly conductorC: number
    readonly surfaceC: number
    readonly resistanceOhmPerM: number
    readonly convectionWPerM: number
    readonly radiationWPerM: number
    readonly rayleigh: number
    readonly reynolds: number
    readonly extrapolated: readonly ('rayleigh' | 'reynolds-prandtl' | 'resistivity')[]
    readonly evaluations: number
    readonly residual: number
  }
  bundleTemperatureC(
    i: WireHeat & { readonly currentA: number; readonly loadedWires: number; readonly bundleOutsideMm: number; readonly bundleConductivityWPerMK?: number },
  ): { readonly centreC: number; readonly surfaceC: number }
  temperatureOverStepsC(
    i: WireHeat &
      WireStore & { readonly steps: readonly { readonly currentA: number; readonly timeS: number }[]; readonly repeated?: boolean; readonly initialC?: number },
  ): { readonly endsC: readonly number[]; readonly peakC: number }
  nonAdiabaticFactor(i: { readonly areaMm2: number; readonly timeS: number; readonly xMm2PerS: number; readonly yMm2PerS: number }): number
}
