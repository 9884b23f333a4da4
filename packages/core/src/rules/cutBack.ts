import { atStripping, onAircraft, terminalGiven, withInsertedLength } from './conditions.ts'
import { splices } from './methods.ts'
import type { PracticeRule } from './practiceRule.ts'
import { quotedCutBackRules } from './quotedCutBack.ts'
import { tradePractice } from './sources.ts'

/**
 * Replacing from terminal to terminal comes before splicing.
 *
 * @source in the rule itself
 */
export const endToEndRule: PracticeRule = {
  id: 'cb-end-to-end',
  decides: 'cut-back',
  statement: 'Where it can be done, replace the wire from one terminal to the next instead of splicing.',
  conditions: [],
  effect: 'favours',
  methods: ['replace-the-run'],
  values: { preferred: 'replace terminal to terminal' },
  source: { status: 'published', source: 'CASA AC 21-99 section 2 chapter 5 note; US Army TM 9-4120-389-14 para 4-36' },
}

/**
 * PVC that works in frost.
 *
 * @source in the rule itself
 */
export const coldPvcRule: PracticeRule = {
  id: 'cb-cold-pvc',
  decides: 'cut-back',
  statement: 'PVC is brittle in the cold: warm the wire above about 5 C before bending or stripping it, and replace it where it works flexing in frost.',
  conditions: [
    { field: 'insulation', op: '=', values: ['PVC'] },
    { field: 'coldestC', op: '<', values: [5] },
  ],
  effect: 'limits',
  methods: [],
  values: { minC: 5 },
  source: tradePractice,
}

/**
 * How near to a termination aircraft practice lets a splice be.
 *
 * @source in the rule itself
 */
export const aircraftSpliceDistanceRule: PracticeRule = {
  id: 'cb-splice-12in',
  decides: 'cut-back',
  statement: 'Aircraft practice keeps splices at least 305 mm from a connector or terminal unless the repair is to that end itself.',
  conditions: [onAircraft, { field: 'fromTerminationMm', op: '<', values: [305] }],
  effect: 'limits',
  methods: splices,
  values: { minDistanceMm: 305, minDistancePrintedIn: 12 },
  source: { status: 'from memory', source: 'FAA AC 43.13-1B (9/8/98, CHG 1 9/27/01), chapter 11, para 11-167; SAE AS50881' },
}

/**
 * Where there is no room for a splice at a plug.
 *
 * @source in the rule itself
 */
export const noRoomAtPlugRule: PracticeRule = {
  id: 'cb-no-room-at-plug',
  decides: 'cut-back',
  statement:
    'Between break and plug a splice needs room for barrel, sleeve, tie and straight wire. Where there is none, the splices of an inserted length lie further back, staggered, or the plug gets a new terminal on sound wire.',
  conditions: [{ field: 'fromTerminationMm', op: '<', values: [100] }],
  effect: 'requires',
  methods: [],
  values: { insertedSplices: 2, staggered: true },
  source: tradePractice,
}

/**
 * Splices above the standing water.
 *
 * @source in the rule itself
 */
export const aboveWaterRule: PracticeRule = {
  id: 'cb-above-water',
  decides: 'cut-back',
  statement:
    'Keep splices above the highest standing water: in a bilge as high over the pump as the lead allows, about 450 mm by one marine consultant; where it cannot be, a sealed crimped splice only.',
  conditions: [{ field: 'location', op: '=', values: ['splash', 'submerged'] }],
  effect: 'requires',
  methods: ['crimped-and-sealed-butt-splice'],
  values: { aboveWaterMm: 450 },
  source: { status: 'published', source: 'Boating magazine articles on bilge wiring' },
}

/**
 * A splice that can be seen and reached again.
 *
 * @source in the rule itself
 */
export const accessibleRule: PracticeRule = {
  id: 'cb-accessible',
  decides: 'cut-back',
  statement: 'Put the splice where it can be seen and reached again: not behind a glued panel, inside a tank wall or in the middle of a conduit.',
  conditions: [],
  effect: 'requires',
  methods: [],
  values: { accessible: true },
  source: { status: 'common practice', source: 'FAA-H-8083-32 chapter 4; trade practice' },
}

/**
 * How far to cut back, what slack to leave and where a splice may sit, as rules.
 *
 * @source each rule carries its own
 */
export const cutBackRules: readonly PracticeRule[] = [
  ...quotedCutBackRules,
  endToEndRule,
  {
    id: 'cb-jumper-15cm',
    decides: 'cut-back',
    statement:
      'When a jumper is used, take out at least 150 mm of damaged wire so the two splices have room, and cut the new piece 12.7 mm longer than the piece removed.',
    conditions: [withInsertedLength],
    effect: 'limits',
    methods: [],
    values: { minRemovedMm: 150, extraJumperLengthMm: 12.7 },
    source: { status: 'published', source: 'CASA AC 21-99', clause: 'section 2 chapter 5 para 3' },
  },
  {
    id: 'cb-quarter-severed',
    decides: 'cut-back',
    statement: 'If more than a quarter of the conductor is cut through, splice it; with less, an emergency wrap may carry it to the workshop.',
    conditions: [{ field: 'brokenStrands', op: '>', values: [0] }],
    effect: 'limits',
    methods: [],
    values: { spliceIfSeveredShareAbove: 0.25 },
    source: { status: 'published', source: 'US Army TM 1-1520-240-BD, emergency repair para on insulation' },
  },
  {
    id: 'cb-faa-strands',
    decides: 'cut-back',
    statement:
      'FAA strand table for copper: 19 strands 2 nicked, 37 strands 4 nicked, none broken; from 133 strands (8-4 AWG) upward 6 nicked and 6 broken. Aluminium: none.',
    conditions: [onAircraft, atStripping],
    effect: 'limits',
    methods: [],
    values: {
      rows: [
        { awg: '24-14', strands: 19, nickedMax: 2, brokenMax: 0 },
        { awg: '12-10', strands: 37, nickedMax: 4, brokenMax: 0 },
        { awg: '8-4', strands: 133, nickedMax: 6, brokenMax: 6 },
        { awg: '2-1', strands: '665-817', nickedMax: 6, brokenMax: 6 },
        { awg: '0-00', strands: '1045-1330', nickedMax: 6, brokenMax: 6 },
        { awg: '000', strands: '1665', nickedMax: 6, brokenMax: 6 },
        { awg: '0000', strands: '2109', nickedMax: 6, brokenMax: 6 },
      ],
      aluminiumMax: 0,
    },
    source: { status: 'published', source: 'FAA AC 43.13-1B', edition: '1998 with change 1, 2001', clause: 'chapter 11, table 11-13, page 11-62' },
  },
  {
    id: 'cb-ipc-strands',
    decides: 'cut-back',
    statement:
      'Workshop-standard strand limits, general and high-reliability classes: fewer than 7 strands none; 7-15 one (none for high class); 16-25 three (none, two if pre-tinned); 26-40 four (three); 41-60 five (four); 61-120 six (five); above that 6 percent (5).',
    conditions: [atStripping],
    effect: 'limits',
    methods: [],
    values: {
      rows: [
        { strands: '<7', general: 0, high: 0 },
        { strands: '7-15', general: 1, high: 0 },
        { strands: '16-25', general: 3, high: 0, highTinned: 2 },
        { strands: '26-40', general: 4, high: 3 },
        { strands: '41-60', general: 5, high: 4 },
        { strands: '61-120', general: 6, high: 5 },
        { strands: '>120', generalShare: 0.06, highShare: 0.05 },
      ],
    },
    source: { status: 'from memory', source: 'IPC J-STD-001 table 5-1 / IPC-A-610 / IPC/WHMA-A-620' },
  },
  {
    id: 'cb-nasa-strands',
    decides: 'cut-back',
    statement: 'Spacecraft wire work accepts tool marks that neither expose base metal nor thin the strand. Shield braid: up to 10 percent nicked, none cut.',
    conditions: [{ field: 'rules', op: '=', values: ['space'] }, atStripping],
    effect: 'limits',
    methods: [],
    values: { shieldNickedMaxShare: 0.1, shieldSeveredMax: 0 },
    source: { status: 'published', source: 'NASA Workmanship Standards pictorial reference section 1.02; NASA-STD-8739.4 with Change 6 (2011) para 10.2' },
  },
  {
    id: 'cb-nasa-strands-none',
    decides: 'cut-back',
    statement: 'Spacecraft practice: no nicked, cut or missing strand in the conductor.',
    conditions: [{ field: 'rules', op: '=', values: ['space'] }, atStripping],
    effect: 'limits',
    methods: [],
    values: { conductorNickedMax: 0 },
    source: { status: 'from memory', source: 'NASA Workmanship Standards; NASA-STD-8739.4' },
  },
  {
    id: 'cb-conflict-strands',
    decides: 'cut-back',
    statement:
      'Three strand limits disagree: spacecraft none, aircraft small fixed counts by size, workshop classes a few percent. Default: cut back and strip again when any strand is cut or missing up to and including 37 strands; above that the aircraft counts.',
    conditions: [atStripping],
    effect: 'limits',
    methods: [],
    values: { recutAtAnyCutUpToStrands: 37 },
    source: { status: 'common practice', source: 'NASA workmanship, FAA AC 43.13-1B table 11-13, IPC classes' },
    conflictsWith: ['cb-nasa-strands', 'cb-nasa-strands-none', 'cb-faa-strands', 'cb-ipc-strands'],
  },
  {
    id: 'cb-edge-flash',
    decides: 'cut-back',
    statement: "A whisker of insulation left at the strip edge may not exceed a quarter of the wire's outer diameter.",
    conditions: [atStripping],
    effect: 'limits',
    methods: [],
    values: { maxShareOfInsulatedDiameter: 0.25 },
    source: { status: 'published', source: 'NASA Workmanship Standards pictorial reference', clause: 'section 1.02 (8739.4 para 10.1.6)' },
  },
  {
    id: 'cb-lay',
    decides: 'cut-back',
    statement: 'After stripping put the strands back in their natural twist; strands spread by more than about one strand diameter are re-cut.',
    conditions: [atStripping],
    effect: 'limits',
    methods: [],
    values: { maxSpreadStrandDiameters: 1 },
    source: { status: 'published', source: 'US Army TM 1-1500-204-23-4 (re-twist to natural lay); IPC clause on birdcaging' },
  },
  coldPvcRule,
  {
    id: 'cb-long-strip-two-bites',
    decides: 'cut-back',
    statement: 'Strip more than about 19 mm in two bites, holding the wire square to the blades.',
    conditions: [atStripping],
    effect: 'favours',
    methods: [],
    values: { maxSingleBiteMm: 19, maxSingleBitePrintedIn: 0.75 },
    source: { status: 'published', source: 'US Army TM 1-1500-204-23-4, wire stripping' },
  },
  {
    id: 'cb-cut-tools',
    decides: 'cut-back',
    statement:
      'Cut square with a sharp edge; do not use diagonal cutters above 8 AWG, use a fine saw (20 or more teeth per inch) or shears for heavy copper, never a saw on aluminium.',
    conditions: [{ field: 'step', op: '=', values: ['cutting'] }],
    effect: 'limits',
    methods: [],
    values: { diagonalCuttersMaxAwg: 8, diagonalCuttersMaxMm2: 8.4, sawMinTeethPerPrintedIn: 20, notRead: ['diagonalCuttersMaxMm2'] },
    source: { status: 'published', source: 'CASA AC 21-99', clause: 'section 2 chapter 3 paras 2-6' },
  },
  {
    id: 'cb-clean-oxide',
    decides: 'cut-back',
    statement:
      'When no more can be cut off: fan the strands out and scrape each bright, or put in a new length. Never an acid dip on the end of an insulated wire: it climbs between the strands under the insulation just as acid flux does and goes on eating there. A cleaned end is temporary; the blackness comes back if any salt is left.',
    conditions: [
      { field: 'damage', op: '=', values: ['corroded'] },
      { field: 'situation', op: '=', values: ['no-slack'] },
    ],
    effect: 'limits',
    methods: [],
    values: { acidDipAllowed: false, permanent: false },
    source: { status: 'common practice', source: 'Trade practice; the acid-flux rule applied to acid baths' },
  },
  {
    id: 'cb-slack-two-reterm',
    decides: 'cut-back',
    statement: 'Leave slack for two more terminations at each terminal, apart from the drip loop and any movement.',
    conditions: [terminalGiven],
    effect: 'favours',
    methods: [],
    values: { reterminations: 2 },
    source: {
      status: 'published',
      source: 'FAA AC 43.13-1B (9/8/98, CHG 1 9/27/01), chapter 11, para 11-118, page 11-52; US Navy facility handbook (service loops)',
    },
  },
  {
    id: 'cb-stagger',
    decides: 'cut-back',
    statement: 'Stagger splices along a bundle so it stays slim and two bare places can never touch.',
    conditions: [{ field: 'situation', op: '=', values: ['more-than-one-splice'] }],
    effect: 'requires',
    methods: [],
    values: { stagger: true },
    source: {
      status: 'published',
      source: 'NASA Workmanship Standards pictorial reference section 4.07; CASA AC 21-99 section 2 chapter 5; FAA-H-8083-32 chapter 4; US Navy NEETS module 4',
    },
  },
  {
    id: 'cb-stagger-offset',
    decides: 'cut-back',
    statement: 'Offset neighbouring splices by at least one covered splice length, and by 25 mm at the least.',
    conditions: [{ field: 'situation', op: '=', values: ['more-than-one-splice'] }],
    effect: 'limits',
    methods: [],
    values: { minOffsetMm: 25, minOffsetSpliceLengths: 1 },
    source: tradePractice,
  },
  {
    id: 'cb-one-splice-per-segment',
    decides: 'cut-back',
    statement: 'No more than one splice in a wire between two connectors, except for an approved repair, a size change, or joining several wires to one.',
    conditions: [{ field: 'situation', op: '=', values: ['earlier-splice'] }],
    effect: 'limits',
    methods: [],
    values: { maxSplicesPerSegment: 1 },
    source: {
      status: 'published',
      source: 'FAA AC 43.13-1B',
      edition: '1998 with change 1, 2001',
      clause: 'chapter 11, para 11-167 c (citing MIL-W-5088 / AS50881)',
    },
  },
  aircraftSpliceDistanceRule,
  {
    id: 'cb-conflict-near-terminal',
    decides: 'cut-back',
    statement:
      'Aircraft practice keeps splices 305 mm from a terminal, workshops go as near as 100 mm, and a terminal repair itself is exempt. Default 100 mm, 305 mm where aircraft rules are named; nearer than that a new terminal.',
    conditions: [{ field: 'fromTerminationMm', op: '<', values: [305] }],
    effect: 'limits',
    methods: [],
    values: { defaultMinMm: 100, aircraftMinMm: 305 },
    source: { status: 'common practice', source: 'FAA AC 43.13-1B (recalled) against workshop practice' },
    conflictsWith: ['cb-splice-12in', 'cb-too-near-for-splice'],
  },
  noRoomAtPlugRule,
  aboveWaterRule,
  accessibleRule,
  {
    id: 'cb-conflict-one-splice-vs-jumper',
    decides: 'cut-back',
    statement:
      'One guide allows one splice per wire segment, another plans a jumper with two. Treat the jumper as a repair exception, record it, and do not add a third.',
    conditions: [withInsertedLength],
    effect: 'limits',
    methods: [],
    values: { normalMax: 1, jumperRepairMax: 2 },
    source: { status: 'common practice', source: 'FAA AC 43.13-1B para 11-167 c against CASA AC 21-99' },
    conflictsWith: ['cb-one-splice-per-segment', 'cb-single-or-two-splices'],
  },
]
