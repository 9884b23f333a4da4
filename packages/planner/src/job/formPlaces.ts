/** Order and headings of the job's groups in a form. Questions and allowed values come from the schema; this adds part, order, heading, and sets of fields of which exactly one is required. */
interface FormPlace {
  readonly at: string
  readonly id: string
  readonly title: string
  readonly sentence: string
  readonly part: 'see' | 'measured' | 'have'
  readonly oneOf: readonly (readonly string[])[]
  /** Label of the discriminator field. */
  readonly kindAsked?: { readonly title: string; readonly description: string }
  /** Top-level job fields in this group. */
  readonly names: readonly string[]
}

export const formPlaces: readonly FormPlace[] = [
  {
    at: 'circuit',
    id: 'circuit',
    title: 'Circuit and fuse',
    sentence: 'What the wire serves and what feeds it.',
    part: 'see',
    oneOf: [],
    names: [],
  },
  { at: 'damage', id: 'damage', title: 'Damage', sentence: 'What is wrong, and how near to the plug.', part: 'see', oneOf: [], names: [] },
  { at: 'wire', id: 'wire', title: 'Wire', sentence: 'As printed on it, or as measured.', part: 'see', oneOf: [['size', 'areaMm2']], names: [] },
  {
    at: 'wireBeyond',
    id: 'wire-beyond',
    title: 'Wire beyond the joint',
    sentence: 'Only if it differs from the wire on this side.',
    part: 'see',
    oneOf: [],
    names: [],
  },
  {
    at: 'terminal',
    id: 'terminal',
    title: 'Terminal and housing',
    sentence: 'The plug or terminal next to the damage.',
    part: 'see',
    oneOf: [],
    names: [],
  },
  { at: 'surroundings', id: 'surroundings', title: 'Surroundings', sentence: 'Where the joint will be in service.', part: 'see', oneOf: [], names: [] },
  {
    at: 'load',
    id: 'load',
    title: 'Load',
    sentence: 'What the wire has to carry.',
    part: 'measured',
    oneOf: [['currentA', 'powerW', 'resistanceOhm']],
    names: [],
  },
  {
    at: 'readings',
    id: 'readings',
    title: 'Readings',
    sentence: 'What your meter showed, and between which places.',
    part: 'measured',
    oneOf: [],
    names: [],
  },
  {
    at: '',
    id: 'way',
    title: 'Way to join',
    sentence: 'What you had in mind, and what else you could do.',
    part: 'have',
    oneOf: [],
    names: ['intendedMethod', 'repair', 'hasCrimpTool', 'hasTerminalDie', 'methods'],
  },
  {
    at: 'solderSleeve',
    id: 'solder-sleeve',
    title: 'Solder sleeve',
    sentence: 'A sleeve with a ring of solder inside, if you have one.',
    part: 'have',
    oneOf: [],
    names: [],
  },
  {
    at: 'tools',
    id: 'tools',
    title: 'Heat tools',
    sentence: 'Irons and hot air that you have.',
    part: 'have',
    oneOf: [],
    kindAsked: { title: 'Kind of tool', description: 'An iron touches the joint; hot air blows on it.' },
    names: [],
  },
  { at: '', id: 'solders', title: 'Solder', sentence: 'Alloys that you have.', part: 'have', oneOf: [], names: ['solders'] },
  { at: 'sleeves', id: 'sleeves', title: 'Sleeves', sentence: 'Heat-shrink tube that you have.', part: 'have', oneOf: [], names: [] },
  { at: '', id: 'sheet', title: 'This sheet', sentence: 'A name for the job card.', part: 'have', oneOf: [], names: ['title', 'units'] },
]
