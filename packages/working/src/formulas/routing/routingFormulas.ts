import { bendStrainFormula } from './bendStrain.ts'
import { flexLifeCyclesFormula } from './flexLifeCycles.ts'
import { freeSpanFrequencyHzFormula } from './freeSpanFrequencyHz.ts'
import { minimumBendRadiusMmFormula } from './minimumBendRadiusMm.ts'
import { slackAfterCutBackFormula } from './slackAfterCutBack.ts'
import { wireSagMmFormula } from './wireSagMm.ts'

/** Every formula of the room routing. */
export const routingFormulas = [
  bendStrainFormula,
  flexLifeCyclesFormula,
  freeSpanFrequencyHzFormula,
  minimumBendRadiusMmFormula,
  slackAfterCutBackFormula,
  wireSagMmFormula,
] as const
