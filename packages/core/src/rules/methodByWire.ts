import { frozen } from '../errors/inner.ts'
import { onSmallCraft, whenSoldered } from './conditions.ts'
import { crimped, soldered, splices } from './methods.ts'
import type { PracticeRule } from './practiceRule.ts'
import { tradePractice } from './sources.ts'

/**
 * Joining method by circuit, metal, size and heat, as rules.
 *
 * @source each rule carries its own
 */
export const methodByWireRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'me-no-splice-hazardous',
    decides: 'method',
    statement: 'No cable splice in a hazardous (explosive atmosphere) place, except in intrinsically safe circuits.',
    conditions: [{ field: 'circuit', op: '=', values: ['fuel-or-explosive'] }],
    effect: 'forbids',
    methods: splices,
    values: { allowed: false },
    source: { status: 'published', source: '46 CFR', clause: '111.60-19(a)' },
  },
  {
    id: 'me-heavy-cable',
    decides: 'method',
    statement:
      'Above about 16 mm2 use a lug or butt with a hydraulic or indent crimp and a heavy adhesive sleeve; soldering heats a long length of insulation before it wets.',
    conditions: [{ field: 'areaMm2', op: '>=', values: [16] }],
    effect: 'favours',
    methods: ['crimped-and-sealed-butt-splice', 'new-crimped-terminal'],
    values: { crimpFromMm2: 16 },
    source: tradePractice,
  },
  {
    id: 'me-temp-zone',
    decides: 'method',
    statement:
      "Near an exhaust, brake or lamp keep an unloaded soldered joint's hottest point 40 K below the solder's solidus, and 80 K below where it is pulled, bent or shaken, since solder creeps long before it melts; keep the sleeve inside its continuous rating. Otherwise use a plated crimp with a covering rated for the heat.",
    conditions: [{ field: 'hottestC', op: '>=', values: [50] }, whenSoldered],
    effect: 'limits',
    methods: soldered,
    values: { unloadedMarginBelowSolidusK: 40, loadedMarginBelowSolidusK: 80 },
    source: { status: 'common practice', source: 'Trade practice; solder melting points of standard alloys' },
  },
  {
    id: 'me-nickel-above-150',
    decides: 'method',
    statement: 'Nickel-plated wire, and silver-plated wire used above 150 C, go into nickel-plated crimp barrels.',
    conditions: [{ field: 'hottestC', op: '>', values: [150] }],
    effect: 'requires',
    methods: crimped,
    values: { temperatureAboveC: 150 },
    source: { status: 'published', source: 'NASA-STD-8739.4', edition: '2011, change 6', clause: 'para 19.13.1' },
  },
  {
    id: 'me-al-terminals',
    decides: 'method',
    statement:
      'Aluminium wire takes terminals made for aluminium only; never put aluminium and copper together in one copper crimp. Aluminium creeps under pressure and moves more with heat, so joints work loose.',
    conditions: [{ field: 'metal', op: '=', values: ['aluminium-1350'] }],
    effect: 'forbids',
    methods: splices,
    values: { mixAlCu: false },
    source: { status: 'published', source: 'US Navy NEETS module 4 page 2-16; NFPA 70 article 110.14 as quoted' },
  },
  {
    id: 'me-al-clean',
    decides: 'method',
    statement: 'Aluminium oxide forms within minutes: brush and paste right after stripping, and use tools that never touched copper or steel.',
    conditions: [{ field: 'metal', op: '=', values: ['aluminium-1350'] }],
    effect: 'requires',
    methods: crimped,
    values: { rightAfterStripping: true },
    source: { status: 'published', source: "CASA AC 21-99 section 2 chapter 3; cable-lug maker's question page" },
  },
  {
    id: 'me-al-clean-time',
    decides: 'method',
    statement: 'Aluminium: paste and crimp within about five minutes of brushing.',
    conditions: [{ field: 'metal', op: '=', values: ['aluminium-1350'] }],
    effect: 'limits',
    methods: ['new-crimped-terminal'],
    values: { maxDelayS: 300 },
    source: tradePractice,
  },
  {
    id: 'me-tinned-marine',
    decides: 'method',
    statement: 'On untinned copper that has blackened, clean ends and new terminals buy time only; the lasting repair is tinned wire for the run.',
    conditions: [onSmallCraft, { field: 'damage', op: '=', values: ['corroded'] }],
    effect: 'favours',
    methods: ['replace-the-run'],
    values: { lastingRepair: 'tinned wire for the run' },
    source: { status: 'common practice', source: 'Boat-owner and repairer reports; trade practice' },
  },
  {
    id: 'me-thermocouple',
    decides: 'method',
    statement:
      'Extend a thermocouple only with the same alloys on both legs. A third metal does no harm only if both of its junctions are at the same temperature, so keep both splices side by side and lagged.',
    conditions: [{ field: 'circuit', op: '=', values: ['thermocouple'] }],
    effect: 'requires',
    methods: ['crimped-butt-splice', 'crimped-and-sealed-butt-splice', 'new-crimped-terminal', 'replace-the-run'],
    values: { sameAlloy: true, keepJunctionsTogether: true },
    source: { status: 'published', source: 'Law of intermediate metals as explained by sensor makers and in public threads' },
  },
  {
    id: 'me-thermocouple-polarity',
    decides: 'method',
    statement:
      'Check which leg is which before joining, with a meter and a warm hot end, not by colour: red is the negative leg in US coding and the positive leg in old German and Japanese coding; in the international coding white is negative. Crossed legs make a controller read low and overheat a kiln.',
    conditions: [{ field: 'circuit', op: '=', values: ['thermocouple'] }],
    effect: 'requires',
    methods: crimped,
    values: { checkPolarity: true, usNegative: 'red', internationalNegative: 'white', oldGermanAndJapanesePositive: 'red' },
    source: { status: 'published', source: "Sensor maker's colour-code table (ASTM E230, IEC 584-3, DIN 43710, JIS C1610)" },
  },
  {
    id: 'me-thermocouple-junction-pair',
    decides: 'method',
    statement: 'Keep the two splices of a thermocouple pair within about 1 K of each other: side by side, lagged together, away from heat.',
    conditions: [{ field: 'circuit', op: '=', values: ['thermocouple'] }],
    effect: 'limits',
    methods: crimped,
    values: { junctionDifferenceMaxK: 1 },
    source: tradePractice,
  },
  {
    id: 'me-thermocouple-no-solder',
    decides: 'method',
    statement: 'Thermocouple alloys are hard to solder; crimp or use matched connectors, then warm the splice: the reading must not move.',
    conditions: [{ field: 'circuit', op: '=', values: ['thermocouple'] }],
    effect: 'favours',
    methods: crimped,
    values: { proof: 'warm the splice, the reading stays' },
    source: { status: 'published', source: 'Public threads and sensor maker pages' },
  },
  {
    id: 'me-thermocouple-no-soft-solder',
    decides: 'method',
    statement: 'No soft solder in a thermocouple extension: it adds a third metal, hardly wets these alloys, and melts if the place gets hot.',
    conditions: [{ field: 'circuit', op: '=', values: ['thermocouple'] }],
    effect: 'forbids',
    methods: soldered,
    values: { softSolder: false },
    source: { status: 'common practice', source: 'Trade practice; follows the rule on equal alloys' },
  },
  {
    id: 'me-databus',
    decides: 'method',
    statement:
      "Do not splice a twisted, shielded or coaxial line as if it were a power wire: the maker's own procedure only. Where it allows a splice, keep the twist up to the joint, treat both legs alike and offset them.",
    conditions: [{ field: 'circuit', op: '=', values: ['data-pair'] }],
    effect: 'limits',
    methods: splices,
    values: { untwistMaxMm: 40 },
    source: { status: 'from memory', source: 'Trade practice' },
  },
  {
    id: 'me-al-no-temporary',
    decides: 'method',
    statement: 'Damaged aluminium wire is never spliced as a temporary repair.',
    conditions: [
      { field: 'metal', op: '=', values: ['aluminium-1350'] },
      { field: 'situation', op: '=', values: ['emergency-repair'] },
    ],
    effect: 'forbids',
    methods: splices,
    values: { temporarySplice: false },
    source: { status: 'published', source: 'FAA-H-8083-32', clause: 'chapter 4, emergency splicing' },
  },
  {
    id: 'me-cca',
    decides: 'method',
    statement: 'Copper-clad aluminium: no soldering, no copper crimp; replace it with copper wire, sized anew.',
    conditions: [{ field: 'metal', op: '=', values: ['copper-clad-aluminium'] }],
    effect: 'forbids',
    methods: ['soldered-lap', 'soldered-lineman-splice', 'crimped-butt-splice', 'crimped-and-sealed-butt-splice', 'solder-sleeve', 'new-crimped-terminal'],
    values: { treatAs: 'aluminium' },
    source: { status: 'common practice', source: 'Trade practice; follows the aluminium rules' },
  },
  {
    id: 'me-emergency-temporary',
    decides: 'method',
    statement:
      'Emergency splices, crimped or soldered, are for getting home only: mark, record, replace by a permanent repair soon; and some makers forbid splicing at all, so look first.',
    conditions: [{ field: 'situation', op: '=', values: ['emergency-repair'] }],
    effect: 'limits',
    methods: splices,
    values: { permanent: false },
    source: { status: 'published', source: 'FAA-H-8083-32', clause: 'chapter 4, emergency splicing' },
  },
  {
    id: 'ca-no-hot-work-fuel',
    decides: 'method',
    statement:
      'No soldering iron, hot air, gas tool or flame where fuel, gas or solvent vapour may be, until it is vented and checked; in a fuel or gas space not at all: make the joint elsewhere, or crimp cold and leave the sealing sleeve for outside.',
    conditions: [{ field: 'flammableVapour', op: '=', values: [true] }],
    effect: 'forbids',
    methods: ['soldered-lap', 'soldered-lineman-splice', 'solder-sleeve', 'crimped-and-sealed-butt-splice'],
    values: { hotWork: false },
    source: { status: 'common practice', source: 'Workshop safety practice; 46 CFR 111.60-19 on hazardous places' },
  },
])
