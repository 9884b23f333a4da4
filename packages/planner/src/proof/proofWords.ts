import type { SectionWords } from '../facts/inner.ts'

/** Text of the findings on the proof. */
export const proofWords = {
  ratio: {
    says: 'the joint reads no more than its wire',
    text: 'Before covering: millivolts over the joint at most those over {length} of plain wire beside it, same current, same moment.',
  },
  'ratio-few': {
    says: 'the joint reads no more than its wire',
    text: 'Before covering, four-wire or with a known {needs}: over the joint at most what {length} of plain wire beside it shows.',
  },
  dry: { says: 'no leak is left', text: 'From feed to return at least {least}, everything unplugged, dry and again after water.' },
  contact: {
    says: 'at most {allowed} over the contact',
    text: 'Read again as before, from {from} to {to}: at most {allowed}.',
  },
  covered: {
    says: 'at most {fresh} over the joint',
    text: 'Covered: with {current} for {settle}, at most {fresh} over the joint. Take off {metre} for each metre of plain wire between.',
  },
  'covered-between': {
    says: 'at most {most} from {from} to {to}',
    text: 'With {current} for {settle}, at most {most} from {from} to {to}; more means the joint.',
  },
  'covered-blind': {
    says: 'covered, the wire hides the joint',
    text: 'Covered, the plain wire alone may differ by {spread}, more than the {fresh} allowed: take the ratio before covering. Probes stand at {from} and {to}.',
  },
  duty: {
    says: 'read within {on}',
    text: 'The load runs for {on} at most: read within that time, or put a smaller known current through it for longer.',
  },
  outer: { says: 'from {outer} on make it again', text: 'Between {fresh} and {outer} clean the probe points and read again; from {outer} on make it again.' },
  run: { says: 'the run drops at most {allowed}', text: 'Over the whole run, out and back, at most {allowed} with {current} flowing for {settle}.' },
  signal: {
    says: 'its receiver sees every state',
    text: 'What its receiver shows is right in all its states, and steady while the lead is moved.',
  },
  works: {
    says: 'the circuit works in all its states',
    text: 'It is done when the circuit works in all its states and the drop over what was mended is in order.',
  },
  tug: { says: 'a light tug moves nothing', text: 'A light tug moves nothing; it proves only that the joint is not loose.' },
  sample: { says: 'the sample holds {pull}', text: 'A sample made the same way holds {pull}. Never pull the repair itself so.' },
  'no-table': { says: 'a sample breaks outside the barrel', text: 'No pull table has this size: the sample’s wire must break outside the barrel.' },
  warmth: { says: 'no warmer than its wire by {most}', text: 'At full load the joint is at most {most} warmer than the wire {away} away.' },
  looks: { says: 'it looks as it should', text: 'It looks as a rule of the trade asks. {statement}' },
  'look-again': { says: 'look again', text: 'Look and feel again after the first hour, the first rain or trip, and at the next service.' },
} as const satisfies SectionWords
