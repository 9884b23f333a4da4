import {
  filletConductanceSPerM,
  type JointSite,
  jointTemperatureC,
  lapJointResistanceOhm,
  type MethodName,
  NoSteadyStateError,
  resistanceOhmPerM,
  resistivityOhmM,
  solder,
} from '@strandwise/core'
import { figure, type JobFacts, type PlanSection, planValue, rule, SectionDraft } from '../facts/inner.ts'
import { assumed } from '../job/inner.ts'
import { type JointGround, type JointLimits, jointLimits } from './jointGround.ts'
import { conductorsMm, isSoldered, jointShape, solderFill } from './jointShape.ts'
import { jointWords } from './jointWords.ts'

type Draft = SectionDraft<typeof jointWords>

/** Section on the joint: predicted resistance, temperature at full load in the hottest air, and limits. */
export function jointSection(facts: JobFacts, method: MethodName, ground: JointGround): { readonly section: PlanSection; readonly limits: JointLimits | null } {
  const draft: Draft = new SectionDraft('joint', jointWords, facts.units)
  if (method === 'replace-the-run') {
    draft.say('none', 'sound', { rule: 'cb-end-to-end' })
    return { section: draft.done(), limits: null }
  }
  const { site } = ground
  const limits = jointLimits(method, facts, ground)
  draft.working('acceptanceResistanceOhm', { ...site, jointLengthMm: limits.lengthMm, plainWireMultiple: 1 }, 'limit, new')
  const fresh = draft.value('limit, new', limits.newOhm, 'Ω', rule('pr-mv-splice').source)
  const aged = draft.value('limit, aged', limits.agedOhm, 'Ω', rule('pr-mv-splice').source)
  if (limits.outerOhm !== null) draft.value('outer limit', limits.outerOhm, 'Ω', rule('wp-joint-share').source)
  let expectedOhm = limits.newOhm
  if (isSoldered(method)) {
    const predicted = lap(draft, facts, method)
    expectedOhm = predicted.value
    if (predicted.value > limits.newOhm) draft.say('worse-than-wire', 'caution', { values: { resistance: predicted, fresh } })
  } else
    draft.say('crimp-limit', 'sound', { values: { fresh, aged, length: planValue('as much wire', limits.lengthMm, 'mm', assumed.ours) }, rule: 'pr-mv-splice' })
  if (!isSoldered(method)) {
    const strip = draft.value('strip', jointShape(method, facts).stripMm, 'mm', assumed.strip.source)
    draft.say('strip', 'sound', { values: { strip } })
  }
  if (limits.outerOhm === null)
    draft.say('no-room-to-age', 'caution', {
      values: { aged, wire: planValue('as much wire, at most', figure('wp-joint-share', 'equivalentWireMaxMm'), 'mm', rule('wp-joint-share').source) },
      rule: 'wp-joint-share',
    })
  warmth(draft, facts, method, site, expectedOhm)
  return { section: draft.done(), limits }
}

/** Predicted resistance of an overlap; the band is for a bond half to one wire diameter wide. */
function lap(draft: Draft, facts: JobFacts, method: MethodName) {
  const { overlapMm } = jointShape(method, facts)
  const fill = solderFill(method, facts)
  const { thinMm } = conductorsMm(facts)
  const thin =
    facts.beyond === null || facts.beyond.conductorDiameterMm >= facts.conductorDiameterMm
      ? facts.ohmPerM
      : resistanceOhmPerM({ areaMm2: facts.beyond.areaMm2, material: facts.beyond.material, temperatureC: facts.hottestC, layFactor: facts.layFactor })
  const conductorsOhmPerM = [thin, thin] as const
  const thinner = facts.beyond !== null && facts.beyond.conductorDiameterMm < facts.conductorDiameterMm ? facts.beyond : facts
  const fillet = (bondWidthMm: number) => ({
    diameterMm: thinMm,
    resistivityOhmM: resistivityOhmM(thinner.material, facts.hottestC),
    gapMm: Math.min(assumed.solderLayerMm.value, thinMm),
    bondWidthMm,
    solderOhmM: fill.alloyOhmM,
  })
  const found = [0.5, 1].map((share) => lapJointResistanceOhm({ overlapMm, conductorsOhmPerM, interfaceSPerM: filletConductanceSPerM(fillet(share * thinMm)) }))
  const narrow = fillet(0.5 * thinMm)
  draft.working('filletConductanceSPerM', narrow)
  draft.working('lapJointResistanceOhm', { overlapMm, conductorsOhmPerM, interfaceSPerM: filletConductanceSPerM(narrow) }, 'resistance, well wetted')
  const high = Math.max(...found)
  const overlap = draft.value('overlap', overlapMm, 'mm', assumed.ours)
  draft.working('solderVolumeMm3', fill.volumeOf, draft.value('solder', fill.volumeMm3, 'mm³').name)
  const resistance = draft.value('resistance, well wetted', high, 'Ω', undefined, { low: Math.min(...found), high })
  if (facts.beyond !== null) draft.say('lap-unlike', 'sound', { values: { overlap, resistance }, rule: 'jg-lap-overlap' })
  else {
    const diameters = planValue('overlap in wire diameters', overlapMm / thinMm, '', assumed.ours)
    draft.say('lap-resistance', 'sound', { values: { overlap, resistance, diameters }, rule: 'jg-lap-overlap' })
  }
  draft.say('lap-no-pull', 'sound', { rule: 'sr-splice-no-load' })
  return resistance
}

function warmth(draft: Draft, facts: JobFacts, method: MethodName, site: JointSite, jointResistanceOhm: number): void {
  const current = planValue('current', facts.currentA, 'A')
  try {
    const inputs = { ...site, jointResistanceOhm }
    const found = (['churchill-chu', 'morgan'] as const).map((correlation) => ({ correlation, jointC: jointTemperatureC({ ...inputs, correlation }) }))
    const [cooler, hotter] = found.toSorted((one, other) => one.jointC - other.jointC) as [(typeof found)[0], (typeof found)[0]]
    const high = hotter.jointC
    const joint = draft.value('joint, full load in the hottest air', high, '°C', undefined, { low: cooler.jointC, high })
    draft.working('jointTemperatureC', { ...inputs, correlation: hotter.correlation }, joint.name)
    const limit = planValue('limit', facts.limitC, '°C')
    const names = { limitOf: facts.limitOf }
    if (high > facts.limitC) draft.say('joint-too-hot', 'unsound', { values: { current, joint, limit }, names })
    else
      draft.say('joint-cool', 'sound', { values: { current, joint, limit, room: planValue('below its limit', Math.floor(facts.limitC - high), 'K') }, names })
    if (isSoldered(method)) solidus(draft, facts, method, high)
  } catch (error) {
    if (!(error instanceof NoSteadyStateError)) throw error
    draft.say('joint-no-steady', 'unsound', { values: { current, largest: planValue('largest steady current', error.largestCurrentA, 'A') } })
  }
}

function solidus(draft: Draft, facts: JobFacts, method: MethodName, jointC: number): void {
  const { alloy } = solderFill(method, facts)
  const { nominal, provenance } = solder(alloy).solidusC
  const strong = facts.vibration === 'strong'
  const unloaded = figure('me-temp-zone', 'unloadedMarginBelowSolidusK')
  const wantedK = strong ? figure('me-temp-zone', 'loadedMarginBelowSolidusK') : unloaded
  const marginK = nominal - jointC
  if (marginK >= wantedK) return
  const values = {
    solidus: planValue('solidus', nominal, '°C', provenance),
    margin: planValue('margin', Math.floor(marginK), 'K'),
    wanted: planValue('least margin', wantedK, 'K', rule('me-temp-zone').source),
  }
  draft.say('solder-soft', marginK < unloaded ? 'unsound' : 'caution', { values, names: { alloy }, rule: 'me-temp-zone' })
}
