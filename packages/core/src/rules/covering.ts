import { atHeating, inTheWet, whenSleeved, whenSolderedByHand } from './conditions.ts'
import { solderedByHand } from './methods.ts'
import type { PracticeRule } from './practiceRule.ts'
import { quotedCoveringRules } from './quotedCovering.ts'
import { tradePractice } from './sources.ts'

/**
 * A sleeve is shrunk from its middle.
 *
 * @source in the rule itself
 */
export const fromCentreRule: PracticeRule = {
  id: 'co-from-centre',
  decides: 'covering',
  statement: 'Shrink from the middle outward so no air is trapped; never both ends first.',
  conditions: [whenSleeved],
  effect: 'requires',
  methods: [],
  values: { order: 'centre outward' },
  source: { status: 'published', source: 'Public tubing guides' },
}

/**
 * Insulations to which a hot-melt liner does not stick.
 *
 * @source in the rule itself
 */
export const adhesiveNoBondRule: PracticeRule = {
  id: 'co-adhesive-no-bond',
  decides: 'covering',
  statement:
    'Hot-melt liner does not stick to silicone, PTFE, FEP or plain polyethylene insulation: there it is a tight cover, not a seal. Use a moulded part, a sealant made for it, or replace the lead.',
  conditions: [{ field: 'insulation', op: '=', values: ['silicone', 'PTFE', 'FEP', 'PE'] }, inTheWet],
  effect: 'limits',
  methods: [],
  values: { noBond: ['silicone', 'PTFE', 'FEP', 'PE'] },
  source: tradePractice,
}

/**
 * Heat at which a hot-melt liner lets go.
 *
 * @source in the rule itself
 */
export const adhesiveSoftensRule: PracticeRule = {
  id: 'co-adhesive-softens',
  decides: 'covering',
  statement:
    'Ordinary hot-melt liner softens from about 80 to 100 C: near an engine it lets go of the seal though the tube is rated higher. Take a high-temperature liner or move the joint.',
  conditions: [
    { field: 'hottestC', op: '>', values: [80] },
    { field: 'sleeve', op: '=', values: ['polyolefin-adhesive-lined'] },
  ],
  effect: 'limits',
  methods: [],
  values: { softensC: [80, 100] },
  source: tradePractice,
}

/**
 * Sleeve, overlap and seal, as rules.
 *
 * @source each rule carries its own
 */
export const coveringRules: readonly PracticeRule[] = [
  ...quotedCoveringRules,
  {
    id: 'jg-flux-removal',
    decides: 'covering',
    statement: 'No flux may stay on the joint or under the sleeve: clean with solvent before covering, and stop the solvent from running along the harness.',
    conditions: [whenSolderedByHand],
    effect: 'requires',
    methods: solderedByHand,
    values: { fluxResidue: 'none', cleanBeforeSleeve: true },
    source: { status: 'published', source: 'NASA-STD-8739.4 with Change 6 (2011), para 19.2.2; US Army TM 750-245-4 para 7-10 b' },
  },
  {
    id: 'co-two-to-one',
    decides: 'covering',
    statement: 'Ordinary tubing shrinks to about half its diameter, so it cannot bridge a joint more than twice the wire; use a 3:1 or 4:1 tube there.',
    conditions: [whenSleeved],
    effect: 'informs',
    methods: [],
    values: { ratio: 2 },
    source: { status: 'published', source: 'US Navy NEETS module 4 page 2-12; public tubing guide' },
  },
  {
    id: 'co-overlap-figures',
    decides: 'covering',
    statement: 'Sleeve past each cut edge of insulation: never under 6 mm, 10 to 15 mm in damp places.',
    conditions: [whenSleeved],
    effect: 'limits',
    methods: [],
    values: { dryMinMm: 6, dampMinMm: [10, 15] },
    source: tradePractice,
  },
  {
    id: 'co-overlap-army',
    decides: 'covering',
    statement: 'Army field manuals: sleeve about 13 mm longer than the joint, so roughly 6 mm each side.',
    conditions: [whenSleeved, { field: 'location', op: '=', values: ['dry'] }],
    effect: 'informs',
    methods: [],
    values: { totalExtraMm: 12.7, eachSideMm: 6.4 },
    source: { status: 'published', source: 'US Army TM 9-4120-367-14 page 5-3; TM 5-4120-387-14 para 4-27 b' },
  },
  {
    id: 'co-overlap-nasa',
    decides: 'covering',
    statement: 'NASA dropped fixed overlap figures from its drawings and ties sleeve overlap to the wire or cable diameter.',
    conditions: [whenSleeved],
    effect: 'informs',
    methods: [],
    values: { basis: 'wire diameter' },
    source: { status: 'published', source: 'NASA notes on NASA-STD-8739.4A (para 9.8.5, 9.9.2)' },
  },
  {
    id: 'co-conflict-overlap',
    decides: 'covering',
    statement:
      'Overlaps of 6 mm, two diameters, and 13 to 25 mm per side all appear. Use the largest of two outer diameters, 6 mm dry or 13 mm wet, counted after shrinking, and add to the cut length what the tube loses in length (5 to 10 percent if its data does not say).',
    conditions: [whenSleeved],
    effect: 'limits',
    methods: [],
    values: { dryMinMm: 6.4, wetMinMm: 12.7, minDiameters: 2, lengthLossShare: [0.05, 0.1] },
    source: { status: 'common practice', source: 'US Army TMs, helicopter practices manual, NASA notes, trade' },
    conflictsWith: ['co-overlap-min', 'co-overlap-figures', 'co-overlap-army', 'co-overlap-nasa'],
  },
  {
    id: 'co-park-distance',
    decides: 'covering',
    statement: 'Park the waiting sleeve at least 100 mm from the joint, or cool the wire between with a clip.',
    conditions: [whenSleeved, atHeating],
    effect: 'limits',
    methods: [],
    values: { minMm: 100 },
    source: tradePractice,
  },
  {
    id: 'co-every-termination',
    decides: 'covering',
    statement: 'Every termination that is not otherwise insulated or potted gets a sleeve, unless it is at ground potential anyway.',
    conditions: [],
    effect: 'requires',
    methods: [],
    values: { sleeveRequired: true },
    source: { status: 'published', source: 'NASA-STD-8739.4', edition: '2011, change 6', clause: 'para 9.8' },
  },
  {
    id: 'co-no-sharp-ends',
    decides: 'covering',
    statement:
      'Round over sharp ends, trim wire ends flush and cover any point that could come through the sleeve; a shrunk sleeve pierced by one strand is no insulation.',
    conditions: [whenSleeved],
    effect: 'requires',
    methods: [],
    values: { noSharpEnds: true },
    source: tradePractice,
  },
  {
    id: 'co-clear-sleeve',
    decides: 'covering',
    statement: 'Use a clear sleeve over a soldered splice where you may, so it can be inspected later.',
    conditions: [whenSolderedByHand, { field: 'situation', op: '=', values: ['no-sun'] }],
    effect: 'favours',
    methods: [],
    values: { transparent: true },
    source: { status: 'published', source: 'NASA splice tests as described in a public encyclopaedia article' },
  },
  {
    id: 'co-double',
    decides: 'covering',
    statement: 'Two layers: the inner just over the joint, the outer longer by at least 5 mm at each end so the edges do not line up.',
    conditions: [{ field: 'situation', op: '=', values: ['abrasion', 'second-barrier'] }],
    effect: 'favours',
    methods: [],
    values: { outerLongerEachEndMm: 5 },
    source: { status: 'common practice', source: 'NASA-STD-8739.4 figure 19-4 (double sleeving exists); step figure is trade practice' },
  },
  fromCentreRule,
  {
    id: 'co-adhesive-damp',
    decides: 'covering',
    statement: 'Use adhesive-lined sleeve wherever the joint can get wet; unlined sleeve is a cover, not a seal.',
    conditions: [inTheWet],
    effect: 'requires',
    methods: [],
    values: { adhesiveLined: true },
    source: { status: 'published', source: 'Public tubing guides; CASA AC 21-99 section 2 chapter 6' },
  },
  {
    id: 'co-smooth-adhesive-on-clean',
    decides: 'covering',
    statement: 'Degrease and dry the insulation before a lined sleeve: oil, dirt or flux stops the adhesive from sticking.',
    conditions: [{ field: 'sleeve', op: '=', values: ['polyolefin-adhesive-lined'] }],
    effect: 'requires',
    methods: [],
    values: { degrease: true },
    source: { status: 'published', source: 'Public tubing guides' },
  },
  adhesiveNoBondRule,
  adhesiveSoftensRule,
  {
    id: 'co-multi-wire-gap',
    decides: 'covering',
    statement: 'A lined sleeve over two or more wires on one side leaves a channel between them: fill it with sealant or a spacer, or use a capped splice.',
    conditions: [inTheWet, { field: 'situation', op: '=', values: ['several-wires-one-side'] }],
    effect: 'requires',
    methods: [],
    values: { fillGap: true },
    source: tradePractice,
  },
  {
    id: 'co-cool-before-load',
    decides: 'covering',
    statement: 'Let the sleeve cool untouched until it is hand-warm (below about 45 C) before bending, loading or wetting it.',
    conditions: [whenSleeved],
    effect: 'requires',
    methods: [],
    values: { maxC: 45, typicalWaitS: [120, 300] },
    source: tradePractice,
  },
  {
    id: 'co-tape-fallback',
    decides: 'covering',
    statement: 'If no sleeve fits: self-fusing tape, half-lapped, two layers laid in opposite directions and running 13 mm or more past the cut edges.',
    conditions: [{ field: 'situation', op: '=', values: ['no-sleeve'] }],
    effect: 'favours',
    methods: [],
    values: { overlapShare: 0.5, layers: 2, pastEdgeMm: 12.7 },
    source: { status: 'common practice', source: 'Aircraft engine wire-splice repair text; trade practice' },
  },
  {
    id: 'co-emergency-tape',
    decides: 'covering',
    statement: 'Emergency cover of damaged insulation: four layers of tape reaching 25 mm past each end of the damage.',
    conditions: [{ field: 'situation', op: '=', values: ['emergency-repair'] }],
    effect: 'limits',
    methods: [],
    values: { layers: 4, pastEdgeMm: 25.4, pastEdgePrintedIn: 1 },
    source: { status: 'published', source: 'US Army TM 1-1520-240-BD' },
  },
  {
    id: 'co-tape-harness-jacket',
    decides: 'covering',
    statement: 'Close an opened harness jacket with three layers of half-lapped tape.',
    conditions: [{ field: 'situation', op: '=', values: ['harness-jacket-open'] }],
    effect: 'requires',
    methods: [],
    values: { layers: 3, overlapShare: 0.5 },
    source: { status: 'published', source: 'US Army TM 9-6115-604-12, splicing (e)' },
  },
  {
    id: 'co-tape-not-hot',
    decides: 'covering',
    statement: 'Ordinary insulation tape, glass-backed included, burns easily: not in hot areas; use tape rated about 260 C there.',
    conditions: [{ field: 'situation', op: '=', values: ['heat-source-near'] }],
    effect: 'forbids',
    methods: [],
    values: { highTemperatureTapeC: 260, printedF: 500 },
    source: { status: 'published', source: 'US Navy NEETS module 4', clause: 'page 2-46 warning' },
  },
  {
    id: 'co-sleeve-rating',
    decides: 'covering',
    statement: "Sleeve temperature rating at least that of the wire insulation it replaces, and above the hottest ambient plus the joint's own rise.",
    conditions: [],
    effect: 'requires',
    methods: [],
    values: { minRating: 'wire rating' },
    source: { status: 'common practice', source: 'Insulation-equal requirement (NFPA 70 110.14(B), 46 CFR 111.60-17)' },
  },
  {
    id: 'co-uv',
    decides: 'covering',
    statement: 'Outside, use black (carbon-filled) sleeve and ties; clear and coloured ones age in sun.',
    conditions: [{ field: 'situation', op: '=', values: ['sun'] }],
    effect: 'requires',
    methods: [],
    values: { colour: 'black' },
    source: {
      status: 'common practice',
      source: 'FAA AC 43.13-1B (9/8/98, CHG 1 9/27/01), chapter 11 page 11-62 (straps not where UV reaches unless resistant); trade practice',
    },
  },
  {
    id: 'co-grease',
    decides: 'covering',
    statement: 'Dielectric grease or corrosion inhibitor goes on mating contacts after assembly, not into a crimp barrel or under adhesive.',
    conditions: [{ field: 'situation', op: '=', values: ['connector-end'] }],
    effect: 'limits',
    methods: [],
    values: { inBarrel: false },
    source: tradePractice,
  },
]
