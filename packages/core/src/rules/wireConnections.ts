import { frozen } from '../errors/inner.ts'
import { onRoadVehicle, onSmallCraft, terminalGiven } from './conditions.ts'
import type { PracticeRule } from './practiceRule.ts'

/**
 * Terminals, studs and returns at the ends of the wire, as rules.
 *
 * @source each rule carries its own
 */
export const wireConnectionRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'wp-terminal-derating',
    decides: 'wire-and-protection',
    statement:
      'A terminal is limited by temperature, not by its catalogue current: draw the measured current that brings it from ambient to its limit, then use 80 percent of that current.',
    conditions: [terminalGiven],
    effect: 'limits',
    methods: [],
    values: { deratingFactor: 0.8 },
    source: { status: 'published', source: "IEC 60512-5-2 test 5b as reproduced in connector makers' derating sheets" },
  },
  {
    id: 'me-conditions-overloaded',
    decides: 'wire-and-protection',
    statement: 'A joint that melted from overload is not fixed by a better joint: find the load or wire that was too much first.',
    conditions: [{ field: 'damage', op: '=', values: ['overheated'] }],
    effect: 'requires',
    methods: [],
    values: { findOverloadFirst: true },
    source: { status: 'common practice', source: 'Trade practice; FAA AC 43.13-1B para 11-2 lists overheated connections as findings to trace' },
  },
  {
    id: 'wp-no-parallel',
    decides: 'wire-and-protection',
    statement: 'Do not parallel wires or pins to gain capacity in a repair: the shares are not equal and one fuse guards neither.',
    conditions: [{ field: 'situation', op: '=', values: ['parallel-wires'] }],
    effect: 'forbids',
    methods: [],
    values: { allowedOnlyAboveA: 220 },
    source: { status: 'published', source: 'MIL-DTL-917F', clause: 'clause 3.12.2.8' },
  },
  {
    id: 'wp-three-per-stud',
    decides: 'wire-and-protection',
    statement: 'No more than three connections on one stud or screw, two on a terminal with two screws.',
    conditions: [{ field: 'situation', op: '=', values: ['stud-terminal'] }],
    effect: 'limits',
    methods: [],
    values: { maxPerStud: 3, maxPerScrewOfPair: 2 },
    source: { status: 'published', source: 'MIL-DTL-917F', clause: 'clause 3.12.2.8' },
  },
  {
    id: 'wp-four-per-stud',
    decides: 'wire-and-protection',
    statement: 'Aircraft and boat practice allow up to four ring terminals on a stud, largest at the bottom; more need a bar across two studs.',
    conditions: [
      { field: 'rules', op: '=', values: ['small-craft', 'aircraft'] },
      { field: 'situation', op: '=', values: ['stud-terminal'] },
    ],
    effect: 'limits',
    methods: [],
    values: { maxPerStud: 4, largestFirst: true },
    source: { status: 'published', source: 'FAA AC 43.13-1B para 11-174 b, page 11-67; marine consultant on the boat council rule' },
  },
  {
    id: 'wp-conflict-stud',
    decides: 'wire-and-protection',
    statement: 'Three terminals on a stud (naval) or four (aircraft, boat). Default three; four where those rule sets are named.',
    conditions: [{ field: 'situation', op: '=', values: ['stud-terminal'] }],
    effect: 'limits',
    methods: [],
    values: { default: 3, named: 4 },
    source: { status: 'common practice', source: 'MIL-DTL-917F against FAA AC 43.13-1B and the boat council rule' },
    conflictsWith: ['wp-three-per-stud', 'wp-four-per-stud'],
  },
  {
    id: 'wp-no-bonding-return',
    decides: 'wire-and-protection',
    statement: 'On a boat the return is a wire: a two-wire system, not the hull; only circuits on the engine itself may return through it.',
    conditions: [onSmallCraft],
    effect: 'forbids',
    methods: [],
    values: { hullAsReturn: false, engineCircuitsExcepted: true },
    source: { status: 'published', source: 'Inland-waterways safety scheme guidance; maritime code 8.2.1' },
  },
  {
    id: 'wp-bonding-not-return',
    decides: 'wire-and-protection',
    statement: 'The bonding system of a boat carries no return current.',
    conditions: [onSmallCraft],
    effect: 'forbids',
    methods: [],
    values: { bondingAsReturn: false },
    source: { status: 'from memory', source: 'ABYC E-11' },
  },
  {
    id: 'wp-trailer-return',
    decides: 'wire-and-protection',
    statement: 'A trailer has its own return wire through the plug: the hitch ball is not a conductor.',
    conditions: [onRoadVehicle, { field: 'situation', op: '=', values: ['trailer'] }],
    effect: 'requires',
    methods: [],
    values: { returnByBall: false },
    source: { status: 'published', source: 'Public pages on trailer grounding' },
  },
  {
    id: 'wp-stud-stack',
    decides: 'wire-and-protection',
    statement:
      'Current passes face to face: lug against lug or bar, hole fitting the stud, no washer between the faces, lock washer and nut on top, tightened to the printed torque and checked again after the first warm days.',
    conditions: [{ field: 'situation', op: '=', values: ['stud-terminal'] }],
    effect: 'requires',
    methods: [],
    values: { washerBetweenFaces: false },
    source: { status: 'common practice', source: 'FAA AC 43.13-1B para 11-174 b, page 11-67; trade practice' },
  },
  {
    id: 'wp-terminal-rise',
    decides: 'wire-and-protection',
    statement: 'Type tests allow terminals to warm by 45 K (clamping units) or 30 K (plug connectors) above ambient at rated current.',
    conditions: [terminalGiven],
    effect: 'limits',
    methods: [],
    values: { clampMaxRiseK: 45, plugMaxRiseK: 30 },
    source: { status: 'published', source: "DIN 60998-1 and DIN EN 60512-5-1 as quoted on a terminal maker's technical page" },
  },
])
