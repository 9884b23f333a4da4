import { capillaryRiseMmFormula } from './capillaryRiseMm.ts'
import { lapLengthForStrengthMmFormula } from './lapLengthForStrengthMm.ts'
import { lapStrengthNFormula } from './lapStrengthN.ts'
import { solderPartsMm3Formula } from './solderPartsMm3.ts'
import { solderVolumeMm3Formula } from './solderVolumeMm3.ts'
import { solderWireLengthMmFormula } from './solderWireLengthMm.ts'
import { strandVoidMm2Formula } from './strandVoidMm2.ts'

/** Every formula of the room solder. */
export const solderFormulas = [
  capillaryRiseMmFormula,
  lapLengthForStrengthMmFormula,
  lapStrengthNFormula,
  solderPartsMm3Formula,
  solderVolumeMm3Formula,
  solderWireLengthMmFormula,
  strandVoidMm2Formula,
] as const
