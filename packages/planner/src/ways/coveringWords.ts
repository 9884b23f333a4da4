import type { SectionWords } from '../facts/inner.ts'

/** Text of the covering: which tube, length, wall, and order of heating. */
export const coveringWords = {
  'no-joint': { says: 'no joint to cover', text: 'No joint to cover: the insulation of the new run is whole.' },
  'in-housing': { says: 'the housing covers the terminal', text: 'The housing covers the terminal: no sleeve, unless it is open.' },
  'on-stud': {
    says: 'sleeve the barrel, boot the stud',
    text: 'Cover the barrel of the {terminal} with a sleeve cut {cut} long, and boot a live stud. Take {needed}.',
  },
  'own-seal': {
    says: 'the splice brings its own seal',
    text: 'The splice brings its own sealing sleeve: shrink it from the middle until adhesive shows all round at both ends.',
  },
  'own-tube': {
    says: 'the solder sleeve is used whole',
    text: 'The solder sleeve is used whole: at least {least} long as supplied, it stands {outside} over the joint when shrunk.',
  },
  'hole-too-small': {
    says: 'the wire does not pass the housing',
    text: '{size} is {outside} over its insulation: more than the {hole} of the housing’s hole. Find thin-walled wire or another housing first.',
  },
  fits: {
    says: '{sleeve}: {outside} over the joint',
    text: '{sleeve} fits: {outside} over the joint once shrunk, cut {cut} long, {overlap} past each cut edge.',
  },
  'does-not-fit': { says: '{sleeve}: does not fit', text: '{sleeve} does not fit: {why}. Fetch {needed}.' },
  'none-named': { says: 'fetch a sleeve', text: 'No sleeve is named: fetch {needed}.' },
  'not-lined': { says: 'the sleeve does not seal', text: '{sleeve} is not lined: it covers but does not seal in the wet. Take an adhesive-lined one.' },
  'too-hot-for-sleeve': {
    says: 'the joint is too hot for {sleeve}',
    text: 'The joint runs at {joint}: {sleeve} stands {limit} at steady state. Take a sleeve of a hotter grade.',
  },
  'too-cold-for-sleeve': {
    says: '{sleeve} is brittle at {coldest}',
    text: '{sleeve} turns brittle below {limit} and the coldest air has {coldest}: keep it still there.',
  },
  remelts: {
    says: 'shrinking it melts the joint again',
    text: 'Shrinking {sleeve} takes more heat than {alloy} stands: it melts the joint again. Take polyolefin.',
  },
  spoils: { says: 'shrinking it spoils the insulation', text: 'Shrinking {sleeve} takes more heat than {insulation} stands: take a tube that shrinks cooler.' },
  'seal-range': {
    says: 'keep the sleeve clear of the seal',
    text: '{outside} outside lies beyond the seal’s {low} to {high}: keep the sleeve clear of the seal.',
  },
  'wire-beyond-seal': {
    says: 'the wire needs another seal',
    text: '{size} is {outside} over its insulation, the seal takes {low} to {high}: fit the seal made for it.',
  },
  'slide-first': { says: 'slide it on first', text: 'Slide it on before you join and park it well away from the heat.' },
  creep: { says: 'seal both ends', text: 'Water creeps along the strands from an open end: seal both ends of the joint and of the wire.' },
} as const satisfies SectionWords
