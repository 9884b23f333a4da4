import type { SectionWords } from '../facts/inner.ts'

/** Text of the decision: what to do in one sentence, why, and the reason against the intended way. */
export const decisionWords = {
  // What to do.
  splice: { says: 'mend', text: 'Cut out the damage and join the wire with a {title}.' },
  'splice-insert': { says: 'mend', text: 'Cut out the damage and put in {insert} of {wire} with two {title}s, staggered.' },
  'splice-outside': { says: 'mend', text: 'Put in {insert} or more of {wire}, with two {title}s where the lead does not move.' },
  terminal: { says: 'mend', text: 'Cut back to bright metal and fit a new {terminal}.' },
  'terminal-insert': { says: 'mend', text: 'Fit a new {terminal} on {insert} of {wire}, spliced once to the lead well back from the {place}.' },
  thermocouple: { says: 'mend', text: 'Join each leg to its own alloy with crimps or connectors of that alloy, side by side: no copper, no solder.' },
  'new-run': { says: 'replace the run', text: 'Replace the run: draw in {length} of {wire} from terminal to terminal.' },
  leave: { says: 'leave it', text: 'Leave it: nothing that was read is wrong. Look again {when}.' },
  measure: { says: 'measure first', text: '{next} Cut nothing yet.' },
  'measure-short': { says: 'measure first', text: 'Power nothing: a short is proven. Find it by unplugging one part after the other, reading ohms each time.' },
  'fit-fuse': { says: 'mend', text: 'Join nothing: fit a {fuse} fuse in place of the one there.' },
  'fit-fuse-by-curve': { says: 'mend', text: 'Join nothing: the {fuse} {kind} is wrong for this wire. Fit one by its maker’s curve.' },
  'fuse-contact': { says: 'mend', text: 'Join nothing: renew the fuse and clean its holder’s contacts.' },
  'return-contact': { says: 'mend', text: 'Clean and remake the return connection between {from} and {to}.' },
  supply: { says: 'mend', text: 'Charge or renew the supply, and clean its posts: the lead is not the fault.' },
  load: { says: 'mend', text: 'Mend or replace the load: the lead is not the fault.' },
  leak: { says: 'mend', text: 'Find where water or chafed insulation joins the leads, dry it, and replace that length.' },
  'data-pair': {
    says: 'by the maker’s procedure',
    text: 'Join this data pair only by its maker’s own procedure; without it replace the pair from plug to plug.',
  },
  refused: { says: 'refused', text: '{stop}' },
  // Why.
  'damage-seen': { says: 'the damage is in sight', text: 'The lead is {damage} in sight: that is mended whatever the readings say.' },
  worn: {
    says: 'the joint is worn',
    text: 'The joint drops {measured}: more than {aged}, as much as one and a half times its own length of wire. It is worn: renew it.',
  },
  // Against the intended way.
  'not-as-meant': { says: 'not as meant', text: 'Not a {title}: {why}' },
  'not-as-meant-rank': { says: 'not as meant', text: 'Not a {title}: {why}.' },
  'not-by-maker': { says: 'not as meant', text: 'Not a {title}: this pair is joined by its maker’s own procedure alone.' },
  'not-yet': { says: 'not yet', text: 'Not yet a {title}: where the fault sits is not shown.' },
  'not-joined': { says: 'not as meant', text: 'Not a {title}: nothing has to be joined for this.' },
} as const satisfies SectionWords
