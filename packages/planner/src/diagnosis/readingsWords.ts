import type { SectionWords } from '../facts/inner.ts'

/** Text of the findings on readings: what each shows, by how much, and what to do. */
export const readingsWords = {
  // All readings together.
  'fault-proven': {
    says: 'fault proven between {from} and {to}',
    text: 'The fault is proven between {from} and {to}: {excess} more than a healthy stretch takes. Repair it there.',
  },
  'supply-proven-weak': {
    says: 'the supply is proven weak',
    text: 'The supply is proven weak, {excess} below a sound one: mend or charge it before you judge the lead.',
  },
  'short-proven': {
    says: 'a short is proven from {from} to {to}',
    text: 'A short is proven between {from} and {to}: keep the source off until it is found and mended.',
  },
  'leak-proven': {
    says: 'a leak is proven from {from} to {to}',
    text: 'A leak is proven between {from} and {to}: find where water or chafed insulation joins the leads.',
  },
  'load-proven': {
    says: 'the load is proven open',
    text: 'The load is proven open: the lead is not the fault. Mend or replace the load.',
  },
  'none-here': {
    says: 'all that was read is in order',
    text: 'All that was read is in order. Read: {read}. Not read: {unread}.',
  },
  'not-shown': {
    says: 'the readings do not show the fault',
    text: 'The readings do not show where the fault is. Take the next reading before you cut anything.',
  },
  'nothing-read': {
    says: 'nothing was read',
    text: 'Nothing was read over the circuit. Take the first reading before you cut anything.',
  },
  contradictory: {
    says: 'readings contradict each other',
    text: 'Readings {which} cannot all be true: they prove nothing together. Take them again at one moment, with the same current.',
  },

  // One reading each.
  misplaced: {
    says: 'a place that this circuit does not have',
    text: 'With the damage on the way back, {place} is not used: joint-in and joint-out are the two sides of the damage.',
  },
  'beyond-supply': {
    says: 'more volts than the supply has',
    text: '{measured} from {span} is more than this supply gives, {most}: it proves nothing. Try another range, or look for another source.',
  },
  'reading-contradicts': {
    says: 'contradicts another reading',
    text: '{measured} from {span} cannot be true together with reading {which}: neither proves anything. Take both again with the same current.',
  },
  'drop-fault': {
    says: 'a drop that proves a fault',
    text: '{measured} from {span} proves a fault: at most {allowed} is acceptable there. A healthy stretch drops {healthy}.',
  },
  'drop-open': {
    says: 'an open circuit',
    text: '{measured} from {span}: nearly the whole supply stands across it. The circuit is open there; no current flows.',
  },
  'drop-in-order': {
    says: 'a drop in order',
    text: '{measured} from {span} is in order: at most {allowed} is acceptable there. A healthy stretch drops {healthy}.',
  },
  'drop-cannot-tell': {
    says: 'a drop that cannot tell',
    text: '{measured} from {span} cannot tell: a fault is proven only above {allowed}. A healthy stretch drops {healthy}. {better}',
  },
  'off-load-drop': {
    says: 'no current, no drop',
    text: '{measured} from {span} with the load off shows little: without current even a bad joint drops nothing. Read it with the load on.',
  },
  'supply-in-order': {
    says: 'the supply is in order',
    text: '{measured} at the source is in order: {expected} is expected.',
  },
  'supply-weak': {
    says: 'the supply is weak',
    text: '{measured} at the source is weak: {expected} is expected. Mend or charge it before you judge the lead.',
  },
  'supply-cannot-tell': {
    says: 'the supply may be weak',
    text: '{measured} at the source cannot tell: {expected} is expected. Read it again with the load off.',
  },
  'supply-high': {
    says: 'the supply is high',
    text: '{measured} at the source is above the {expected} that is expected: look at the charger or regulator.',
  },
  'volts-lost': {
    says: 'volts are lost on the way',
    text: '{measured} from {span}: {lost} are lost outside it; {allowed} is acceptable. {where}',
  },
  'volts-in-order': {
    says: 'volts in order',
    text: '{measured} from {span} is in order: {lost} are lost outside it; {allowed} is acceptable.',
  },
  'volts-cannot-tell': {
    says: 'volts that cannot tell',
    text: '{measured} from {span} cannot tell: {lost} may be lost outside it. At most {allowed} is acceptable. {better}',
  },
  'alive-off-load': {
    says: 'the lead conducts off load',
    text: '{measured} from {span} with the load off: the lead conducts. One strand is enough for that; read it with the load on.',
  },
  'dead-off-load': {
    says: 'dead off load',
    text: '{measured} from {span} with the load off: the supply does not arrive. {where}',
  },
  'low-off-load': {
    says: 'volts are lost off load',
    text: '{measured} from {span} with the load off: {lost} are lost though nothing flows. Look for a leak or a very bad joint.',
  },
  'ohms-fault': {
    says: 'ohms that prove a fault',
    text: '{measured} from {span} proves a fault: at most {allowed} is acceptable there. A healthy stretch has {healthy}.',
  },
  'ohms-open': {
    says: 'an open circuit',
    text: '{measured} from {span}: the circuit is open there, or nearly; it cannot carry {current}.',
  },
  'ohms-in-order': {
    says: 'ohms in order',
    text: '{measured} from {span} is in order: at most {allowed} is acceptable there. A healthy stretch has {healthy}.',
  },
  'ohms-cannot-tell': {
    says: 'ohms that cannot tell',
    text: '{measured} from {span} cannot tell: leads and last digit cover the acceptable {allowed}. Read the drop under load instead.',
  },
  'ohms-yield': {
    says: 'ohms that the load contradicts',
    text: '{measured} from {span} does not fit the drop under load, and the drop counts. A joint can read well dead and fail under current.',
  },
  short: {
    says: 'a short',
    text: '{measured} from {span}, load unplugged, is a short: keep the source off until it is found.',
  },
  leak: {
    says: 'a leak',
    text: '{measured} from {span}, load unplugged, is a leak: more than {good} is good. Dry it, then look for chafed insulation.',
  },
  'leak-cannot-tell': {
    says: 'a weak insulation',
    text: '{measured} from {span} is between leak and good: above {good} is good. Dry it and read again.',
  },
  'no-short': {
    says: 'no short',
    text: '{measured} from {span}, load unplugged: no short between feed and return.',
  },
  'insulation-good': {
    says: 'the insulation is good',
    text: '{measured} from {span} is good: above {good} the insulation is dry and whole.',
  },
  'insulation-one-lead': {
    says: 'insulation along one lead',
    text: '{measured} from {span} lies along one and the same lead: insulation is read between feed and return.',
  },
  'load-open': {
    says: 'the load is open',
    text: '{measured} across the load: it is open. The lead is not the fault; mend or replace the load.',
  },
  'load-ohms': {
    says: 'ohms of the load',
    text: '{measured} across the load, where its stated current would have {expected}. {meaning}',
  },
  'current-in-order': {
    says: 'the current is in order',
    text: '{measured} flows where {expected} is stated: the load takes what it should.',
  },
  'current-low': {
    says: 'less current than stated',
    text: '{measured} flows where {expected} is stated: something resists on the way, or the load has failed. Read the volts at the load.',
  },
  'current-high': {
    says: 'more current than stated',
    text: '{measured} flows where {expected} is stated: the load is stalled or shorted. Switch off before the wire heats.',
  },
  'current-off': {
    says: 'current with the load off',
    text: '{measured} flows with the load off: a leak, a short or another load hangs on this lead.',
  },
  'no-current-off': {
    says: 'no current with the load off',
    text: '{measured} with the load off: nothing draws current there.',
  },
  'temperature-hot': {
    says: 'a place that runs hot',
    text: '{measured} at {span} is hotter than its wire can get: heat is made there. Its wire reaches {expected} at that current; read the drop.',
  },
  'temperature-in-order': {
    says: 'no hot place',
    text: '{measured} at {span} is no hotter than its wire may get, {expected}.',
  },
  'temperature-idle': {
    says: 'a temperature without load',
    text: '{measured} at {span} without load says nothing of a joint. Read it after five minutes of load.',
  },

  // Causes and the next reading.
  'causes-leading': { says: 'the likely causes', text: 'The readings leave these causes. {causes}.' },
  'next-probe': { says: 'the next reading', text: 'Next, read {what} from {span}, {state}. {expects}' },
  'next-any': { says: 'the next reading', text: 'Next, read {what} from {span}, {state}.' },
  'next-again': { says: 'the next reading', text: 'Next, read {what} from {span} again, {state}. The readings there contradict each other.' },
} as const satisfies SectionWords
