import { areaMm2ToAwgFormula } from './areaMm2ToAwg.ts'
import { awgToAreaMm2Formula } from './awgToAreaMm2.ts'
import { awgToDiameterMmFormula } from './awgToDiameterMm.ts'
import { circularMilsToMm2Formula } from './circularMilsToMm2.ts'
import { layFactorFormula } from './layFactor.ts'
import { massKgPerMFormula } from './massKgPerM.ts'
import { mm2ToCircularMilsFormula } from './mm2ToCircularMils.ts'
import { nearestAwgFormula } from './nearestAwg.ts'
import { remainingAreaMm2Formula } from './remainingAreaMm2.ts'
import { resistanceAtTemperatureOhmFormula } from './resistanceAtTemperatureOhm.ts'
import { resistanceOhmFormula } from './resistanceOhm.ts'
import { resistanceOhmPerMFormula } from './resistanceOhmPerM.ts'
import { resistivityOhmMFormula } from './resistivityOhmM.ts'
import { skinDepthMmFormula } from './skinDepthMm.ts'
import { strandedAreaMm2Formula } from './strandedAreaMm2.ts'
import { strandedDiameterMmFormula } from './strandedDiameterMm.ts'
import { tinAreaMm2Formula } from './tinAreaMm2.ts'
import { tinnedResistanceOhmPerMFormula } from './tinnedResistanceOhmPerM.ts'

/** Every formula of the room conductor. */
export const conductorFormulas = [
  areaMm2ToAwgFormula,
  awgToAreaMm2Formula,
  awgToDiameterMmFormula,
  circularMilsToMm2Formula,
  layFactorFormula,
  massKgPerMFormula,
  mm2ToCircularMilsFormula,
  nearestAwgFormula,
  remainingAreaMm2Formula,
  resistanceAtTemperatureOhmFormula,
  resistanceOhmFormula,
  resistanceOhmPerMFormula,
  resistivityOhmMFormula,
  skinDepthMmFormula,
  strandedAreaMm2Formula,
  strandedDiameterMmFormula,
  tinAreaMm2Formula,
  tinnedResistanceOhmPerMFormula,
] as const
