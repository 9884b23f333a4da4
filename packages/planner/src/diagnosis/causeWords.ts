import type { CauseId } from './diagnosisShapes.ts'

/** Each cause in trade words. */
export const causeWords: Readonly<Record<CauseId, string>> = {
  'open-lead': 'a lead broken through',
  'high-resistance-pin': 'a pin with high resistance',
  'corroded-strands': 'corroded or broken strands in the feed wire',
  'overloaded-terminal': 'a terminal overheated by too much current',
  'lost-spring-force': 'a terminal that has lost its spring force',
  'bad-return': 'a bad return or ground connection',
  'weak-supply': 'a weak supply',
  'load-failed': 'a failed load',
  'load-stalled': 'a stalled motor',
  'coil-open': 'an open coil or winding',
  'coil-short': 'a shorted coil or winding',
  'short-to-circuit': 'a short to the return, with the fuse open',
  'dry-joint': 'a dry or badly made joint',
  'fracture-in-contact': 'a fracture whose ends touch while the lead lies still',
  'water-in-run': 'water in the run',
}
