import type { InsulationName, MetalName, SleeveMaterialName, SolderName } from './names.ts'
import type { MaterialValue } from './provenance.ts'

/** Properties of a metal at 20 °C; null is not known, and a function that needs it throws UnknownEntryError. */
export interface Metal {
  readonly name: MetalName
  readonly resistivity20OhmM: MaterialValue
  readonly temperatureCoefficient20PerK: MaterialValue
  readonly densityKgPerM3: MaterialValue
  readonly specificHeatJPerKgK: MaterialValue
  readonly conductivityWPerMK: MaterialValue
  readonly tensileMPa: MaterialValue | null
  readonly meltingC: MaterialValue
}

/** Properties of a solder alloy; null is not known. */
export interface Solder {
  readonly name: SolderName
  readonly solidusC: MaterialValue
  readonly liquidusC: MaterialValue
  readonly densityKgPerM3: MaterialValue
  readonly resistivityOhmM: MaterialValue | null
  readonly conductivityWPerMK: MaterialValue | null
  readonly tensileMPa: MaterialValue | null
  readonly shearMPa: MaterialValue | null
  readonly latentHeatJPerKg: MaterialValue | null
  readonly specificHeatJPerKgK: MaterialValue | null
}

/** Properties of a wire insulation; null is not known. */
export interface Insulation {
  readonly name: InsulationName
  readonly continuousC: MaterialValue
  readonly conductivityWPerMK: MaterialValue | null
  readonly shortExposureC: MaterialValue | null
  readonly densityKgPerM3: MaterialValue | null
  readonly specificHeatJPerKgK: MaterialValue | null
}

/** Properties of a heat-shrink material; null is not known. */
export interface SleeveMaterial {
  readonly name: SleeveMaterialName
  readonly recoveryRatio: MaterialValue | null
  readonly recoveryStartC: MaterialValue | null
  readonly fullRecoveryC: MaterialValue | null
  readonly continuousC: MaterialValue | null
  readonly longitudinalChange: MaterialValue | null
}
