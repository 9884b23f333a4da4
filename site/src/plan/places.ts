/** Places along the circuit, in the order of the current, with their names on the drawn wire. */
export const circuitPlaces = [
  { id: 'source+', words: 'source +' },
  { id: 'fuse-in', words: 'fuse, source side' },
  { id: 'fuse-out', words: 'fuse, load side' },
  { id: 'joint-in', words: 'joint, source side' },
  { id: 'joint-out', words: 'joint, load side' },
  { id: 'terminal-wire', words: 'terminal, wire side' },
  { id: 'terminal-mate', words: 'terminal, far side' },
  { id: 'load+', words: 'load +' },
  { id: 'load-', words: 'load −' },
  { id: 'return-joint', words: 'joint in the return' },
  { id: 'source-', words: 'source −' },
] as const

/** The same places inside a sentence. */
const spoken: Readonly<Record<string, string>> = {
  'source+': 'source +',
  'source-': 'source −',
  'fuse-in': 'the fuse’s source side',
  'fuse-out': 'the fuse’s load side',
  'joint-in': 'the joint’s source side',
  'joint-out': 'the joint’s load side',
  'terminal-wire': 'the terminal’s wire side',
  'terminal-mate': 'the terminal’s far side',
  'load+': 'load +',
  'load-': 'load −',
  'return-joint': 'the joint in the return',
}
const ids = /(?:source|load)[+-]|(?:fuse|joint)-(?:in|out)|terminal-(?:wire|mate)|return-joint/g

/** A sentence of the plan with the places of a job file in the words of the drawn wire. */
export const withPlaces = (sentence: string): string => sentence.replace(ids, (id) => spoken[id] ?? id)
