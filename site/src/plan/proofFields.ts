/** A field of the proof form, for a reading on the finished repair. */
export interface ProofField {
  readonly name: string
  readonly title: string
  readonly hint: string
  readonly unit: string
}

/** Readings for the ratio, before covering: neither current nor temperature is needed. */
const ratioOf = (joint: 1 | 2, of: string): readonly ProofField[] => [
  { name: `joint${joint}V`, title: `Over ${of}`, hint: 'From bare wire to bare wire, load on.', unit: 'mV' },
  { name: `wire${joint}V`, title: `Over plain wire beside ${of}`, hint: 'The same moment, over as much wire as the joint is long.', unit: 'mV' },
]

export const proofFields: readonly { readonly title: string; readonly fields: readonly ProofField[] }[] = [
  {
    title: 'Before covering',
    fields: [...ratioOf(1, 'the joint'), { name: 'wireLengthMm', title: 'Length of that wire', hint: 'Between the probes.', unit: 'mm' }],
  },
  { title: 'A second joint, where a length was put in', fields: ratioOf(2, 'the second joint') },
  {
    title: 'Covered, and by hand',
    fields: [
      { name: 'dropV', title: 'Drop, joint covered', hint: 'From the nearest open metal on its source side to that on its load side.', unit: 'mV' },
      { name: 'currentA', title: 'Current while reading', hint: 'From a clamp or a meter in series.', unit: 'A' },
      { name: 'tugN', title: 'Tug held', hint: 'By hand, along the wire.', unit: 'N' },
      { name: 'samplePullN', title: 'Sample pulled apart at', hint: 'A sample made the same way.', unit: 'N' },
    ],
  },
]

/** Texts for the record only. */
export const proofTexts: readonly { readonly name: 'place' | 'cause' | 'tool' | 'by'; readonly title: string }[] = [
  { name: 'place', title: 'Place' },
  { name: 'cause', title: 'Cause' },
  { name: 'tool', title: 'Tool and setting' },
  { name: 'by', title: 'Done by' },
]
