import { frozen } from '../errors/inner.ts'
import { betweenUnlikeMetals, inTheWet, onAircraft, whenSleeved, whenSoldered, withIron } from './conditions.ts'
import { soldered, splices } from './methods.ts'
import type { PracticeRule } from './practiceRule.ts'
import { tradePractice } from './sources.ts'

// Rules of other sections that also affect the choice of a method. The choice imports these, and not the whole of their sections.

/**
 * Replacing the whole wire from terminal to terminal comes before splicing.
 *
 * @source in the rule itself
 */
export const endToEndRule: PracticeRule = /* @__PURE__ */ frozen({
  id: 'cb-end-to-end',
  decides: 'cut-back',
  statement: 'Where it can be done, replace the wire from one terminal to the next instead of splicing.',
  conditions: [],
  effect: 'favours',
  methods: ['replace-the-run'],
  values: { preferred: 'replace terminal to terminal' },
  source: { status: 'published', source: 'CASA AC 21-99 section 2 chapter 5 note; US Army TM 9-4120-389-14 para 4-36' },
})

/**
 * PVC that works in frost.
 *
 * @source in the rule itself
 */
export const coldPvcRule: PracticeRule = /* @__PURE__ */ frozen({
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
})

/**
 * Least distance of a splice from a termination in aircraft practice.
 *
 * @source in the rule itself
 */
export const aircraftSpliceDistanceRule: PracticeRule = /* @__PURE__ */ frozen({
  id: 'cb-splice-12in',
  decides: 'cut-back',
  statement: 'Aircraft practice keeps splices at least 305 mm from a connector or terminal unless the repair is to that end itself.',
  conditions: [onAircraft, { field: 'fromTerminationMm', op: '<', values: [305] }],
  effect: 'limits',
  methods: splices,
  values: { minDistanceMm: 305, minDistancePrintedIn: 12 },
  source: { status: 'from memory', source: 'FAA AC 43.13-1B (9/8/98, CHG 1 9/27/01), chapter 11, para 11-167; SAE AS50881' },
})

/**
 * No room for a splice at a plug.
 *
 * @source in the rule itself
 */
export const noRoomAtPlugRule: PracticeRule = /* @__PURE__ */ frozen({
  id: 'cb-no-room-at-plug',
  decides: 'cut-back',
  statement:
    'Between break and plug a splice needs room for barrel, sleeve, tie and straight wire. Where there is none, the splices of an inserted length lie further back, staggered, or the plug gets a new terminal on sound wire.',
  conditions: [{ field: 'fromTerminationMm', op: '<', values: [100] }],
  effect: 'requires',
  methods: [],
  values: { insertedSplices: 2, staggered: true },
  source: tradePractice,
})

/**
 * Splices stay above standing water.
 *
 * @source in the rule itself
 */
export const aboveWaterRule: PracticeRule = /* @__PURE__ */ frozen({
  id: 'cb-above-water',
  decides: 'cut-back',
  statement:
    'Keep splices above the highest standing water: in a bilge as high over the pump as the lead allows, some 450 mm is advised; where it cannot be, a sealed crimped splice only.',
  conditions: [{ field: 'location', op: '=', values: ['splash', 'submerged'] }],
  effect: 'requires',
  methods: ['crimped-and-sealed-butt-splice'],
  values: { aboveWaterMm: 450 },
  source: { status: 'published', source: 'Boating magazine articles on bilge wiring' },
})

/**
 * Splices stay visible and accessible.
 *
 * @source in the rule itself
 */
export const accessibleRule: PracticeRule = /* @__PURE__ */ frozen({
  id: 'cb-accessible',
  decides: 'cut-back',
  statement: 'Put the splice where it can be seen and reached again: not behind a glued panel, inside a tank wall or in the middle of a conduit.',
  conditions: [],
  effect: 'requires',
  methods: [],
  values: { accessible: true },
  source: { status: 'common practice', source: 'FAA-H-8083-32 chapter 4; trade practice' },
})

/**
 * Largest difference of two touching metals on the anodic index.
 *
 * @source in the rule itself
 */
export const galvanicLimitRule: PracticeRule = /* @__PURE__ */ frozen({
  id: 'me-galvanic-harsh',
  decides: 'joint',
  statement:
    'Keep the anodic-index difference of touching metals within 0.15 V in salt or heavy damp, 0.25 V in ordinary indoor air, 0.50 V in controlled dry air; beyond that seal the joint completely or plate one side.',
  conditions: [betweenUnlikeMetals],
  effect: 'limits',
  methods: [],
  values: { harshMaxV: 0.15, normalMaxV: 0.25, controlledMaxV: 0.5 },
  source: { status: 'published', source: 'Anodic-index guideline used with MIL-STD-889 / MIL-F-14072' },
})

/**
 * The iron heats the work, and the work melts the solder.
 *
 * @source in the rule itself
 */
export const heatTheWorkRule: PracticeRule = /* @__PURE__ */ frozen({
  id: 'he-heat-the-work',
  decides: 'heating',
  statement: 'Put the iron under the joint with full contact and let the work, not the iron, melt the solder.',
  conditions: [withIron],
  effect: 'requires',
  methods: [],
  values: { ironPosition: 'below' },
  source: { status: 'published', source: 'US Army TM 1-1500-204-23-9 chapter 7' },
})

/**
 * How a solder sleeve is heated.
 *
 * @source in the rule itself
 */
export const solderSleeveOrderRule: PracticeRule = /* @__PURE__ */ frozen({
  id: 'he-solder-sleeve-order',
  decides: 'heating',
  statement:
    'Solder sleeve: wires in and still, heat the middle until the ring has run to a fillet and the strands show, then the ends until their rings seal; let it set untouched. A ring that has only slumped is no joint: more heat or another method, not more minutes.',
  conditions: [{ field: 'method', op: '=', values: ['solder-sleeve'] }],
  effect: 'requires',
  methods: ['solder-sleeve'],
  values: { order: ['middle', 'ends'] },
  source: { status: 'common practice', source: 'Trade practice; visual criteria of a solder sleeve' },
})

/**
 * A sleeve is shrunk from its middle outwards.
 *
 * @source in the rule itself
 */
export const fromCentreRule: PracticeRule = /* @__PURE__ */ frozen({
  id: 'co-from-centre',
  decides: 'covering',
  statement: 'Shrink from the middle outward so no air is trapped; never both ends first.',
  conditions: [whenSleeved],
  effect: 'requires',
  methods: [],
  values: { order: 'centre outward' },
  source: { status: 'published', source: 'Public tubing guides' },
})

/**
 * Insulations to which a hot-melt liner does not bond.
 *
 * @source in the rule itself
 */
export const adhesiveNoBondRule: PracticeRule = /* @__PURE__ */ frozen({
  id: 'co-adhesive-no-bond',
  decides: 'covering',
  statement:
    'Hot-melt liner does not stick to silicone, PTFE, FEP or plain polyethylene insulation: there it is a tight cover, not a seal. Use a moulded part, a sealant made for it, or replace the lead.',
  conditions: [{ field: 'insulation', op: '=', values: ['silicone', 'PTFE', 'FEP', 'PE'] }, inTheWet],
  effect: 'limits',
  methods: [],
  values: { noBond: ['silicone', 'PTFE', 'FEP', 'PE'] },
  source: tradePractice,
})

/**
 * Temperature at which a hot-melt liner lets go.
 *
 * @source in the rule itself
 */
export const adhesiveSoftensRule: PracticeRule = /* @__PURE__ */ frozen({
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
})

/**
 * Support behind a soldered joint in vibration.
 *
 * @source in the rule itself
 */
export const solderSupportRule: PracticeRule = /* @__PURE__ */ frozen({
  id: 'sr-solder-support',
  decides: 'strain-relief',
  statement: 'Behind a soldered joint support the wire within about 50 mm, so the stiff end of the solder is not the hinge.',
  conditions: [whenSoldered, { field: 'vibration', op: '=', values: ['some', 'strong'] }],
  effect: 'requires',
  methods: soldered,
  values: { maxDistanceMm: 50 },
  source: tradePractice,
})
