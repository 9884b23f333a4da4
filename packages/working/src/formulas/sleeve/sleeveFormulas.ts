import { chooseSleeveFormula } from './chooseSleeve.ts'
import { cutLengthMmFormula } from './cutLengthMm.ts'
import { fitSleeveFormula } from './fitSleeve.ts'
import { recoveredWallMmFormula } from './recoveredWallMm.ts'
import { recoveryRatioFormula } from './recoveryRatio.ts'
import { stackLayersFormula } from './stackLayers.ts'

/** Every formula of the room sleeve. */
export const sleeveFormulas = [
  chooseSleeveFormula,
  cutLengthMmFormula,
  fitSleeveFormula,
  recoveredWallMmFormula,
  recoveryRatioFormula,
  stackLayersFormula,
] as const
