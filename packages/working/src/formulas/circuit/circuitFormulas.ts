import { areaForDropMm2Formula } from './areaForDropMm2.ts'
import { coilResistanceAtOhmFormula } from './coilResistanceAtOhm.ts'
import { dropBudgetFormula } from './dropBudget.ts'
import { loadCurrentAFormula } from './loadCurrentA.ts'
import { voltageDropVFormula } from './voltageDropV.ts'

/** Every formula of the room circuit. */
export const circuitFormulas = [areaForDropMm2Formula, coilResistanceAtOhmFormula, dropBudgetFormula, loadCurrentAFormula, voltageDropVFormula] as const
