import { heatJointFormula } from './heatJoint.ts'
import { heatSolderSleeveFormula } from './heatSolderSleeve.ts'

/** Every formula of the room heating. */
export const heatingFormulas = [heatJointFormula, heatSolderSleeveFormula] as const
