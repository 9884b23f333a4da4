import type { Answers } from '../../site/src/plan/answers.ts'

/** What a first plan can't do without, for the lead of the demo: bare numbers in the units beside the fields. */
export const neededAnswers: Answers = {
  'circuit.kind': 'motor',
  'circuit.supplyV': '12',
  'damage.kind': 'broken',
  'damage.fromTerminationMm': '25',
  'damage.slackMm': '45',
  'wire.size': '16',
  'wire.insulation': 'XLPE',
  'wire.outLengthM': '3.2',
  'surroundings.ambientC': '18',
  'surroundings.location': 'splash',
  'surroundings.vibration': 'some',
  'load.currentA': '4.2',
}
