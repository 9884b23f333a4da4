import { airPropertiesFormula } from './airProperties.ts'
import { churchillBernsteinNusseltFormula } from './churchillBernsteinNusselt.ts'
import { criticalRadiusMmFormula } from './criticalRadiusMm.ts'
import { finConductanceWPerKFormula } from './finConductanceWPerK.ts'
import { forcedConvectionNusseltFormula } from './forcedConvectionNusselt.ts'
import { heatFlowWPerMFormula } from './heatFlowWPerM.ts'
import { insulationResistanceMKPerWFormula } from './insulationResistanceMKPerW.ts'
import { naturalConvectionNusseltFormula } from './naturalConvectionNusselt.ts'
import { rayleighNumberFormula } from './rayleighNumber.ts'

/** Every formula of the room heat. */
export const heatFormulas = [
  airPropertiesFormula,
  churchillBernsteinNusseltFormula,
  criticalRadiusMmFormula,
  finConductanceWPerKFormula,
  forcedConvectionNusseltFormula,
  heatFlowWPerMFormula,
  insulationResistanceMKPerWFormula,
  naturalConvectionNusseltFormula,
  rayleighNumberFormula,
] as const
