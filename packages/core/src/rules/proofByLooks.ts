import { frozen } from '../errors/inner.ts'
import { onSmallCraft, whenCrimped, whenSoldered, whenSolderedByHand } from './conditions.ts'
import { crimped, soldered, solderedByHand } from './methods.ts'
import type { PracticeRule } from './practiceRule.ts'
import { quotedProofByLooksRules } from './quotedProofByLooks.ts'
import { tradePractice } from './sources.ts'

/**
 * What the finished joint must look like, as rules.
 *
 * @source each rule carries its own
 */
export const proofByLooksRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  ...quotedProofByLooksRules,
  {
    id: 'me-friction-connector-hold',
    decides: 'proof',
    statement: 'A push-on (friction) connector on a boat must stay on against about 27 N for one minute.',
    conditions: [onSmallCraft, { field: 'situation', op: '=', values: ['push-on-connector'] }],
    effect: 'limits',
    methods: [],
    values: { minForceN: 26.7, printedLbf: 6, holdS: 60 },
    source: { status: 'published', source: 'ABYC as quoted in a boating magazine (2004)' },
  },
  {
    id: 'jg-wetting-angle',
    decides: 'proof',
    statement: 'Good wetting has a feathered edge and a contact angle well below 90 degrees; beads that stand up mean dirty or cold metal.',
    conditions: [whenSolderedByHand],
    effect: 'limits',
    methods: solderedByHand,
    values: { maxContactAngleRad: 1.571 },
    source: { status: 'published', source: 'Public soldering quality pages; US Army STP A-12 on convex fillets' },
  },
  {
    id: 'jg-wetting-good',
    decides: 'proof',
    statement: 'A contact angle near 30 degrees or less is what good wetting looks like.',
    conditions: [whenSolderedByHand],
    effect: 'informs',
    methods: solderedByHand,
    values: { goodContactAngleRad: 0.524 },
    source: tradePractice,
  },
  {
    id: 'jg-wire-visible',
    decides: 'proof',
    statement: 'A butt splice shows wire in its inspection hole; an open barrel shows strand ends flush to one wire diameter beyond the crimp.',
    conditions: [whenCrimped],
    effect: 'requires',
    methods: crimped,
    values: { minProtrusionDiameters: 0, maxProtrusionDiameters: 1 },
    source: { status: 'published', source: 'NASA Workmanship Standards pictorial reference', clause: 'section 2.01' },
  },
  {
    id: 'jg-crimp-position',
    decides: 'proof',
    statement: 'Indents sit centred between wire entry and inspection hole, symmetric, cutting into neither; only the tool may have deformed the barrel.',
    conditions: [whenCrimped],
    effect: 'requires',
    methods: crimped,
    values: { centred: true },
    source: { status: 'published', source: 'NASA Workmanship Standards pictorial reference', clause: 'sections 2.01 and 4.07' },
  },
  {
    id: 'jg-bellmouth',
    decides: 'proof',
    statement:
      'An open-barrel crimp needs a bell mouth on the wire side so the edge does not cut strands; brush must show; both insulation and bare wire show in the window between the two crimps.',
    conditions: [
      { field: 'method', op: '=', values: ['new-crimped-terminal'] },
      { field: 'situation', op: '=', values: ['open-barrel'] },
    ],
    effect: 'requires',
    methods: ['new-crimped-terminal'],
    values: { bellmouthWireSide: true, brushVisible: true, windowShowsBoth: true },
    source: { status: 'published', source: 'Public wire-processing article on visual crimp criteria' },
  },
  {
    id: 'jg-brush-length',
    decides: 'proof',
    statement: 'Keep the brush 0.2 to 1 mm long so it cannot reach the contact area.',
    conditions: [
      { field: 'method', op: '=', values: ['new-crimped-terminal'] },
      { field: 'situation', op: '=', values: ['open-barrel'] },
      { field: 'areaMm2', op: '<=', values: [2.5] },
    ],
    effect: 'limits',
    methods: ['new-crimped-terminal'],
    values: { brushMinMm: 0.2, brushMaxMm: 1, bellmouthMinMm: 0.1, bellmouthMaxMm: 0.4 },
    source: { status: 'common practice', source: "Terminal makers' crimp guidance (typical)" },
  },
  {
    id: 'jg-insulation-grip',
    decides: 'proof',
    statement: 'Insulation wings hold the wire round: at least about 88 percent of the circumference for large wires, half for small ones.',
    conditions: [
      { field: 'method', op: '=', values: ['new-crimped-terminal'] },
      { field: 'situation', op: '=', values: ['open-barrel'] },
    ],
    effect: 'limits',
    methods: ['new-crimped-terminal'],
    values: { largeMinShare: 0.88, smallMinShare: 0.5 },
    source: { status: 'published', source: "A terminal maker's public crimp handbook" },
  },
  {
    id: 'jg-solder-sleeve-visual',
    decides: 'proof',
    statement:
      'A solder sleeve is good when the ring has fully flowed, a fillet is seen, strand outline shows, the sleeve is tight and not charred or cut; slight browning is fine.',
    conditions: [{ field: 'method', op: '=', values: ['solder-sleeve'] }],
    effect: 'requires',
    methods: ['solder-sleeve'],
    values: { preformFullyFlowed: true, browning: 'slight allowed' },
    source: { status: 'published', source: 'NASA Workmanship Standards pictorial reference', clause: 'section 4.06' },
  },
  {
    id: 'co-inspect-before-after',
    decides: 'proof',
    statement: 'Look at a soldered joint before the sleeve goes on and again after shrinking.',
    conditions: [whenSolderedByHand],
    effect: 'requires',
    methods: solderedByHand,
    values: { inspections: 2 },
    source: { status: 'published', source: 'NASA-STD-8739.4', edition: '2011, change 6', clause: 'para 19.2.1' },
  },
  {
    id: 'co-adhesive-flow',
    decides: 'proof',
    statement: 'A seal is proven by a bead of adhesive all round at both ends; no bead, heat again, still no bead, cut off and renew.',
    conditions: [{ field: 'sleeve', op: '=', values: ['polyolefin-adhesive-lined'] }],
    effect: 'requires',
    methods: [],
    values: { beadBothEnds: true },
    source: tradePractice,
  },
  {
    id: 'pr-army-acceptance',
    decides: 'proof',
    statement:
      'Army visual acceptance: smooth and bright, no cracks, pits or strain lines, no flux, no foreign threads, wick end visible, wire has a gentle slack arc.',
    conditions: [whenSolderedByHand],
    effect: 'informs',
    methods: solderedByHand,
    values: { wickEndVisible: true, slackArc: true },
    source: { status: 'published', source: 'US Army TM 750-245-4 para 7-10' },
  },
  {
    id: 'pr-conflict-bright',
    decides: 'proof',
    statement: 'Older manuals require a bright joint; NASA accepts satin to bright, and lead-free is dull when good. Judge by wetting and edge, not by shine.',
    conditions: [whenSoldered],
    effect: 'requires',
    methods: soldered,
    values: {},
    source: { status: 'common practice', source: 'US Army TM 750-245-4 against NASA Workmanship Standards pictorial reference section 6.01' },
    conflictsWith: ['pr-army-acceptance', 'jg-fillet'],
  },
  {
    id: 'pr-mech-check-only-if-needed',
    decides: 'proof',
    statement: 'Prod or pull a soldered point only to back up a doubtful look, not as routine.',
    conditions: [whenSolderedByHand],
    effect: 'limits',
    methods: solderedByHand,
    values: { routineProdding: false },
    source: { status: 'published', source: 'US Army TM 750-245-4 para 7-5' },
  },
])
