/** Choices that need more than replacing hyphens to be readable. */
const special: Readonly<Record<string, string>> = {
  'source+': 'source +',
  'source-': 'source −',
  'fuse-in': 'fuse, source side',
  'fuse-out': 'fuse, load side',
  'joint-in': 'joint, source side',
  'joint-out': 'joint, load side',
  'terminal-wire': 'terminal, wire side',
  'terminal-mate': 'terminal, far side',
  'load+': 'load +',
  'load-': 'load −',
  'return-joint': 'joint in the return',
  'aluminium-1350': 'aluminium 1350',
  'brass-cuzn30': 'brass CuZn30',
  'brass-cuzn37': 'brass CuZn37',
  'phosphor-bronze-cusn5': 'phosphor bronze CuSn5',
  'polyolefin-adhesive-lined': 'polyolefin, adhesive-lined',
  resistance: 'ohms, two leads',
  drop: 'drop under load',
  'four-wire': 'ohms, four wires',
  voltage: 'volts between two places',
  dc: 'direct, DC',
  ac: 'alternating, AC',
  inch: 'inch',
  true: 'yes',
  false: 'no',
}

/** A choice of the job file as the form shows it. */
export function choiceWord(value: string): string {
  if (Object.hasOwn(special, value)) return special[value] ?? value
  // Alloys and standards keep their own spelling.
  return /[A-Z0-9]/.test(value) ? value : value.replaceAll('-', ' ')
}
