import type { Answers } from '../../site/src/plan/answers.ts'

/** The eight required answers for the demo's lead: bare numbers in the units beside the fields. */
export const neededAnswers: Answers = {
  'damage.kind': 'broken',
  'damage.fromTerminationMm': '25',
  'wire.size': '1.5',
  'wire.insulation': 'XLPE',
  'wire.outLengthM': '3.2',
  'circuit.kind': 'motor',
  'circuit.supplyV': '12',
  'load.currentA': '4.2',
}
