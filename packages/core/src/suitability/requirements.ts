import { frozen } from '../errors/inner.ts'
import { insulation, type MetalName, solder, solders } from '../materials/index.ts'
import { type MethodContext, type MethodName, type PracticeRule, ruleFigure } from '../rules/index.ts'
import { anodicIndex } from './anodicIndex.ts'
import { galvanicDifferenceV } from './galvanicDifference.ts'

/** Effect of a rule on one method, and what would change it. */
interface Judgement {
  readonly effect: 'forbids' | 'requires' | 'favours'
  readonly changesIf: string
}

/** Checks a requiring rule; null if method or context already meets it. */
interface Requirement {
  /** Methods to which it applies, if the rule's own list is too wide. */
  readonly methods?: readonly MethodName[]
  readonly judge: (context: MethodContext, method: MethodName, rule: PracticeRule) => Judgement | null
}

const soldered: readonly MethodName[] = ['soldered-lap', 'soldered-lineman-splice', 'solder-sleeve']
const splices: readonly MethodName[] = [...soldered, 'crimped-butt-splice', 'crimped-and-sealed-butt-splice']

/** Length of a splice with its sleeve, one tie and a straight piece of wire: from the rule on breaks near a terminal. */
const spliceNeedsMm = 100

const until = (changesIf: string): Judgement => ({ effect: 'requires', changesIf })
const unless = (met: boolean, changesIf: string): Judgement | null => (met ? null : until(changesIf))
const isWet = (context: MethodContext): boolean => context.location !== 'dry'
/** True if the joint holds mechanically before it is soldered, like the turns of a wrapped splice. */
const holdsWithoutSolder = (method: MethodName): boolean => method === 'soldered-lineman-splice'
const bringsItsSeal = (method: MethodName): boolean => method === 'crimped-and-sealed-butt-splice' || method === 'solder-sleeve'

const mechanicalHold: Requirement = { judge: (_context, method) => unless(holdsWithoutSolder(method), 'something other than the solder holds the wires first') }

const hotAirAtHand = (context: MethodContext): Judgement | null => unless(context.tools.includes('hot-air'), 'a hot-air tool is at hand')

/** Required margin below the solidus; a joint in vibration or flexing counts as loaded. */
function marginK(context: MethodContext, rule: PracticeRule): number {
  return ruleFigure(rule, context.vibration === 'none' && !context.flexes ? 'unloadedMarginBelowSolidusK' : 'loadedMarginBelowSolidusK')
}

/** The alloy assumed by default, and the one with the highest melting point. */
const ordinaryAlloy = 'Sn63Pb37'
const highestSolidusC = (): number => Math.max(...Object.values(solders).map((alloy) => alloy.solidusC.low))

function judgeHeat(context: MethodContext, _method: MethodName, rule: PracticeRule): Judgement | null {
  const neededC = context.hottestC + marginK(context, rule)
  if (neededC > highestSolidusC()) return { effect: 'forbids', changesIf: 'the joint moves to a cooler place' }
  return unless(neededC <= solder(ordinaryAlloy).solidusC.low, 'the alloy melts high enough above the hottest place, or the joint moves to a cooler one')
}

function outlastsOrdinarySolder(context: MethodContext): boolean {
  const exposure = insulation(context.insulation).shortExposureC
  return exposure !== null && exposure.low >= solder(ordinaryAlloy).liquidusC.high
}

/** Ordinary air allows a larger difference than salt or heavy damp; metals without an index have rules of their own. */
function judgePair(context: MethodContext, _method: MethodName, rule: PracticeRule): Judgement | null {
  const [metal1, metal2]: readonly [MetalName, MetalName] = context.metals
  if (anodicIndex[metal1] === undefined || anodicIndex[metal2] === undefined) return null
  const limitV = ruleFigure(rule, isWet(context) ? 'harshMaxV' : 'normalMaxV')
  const apartV = galvanicDifferenceV(metal1, metal2)
  return unless(apartV <= limitV, `the joint is sealed all round or plated alike: anodic indexes ${apartV.toFixed(2)} V apart, ${limitV.toFixed(2)} V allowed`)
}

/**
 * Checks of the rules that require something. Rules of workmanship (strip, clean, inspect) have no entry: they are met in doing the work and choose no method.
 *
 * @source the rules themselves
 */
export const requirements: Readonly<Record<string, Requirement>> = /* @__PURE__ */ frozen({
  'me-abyc-no-sole-solder': mechanicalHold,
  'me-mechanical-first': mechanicalHold,
  'me-nec-solder': mechanicalHold,
  'me-boat-wrapped-splice': { judge: () => until('its turns hold without the solder and a sealing sleeve covers them') },
  'me-solder-sleeve-insulation': {
    judge: (context) =>
      unless(outlastsOrdinarySolder(context), 'the insulation outlasts the solder of the ring, or a low-melting ring stays cool and unloaded'),
  },
  'me-sealed-splice-permanent': { judge: () => until('a sealed splice takes its place: this one is temporary') },
  'me-wet-seal': { judge: (_context, method) => unless(bringsItsSeal(method), 'an adhesive-lined sleeve seals both ends') },
  'me-unsealed-not-in-wet': { judge: () => until('an adhesive-lined sleeve covers it and shows its bead at both ends: without it the joint is temporary') },
  'me-ratchet-tool': {
    judge: (context, method) =>
      unless(
        context.tools.includes('crimp-tool') || (method === 'new-crimped-terminal' && context.tools.includes('terminal-die')),
        'a ratchet crimp tool that fits barrel and wire is at hand',
      ),
  },
  'me-barrel-range': {
    judge: (context, method) => unless(method !== 'new-crimped-terminal' || context.tools.includes('terminal-die'), 'the die for that terminal is at hand'),
  },
  'me-temp-zone': { judge: judgeHeat },
  'me-nickel-above-150': {
    judge: (context) => unless(!context.metals.some((name) => name === 'nickel' || name === 'silver'), 'the barrel is nickel-plated'),
  },
  'me-al-clean': { judge: () => until('terminal and tools are made for aluminium, and the strands are brushed and pasted right after stripping') },
  'me-al-clean-time': { judge: () => until('it is crimped within five minutes of brushing') },
  'me-thermocouple': { judge: () => until('both legs are joined with their own alloys, the junctions side by side') },
  'me-thermocouple-junction-pair': { judge: () => until('the two splices lie together, lagged, away from heat') },
  'me-databus': { judge: () => until("the maker's own procedure allows a splice in this line") },
  'cb-splice-12in': { judge: () => until('the splice lies at least 305 mm from the termination') },
  'cb-no-room-at-plug': { methods: splices, judge: () => until('the splices of an inserted length lie further back, staggered') },
  'cb-above-water': {
    methods: splices,
    judge: (_context, method) => unless(method === 'crimped-and-sealed-butt-splice', 'the splice sits above the highest standing water'),
  },
  'cb-accessible': {
    methods: splices,
    judge: (context) => unless(context.accessMm === undefined || context.accessMm >= spliceNeedsMm, 'the splice moves to where it can be reached'),
  },
  'cb-cold-pvc': {
    methods: ['replace-the-run'],
    judge: (context) => (context.flexes ? { effect: 'favours', changesIf: 'the wire does not move in frost' } : null),
  },
  'co-adhesive-no-bond': { methods: splices, judge: () => until('a sealant or moulded part made for that insulation seals the ends') },
  'co-adhesive-softens': { methods: splices, judge: (context) => unless(!isWet(context), 'the liner of the sleeve is a high-temperature one') },
  'me-galvanic-harsh': { methods: ['crimped-butt-splice', 'new-crimped-terminal'], judge: judgePair },
  'he-heat-the-work': {
    methods: ['soldered-lap', 'soldered-lineman-splice'],
    judge: (context) => unless(context.tools.includes('iron'), 'an iron with a tip as wide as the joint is at hand'),
  },
  'he-solder-sleeve-order': { judge: hotAirAtHand },
  'co-from-centre': { methods: ['crimped-and-sealed-butt-splice'], judge: hotAirAtHand },
  'sr-solder-support': { judge: (context) => unless(context.vibration !== 'strong', 'wire and joint are held as one, with a support on both sides') },
})

/**
 * Change that would lift a prohibition.
 *
 * @source the rules themselves
 */
export const liftedIf: Readonly<Record<string, string>> = /* @__PURE__ */ frozen({
  'cb-splice-not-where-flexed': 'the joint moves to where nothing moves',
  'me-no-solder-in-flex': 'the joint moves to where nothing moves',
  'me-no-lap-at-plug': 'the joint lies at least 50 mm from the plug or terminal',
  'me-boat-lap-and-sleeve': 'the repair is a temporary one, or a crimp holds the wires',
  'me-submerged': 'the joint moves above the water',
  'ca-no-hot-work-fuel': 'the space is vented and checked, or the joint is made elsewhere',
  'me-al-terminals': 'both wires are copper',
  'me-cca': 'the wire is replaced with copper',
})
