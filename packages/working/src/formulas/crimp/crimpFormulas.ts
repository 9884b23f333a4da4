import { barrelFillFormula } from './barrelFill.ts'
import { compressionFractionFormula } from './compressionFraction.ts'
import { crimpHeightMmFormula } from './crimpHeightMm.ts'
import { pullShareOfConductorFormula } from './pullShareOfConductor.ts'

/** Every formula of the room crimp. */
export const crimpFormulas = [barrelFillFormula, compressionFractionFormula, crimpHeightMmFormula, pullShareOfConductorFormula] as const
