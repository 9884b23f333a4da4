import { frozen } from '../errors/inner.ts'
import { whenCrimped } from './conditions.ts'
import { crimped } from './methods.ts'
import type { PracticeRule } from './practiceRule.ts'
import { tradePractice } from './sources.ts'

/** Rules that a plan quotes by id, kept apart so that a page ships only these. */
export const quotedProofByTestRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'pr-pull-reference',
    decides: 'proof',
    statement:
      'The forces of the pull tables are for crimps, by size and grade, and are proven by pulling a sample apart. A tug by hand on the repair proves only gross faults, and a pull table is never applied to a soldered joint.',
    conditions: [whenCrimped],
    effect: 'requires',
    methods: crimped,
    values: { table: 'pullForce', appliesTo: ['crimped-butt-splice', 'crimped-and-sealed-butt-splice', 'new-crimped-terminal'] },
    source: { status: 'common practice', source: 'UL 486A-486B, SAE AS7928, IEC 60352-2, NASA-STD-8739.4 values held in the table of pull forces' },
  },
  {
    id: 'pr-light-tug',
    decides: 'proof',
    statement:
      'Tug the finished repair by hand, along the wire, a few newton to about 20 N: it proves only that it is not loose. The 80 percent pull for contacts is not for splices.',
    conditions: [],
    effect: 'requires',
    methods: [],
    values: { tugN: [5, 20] },
    source: tradePractice,
  },
  {
    id: 'pr-no-short-before-power',
    decides: 'proof',
    statement: "Before power goes on: load unplugged, ohms from feed to return and to the frame; no short, and the right polarity at the load's plug.",
    conditions: [],
    effect: 'requires',
    methods: [],
    values: { loadUnplugged: true },
    source: tradePractice,
  },
  {
    id: 'pr-mv-splice',
    decides: 'proof',
    statement:
      'Accept a new splice whose drop at test current is no more than that of the same length of its own wire beside it, at the same temperature; look again later, and at one and a half times that drop redo it.',
    conditions: [{ field: 'reading', op: '=', values: ['drop', 'four-wire'] }],
    effect: 'limits',
    methods: [],
    values: { newMaxRatio: 1, agedMaxRatio: 1.5, formula: 'V_max = ratio * R_wireOhmPerM * lengthM * I' },
    source: { status: 'common practice', source: 'Trade practice (joint no worse than the wire)' },
  },
  {
    id: 'pr-temperature-rise',
    decides: 'proof',
    statement: 'At full load the joint should not be more than 10 K warmer than the wire 200 mm away, and the sleeve not above its rating.',
    conditions: [{ field: 'circuit', op: '=', values: ['power', 'motor', 'lighting'] }],
    effect: 'limits',
    methods: [],
    values: { maxDifferenceK: 10, comparedAtMm: 200 },
    source: tradePractice,
  },
  {
    id: 'pr-load-test-time',
    decides: 'proof',
    statement:
      'Hold the real load for at least five minutes and at least four thermal time constants of the wire or joint, whichever is longer, before the final reading.',
    conditions: [{ field: 'circuit', op: '=', values: ['power', 'motor', 'lighting'] }],
    effect: 'requires',
    methods: [],
    values: { minS: 300, minTimeConstants: 4 },
    source: { status: 'common practice', source: 'Trade practice; ASTM B539 wants stable temperature' },
  },
  {
    id: 'pr-record',
    decides: 'proof',
    statement:
      'Record: place, wire gauge, colour and insulation, cause, method, tool and setting, consumables, reading before and after with current and temperature, pull, photo before cover, name, date, temporary or permanent, retest date.',
    conditions: [],
    effect: 'requires',
    methods: [],
    values: {
      fields: [
        'place',
        'gauge',
        'insulation',
        'cause',
        'method',
        'tool',
        'consumables',
        'asFoundOhmOrV',
        'asLeftOhmOrV',
        'currentA',
        'temperatureC',
        'samplePullN',
        'photo',
        'name',
        'date',
        'temporaryOrPermanent',
        'retestDate',
      ],
    },
    source: { status: 'common practice', source: 'NASA-STD-8739.4 para 19.2 (splices are repairs to be documented); trade practice' },
  },
  {
    id: 'pr-first-look-again',
    decides: 'proof',
    statement: 'Look and feel again after the first hour of use, the first rain or trip, and at the next service.',
    conditions: [],
    effect: 'favours',
    methods: [],
    values: { againAfterS: 3600 },
    source: tradePractice,
  },
])
