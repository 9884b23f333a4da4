import type { Answers } from '../../site/src/plan/answers.ts'

/** The eight answers that a first plan can't do without, for the lead of the demo: bare numbers in the units beside the fields. */
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
