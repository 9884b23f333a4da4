import type { SectionWords } from '../facts/inner.ts'

/** Text on the suitability of a method. */
export const methodWords = {
  suits: { says: '{title}: suits this place', text: 'A {title} suits this place: no rule of the trade that binds here speaks against it.' },
  forbidden: { says: '{title}: the wrong joint here', text: 'A {title} is the wrong joint here: a rule forbids it. {statement} It changes if {changesIf}.' },
  condition: { says: '{title}: on conditions', text: 'A {title} is right only if {changesIf}. {statement}' },
  'in-the-steps': { says: '{title}: suits this place', text: 'The steps see to this rule of the trade. {statement}' },
  favoured: { says: '{title}: suits this place', text: 'A rule of the trade puts it first here. {statement}' },
  'fetch-tool': { says: 'fetch {tool}', text: 'Fetch {tool}: it is not among what you have.' },
  'fetch-way': { says: '{title}: not at hand', text: 'A {title} is not among the ways at hand: fetch what it needs.' },
  'out-of-zone': { says: 'spliced outside the zone that moves', text: 'Where the lead moves every splice breaks again: both splices go where nothing moves.' },
  'long-run': {
    says: 'a new run of {run}',
    text: 'A new run of {run} has to be drawn in: only if the way is open from terminal to terminal. From {most} on that counts: a limit of ours.',
  },
  metals: {
    says: '{pair} are {apart} apart',
    text: '{pair} are {apart} apart on the anodic index: above {most} the baser one is eaten in the wet. Use like platings, or seal.',
  },
  'metals-unknown': {
    says: 'the pair of metals is not in the index',
    text: 'Whether {metal} may touch {other} in the damp is not known here: ask the terminal’s maker.',
  },
  temporary: { says: 'temporary: renew it soon', text: 'A temporary repair: mark it, note the date, and make it anew within {days} or at the next service.' },
  'data-pair': { says: 'by the maker’s procedure only', text: 'A data pair is no power wire: join it only by its maker’s own procedure.' },
} as const satisfies SectionWords
