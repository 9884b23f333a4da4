/** Places along the circuit, in the order of the current, with their names on the drawn wire. */
export const circuitPlaces = [
  { id: 'source+', words: 'source +' },
  { id: 'fuse-in', words: 'fuse, source side' },
  { id: 'fuse-out', words: 'fuse, load side' },
  { id: 'joint-in', words: 'joint, source side' },
  { id: 'joint-out', words: 'joint, load side' },
  { id: 'terminal-wire', words: 'terminal, wire' },
  { id: 'terminal-mate', words: 'terminal, mate' },
  { id: 'load+', words: 'load +' },
  { id: 'load-', words: 'load −' },
  { id: 'return-joint', words: 'return joint' },
  { id: 'source-', words: 'source −' },
] as const
