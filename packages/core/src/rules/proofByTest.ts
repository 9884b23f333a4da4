import { frozen } from '../errors/inner.ts'
import { dropRead, inTheWet, onRoadVehicle, onSmallCraft, whenCrimped } from './conditions.ts'
import { crimped } from './methods.ts'
import type { PracticeRule } from './practiceRule.ts'
import { quotedProofByTestRules } from './quotedProofByTest.ts'
import { tradePractice } from './sources.ts'

/**
 * Readings, pull tests and records of the finished joint, as rules.
 *
 * @source each rule carries its own
 */
export const proofByTestRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  ...quotedProofByTestRules,
  {
    id: 'rd-insulation-resistance',
    decides: 'proof',
    statement:
      'After a sealed repair measure insulation to ground and to neighbours with everything electronic unplugged at both ends, and take the value once it is steady, within a minute at the longest.',
    conditions: [inTheWet, { field: 'situation', op: '=', values: ['insulation-test'] }],
    effect: 'favours',
    methods: [],
    values: { maxWaitS: 60 },
    source: { status: 'published', source: 'NASA-STD-8739.4', edition: '2011, change 6', clause: 'change log entry for para 18.2' },
  },
  {
    id: 'rd-insulation-values',
    decides: 'proof',
    statement:
      'Useful figures for a harness of 12 to 48 V: test at no more than 250 V DC with all electronics, lamps and loads off, above 10 megohm is good, below 1 megohm is a leak to find.',
    conditions: [{ field: 'situation', op: '=', values: ['insulation-test'] }],
    effect: 'limits',
    methods: [],
    values: { testMaxV: 250, goodAboveOhm: 1e7, leakBelowOhm: 1e6 },
    source: tradePractice,
  },
  {
    id: 'rd-insulation-spacecraft',
    decides: 'proof',
    statement: 'Spacecraft harness practice asks for 100 megohm at 500 V.',
    conditions: [
      { field: 'rules', op: '=', values: ['space'] },
      { field: 'situation', op: '=', values: ['insulation-test'] },
    ],
    effect: 'informs',
    methods: [],
    values: { minOhm: 1e8, testV: 500 },
    source: { status: 'from memory', source: 'NASA-STD-8739.4 harness test' },
  },
  {
    id: 'rd-before-after-same-points',
    decides: 'proof',
    statement:
      'Take the reading before the repair and after it at the same two points, with the same current and a similar wire temperature, or the comparison proves nothing.',
    conditions: [{ field: 'reading', op: '=', values: ['drop', 'four-wire', 'resistance'] }],
    effect: 'requires',
    methods: [],
    values: { copperCoefficientPerK: 0.00393, maxTemperatureDifferenceK: 5, notRead: ['maxTemperatureDifferenceK'] },
    source: { status: 'common practice', source: 'Copper temperature law (FAA AC 43.13-1B para 11-66 uses 234.5 C); trade practice' },
  },
  {
    id: 'pr-abyc-pull',
    decides: 'proof',
    statement: 'Boat pull values in newton: 16 AWG 67, 14 AWG 133, 10 AWG 178.',
    conditions: [onSmallCraft],
    effect: 'limits',
    methods: crimped,
    values: {
      rows: [
        { awg: '16', forceN: 66.7, printedLbf: 15 },
        { awg: '14', forceN: 133.4, printedLbf: 30 },
        { awg: '10', forceN: 177.9, printedLbf: 40 },
      ],
    },
    source: { status: 'published', source: 'ABYC pull table as quoted' },
  },
  {
    id: 'pr-pull-hold',
    decides: 'proof',
    statement: 'The boat pull values are held one minute.',
    conditions: [onSmallCraft, { field: 'situation', op: '=', values: ['sample-test'] }],
    effect: 'informs',
    methods: [],
    values: { holdS: 60 },
    source: { status: 'from memory', source: 'ABYC pull table' },
  },
  {
    id: 'pr-aircraft-vs-commercial',
    decides: 'proof',
    statement: 'Aircraft-grade terminals have to hold nearly twice the commercial force: 18 AWG 169 N against 89 N.',
    conditions: [],
    effect: 'informs',
    methods: crimped,
    values: { rows: [{ awg: '18', aircraftN: 169, commercialN: 89, printedLbf: [38, 20] }] },
    source: { status: 'published', source: 'MIL-T-7928 and UL 486A as quoted in an aircraft repair shop article' },
  },
  {
    id: 'pr-conflict-pull',
    decides: 'proof',
    statement:
      'The same 16 AWG crimp needs 67 N (boat), 133 N (commercial) or 222 N (aircraft). State the grade with every pull figure; default for a sample is the commercial value.',
    conditions: [],
    effect: 'limits',
    methods: crimped,
    values: { awg16BoatN: 66.7, awg16CommercialN: 133.4, awg16AircraftN: 222.4, default: 'commercial' },
    source: { status: 'common practice', source: 'ABYC against UL 486A against MIL-T-7928' },
    conflictsWith: ['pr-abyc-pull', 'pr-aircraft-vs-commercial', 'pr-pull-reference'],
  },
  {
    id: 'pr-pull-rate',
    decides: 'proof',
    statement:
      'Pull a sample along the wire axis at about 25 mm per minute until it gives, and note where it gave: wire broken outside the barrel is right, wire slipped out is a loose crimp, wire broken at the barrel edge is too tight a crimp.',
    conditions: [{ field: 'situation', op: '=', values: ['sample-test'] }],
    effect: 'requires',
    methods: crimped,
    values: { rateMmPerS: 0.423, printedInPerMin: 1, holdS: 60 },
    source: { status: 'from memory', source: "NASA-STD-8739.4 and terminal makers' practice" },
  },
  {
    id: 'pr-in-place-80',
    decides: 'proof',
    statement:
      'Where a crimped contact is pulled in its connector to see that it is seated, stay at or below 80 percent of the minimum crimp strength, straight within 5 degrees.',
    conditions: [{ field: 'method', op: '=', values: ['new-crimped-terminal'] }],
    effect: 'limits',
    methods: ['new-crimped-terminal'],
    values: { maxShareOfMinimumCrimpForce: 0.8, maxAngleRad: 0.0873 },
    source: { status: 'published', source: 'NASA-STD-8739.4', edition: '2011, change 6', clause: 'para 13.8.2' },
  },
  {
    id: 'pr-first-power',
    decides: 'proof',
    statement: 'First power through the right fuse, never around it, with a hand on the switch; watch, smell and feel the joint for the first minutes.',
    conditions: [],
    effect: 'requires',
    methods: [],
    values: { throughFuse: true },
    source: tradePractice,
  },
  {
    id: 'pr-sample-first',
    decides: 'proof',
    statement: 'Before crimping the real wire, make and break two samples with the same tool, barrel and wire on the day.',
    conditions: [whenCrimped],
    effect: 'requires',
    methods: crimped,
    values: { samples: 2 },
    source: { status: 'published', source: 'NASA lessons-learned entry 0465 (Scout program)' },
  },
  {
    id: 'pr-crimp-resistance-variation',
    decides: 'proof',
    statement: 'Bad crimps showed anything from a few milliohm to open circuit, caused by under- or over-crimping; looks alone missed it.',
    conditions: [whenCrimped],
    effect: 'informs',
    methods: crimped,
    values: { badCrimpFromOhm: 0.003 },
    source: { status: 'published', source: 'NASA lessons-learned entry 0465' },
  },
  {
    id: 'pr-mv-table',
    decides: 'proof',
    statement:
      "What 100 mm of plain copper wire drops at 20 C, to compare a splice with: 20 AWG 7.5 A 25 mV, 16 AWG 15 A 20 mV, 14 AWG 20 A 17 mV, 12 AWG 30 A 16 mV, 10 AWG 40 A 13 mV, 8 AWG 50 A 10 mV. A wire at 60 C reads 16 percent more. Measure at the load's own current, not at these.",
    conditions: [dropRead],
    effect: 'informs',
    methods: [],
    values: {
      spanMm: 100,
      referenceC: 20,
      rows: [
        { awg: '20', currentA: 7.5, wireV: 0.025 },
        { awg: '16', currentA: 15, wireV: 0.0198 },
        { awg: '14', currentA: 20, wireV: 0.0166 },
        { awg: '12', currentA: 30, wireV: 0.0156 },
        { awg: '10', currentA: 40, wireV: 0.0131 },
        { awg: '8', currentA: 50, wireV: 0.0103 },
      ],
      ratioAt60C: 1.157,
    },
    source: { status: 'common practice', source: 'Calculated from copper wire resistance with the joint-equals-wire principle' },
  },
  {
    id: 'pr-uscar-life',
    decides: 'proof',
    statement:
      'Vehicle crimp specification aims at 15 years and about 240 000 km: pull, resistance, thermal shock and damp-heat cycling on every terminal and cable pair.',
    conditions: [onRoadVehicle],
    effect: 'informs',
    methods: crimped,
    values: { years: 15, distanceKm: 241000, printedMiles: 150000 },
    source: { status: 'published', source: 'SAE/USCAR-21 revision 3 scope' },
  },
  {
    id: 'pr-retest-cycle',
    decides: 'proof',
    statement:
      'Retest after the joint has been hot: load at full current until stable, cool, three times in all, then read again cold. Redo it if the reading rose by more than a fifth, or if it stands above half of its limit and has risen at all.',
    conditions: [
      { field: 'circuit', op: '=', values: ['power', 'motor', 'lighting'] },
      { field: 'currentA', op: '>=', values: [5] },
    ],
    effect: 'requires',
    methods: [],
    values: { cycles: 3, maxRiseShare: 0.2, watchAboveShareOfLimit: 0.5 },
    source: { status: 'common practice', source: 'Trade practice after vehicle crimp specifications' },
  },
  {
    id: 'pr-infrared',
    decides: 'proof',
    statement:
      'An infrared thermometer reads bright metal far too cold: aim at the sleeve or a piece of black tape, and not at a spot smaller than its field of view.',
    conditions: [{ field: 'step', op: '=', values: ['proving'] }],
    effect: 'limits',
    methods: [],
    values: { bareMetalEmissivity: [0.02, 0.1], coveredEmissivity: [0.9, 0.96] },
    source: { status: 'common practice', source: 'Emissivity values held in the materials tables; trade practice' },
  },
  {
    id: 'pr-temporary-until',
    decides: 'proof',
    statement: 'A wire-splice repair in an engine area is temporary: look at it at the next check and replace the wire at the next opportunity.',
    conditions: [{ field: 'situation', op: '=', values: ['engine-space'] }],
    effect: 'requires',
    methods: [],
    values: { recheck: 'next service' },
    source: { status: 'published', source: 'Aircraft engine wire-splice repair text' },
  },
  {
    id: 'pr-function',
    decides: 'proof',
    statement:
      'Finish with the circuit working in all its states, neighbours too, and the fuse of the rating printed for it, or smaller if the wire asks for it.',
    conditions: [],
    effect: 'requires',
    methods: [],
    values: { fuse: 'as marked or smaller' },
    source: tradePractice,
  },
])
