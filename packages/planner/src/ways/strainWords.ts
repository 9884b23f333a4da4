import type { SectionWords } from '../facts/inner.ts'

/** Text on strain relief. */
export const strainWords = {
  bend: { says: 'no bend tighter than {radius}', text: 'No bend tighter than {radius} to its inside, {diameters} outer diameters, at the repair.' },
  'bend-too-tight': {
    says: 'bent to {given}, tighter than {radius}',
    text: 'The lead is bent to {given}: {radius} is the least, {diameters} outer diameters. Ease the bend.',
  },
  'flex-life': {
    says: 'strands last {low} to {high} bends',
    text: 'At this bend the strands last {low} to {high} cycles; {wanted} are asked of it. That is enough.',
  },
  'flex-short': {
    says: 'strands may break before {wanted} bends',
    text: 'At this bend the strands may break after {low} cycles; {wanted} are asked of it. Widen the bend, or take finer strands.',
  },
  'flex-too-short': {
    says: 'strands break before {wanted} bends',
    text: 'At this bend the strands break after at most {high} cycles; {wanted} are asked of it. Widen the bend, or take finer strands.',
  },
  travel: { says: 'leave length for the whole travel', text: 'Leave length for the whole travel, without pull at either end; strands as fine as the old.' },
  'fine-strands': { says: 'wire as fine-stranded as the old', text: 'New wire has strands as fine as the old: {strand} or finer.' },
  ties: { says: 'tie both sides of the splice', text: 'Tie the wire on both sides of the splice, {from} to {to} off its sleeve.' },
  'first-tie': { says: 'first tie {from} behind the {place}', text: 'First tie about {from} behind the {place}, so that nothing pulls its contacts sideways.' },
  support: { says: 'support the stiff end', text: 'Support the wire within {near} of the solder, so that its stiff end is not the hinge.' },
  'no-load': { says: 'no pull on the joint', text: 'No pull on the joint: the wire hangs from clamps on both sides.' },
  'drip-loop': { says: 'a drip loop below the {place}', text: 'Let the lead hang in a drip loop below the {place}, so that water drops off before the seal.' },
  'above-water': { says: 'above the highest water', text: 'Keep the joint above the highest standing water, {above} over a bilge pump where the lead allows.' },
  'cold-pvc': { says: 'PVC is brittle below {from}', text: 'PVC is brittle below {from} and the coldest air has {coldest}: warm it before you bend it.' },
  'stud-support': { says: 'support the lug beside its stud', text: 'Support the lead beside its stud, so that a side pull cannot loosen the nut.' },
} as const satisfies SectionWords
