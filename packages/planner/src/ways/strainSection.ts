import { bendStrain, flexLifeCycles, type MethodName, minimumBendRadiusMm } from '@strandwise/core'
import { figure, type JobFacts, type PlanSection, planValue, rule, SectionDraft, studKinds } from '../facts/inner.ts'
import { evenStrandMm } from '../job/inner.ts'
import { splicedOutside } from './cutBack.ts'
import { isSoldered } from './jointShape.ts'
import { isSplice } from './methodTitles.ts'
import { strainWords } from './strainWords.ts'

type Draft = SectionDraft<typeof strainWords>

/** Section on strain relief: first tie, bend, flex life, drip loop and support. */
export function strainSection(facts: JobFacts, method: MethodName): PlanSection {
  const draft: Draft = new SectionDraft('strain-relief', strainWords, facts.units)
  const splice = isSplice(method)
  const names = { place: facts.terminal.place }
  bend(draft, facts)
  if (facts.flexes || facts.job.surroundings?.bendCycles !== undefined) flexing(draft, facts)
  if (splice || splicedOutside(method, facts)) {
    const [from, to] = tieRange()
    draft.say('ties', 'sound', {
      values: { from: planValue('tie off the sleeve, from', from, 'mm'), to: planValue('tie off the sleeve, to', to, 'mm') },
      rule: 'sr-tie-distance',
    })
    draft.say('no-load', 'sound', { rule: 'sr-splice-no-load' })
  } else if (studKinds.includes(facts.terminal.kind)) draft.say('stud-support', 'sound', { rule: 'sr-support-at-stud' })
  else
    draft.say('first-tie', 'sound', {
      values: { from: planValue('first tie behind', figure('sr-first-tie-distance', 'minMm'), 'mm', rule('sr-first-tie-distance').source) },
      names,
      rule: 'sr-first-tie-distance',
    })
  if (isSoldered(method) && facts.vibration !== 'none')
    draft.say('support', facts.vibration === 'strong' ? 'caution' : 'sound', {
      values: { near: planValue('support within', figure('sr-solder-support', 'maxDistanceMm'), 'mm', rule('sr-solder-support').source) },
      rule: 'sr-solder-support',
    })
  if (facts.wet) draft.say('drip-loop', 'sound', { names, rule: 'cb-drip-loop' })
  if (facts.location === 'splash' || facts.location === 'submerged') aboveWater(draft)
  const brittle = figure('cb-cold-pvc', 'minC')
  if (facts.insulationName === 'PVC' && facts.coldestC < brittle)
    draft.say('cold-pvc', 'sound', {
      values: { from: planValue('brittle below', brittle, '°C', rule('cb-cold-pvc').source), coldest: planValue('coldest air', facts.coldestC, '°C') },
      rule: 'cb-cold-pvc',
    })
  return draft.done()
}

function tieRange(): readonly [number, number] {
  const range = rule('sr-tie-distance').values.fromSleeveMm
  const [from = 10, to = 30] = Array.isArray(range) ? (range as readonly number[]) : []
  return [from, to]
}

function aboveWater(draft: Draft): void {
  const above = planValue('above the water', figure('cb-above-water', 'aboveWaterMm'), 'mm', rule('cb-above-water').source)
  draft.say('above-water', 'sound', { values: { above }, rule: 'cb-above-water' })
}

function bend(draft: Draft, facts: JobFacts): void {
  const inputs = { outsideDiameterMm: facts.outsideMm, rule: 'unsupported' } as const
  const radius = draft.value('least bend radius', minimumBendRadiusMm(inputs), 'mm', rule('sr-bend-10d').source)
  draft.working('minimumBendRadiusMm', inputs, radius.name)
  const diameters = planValue('outer diameters', figure('sr-bend-10d', 'minRadiusDiameters'), '', rule('sr-bend-10d').source)
  const given = facts.job.surroundings?.bendRadiusMm
  if (given !== undefined && given < radius.value)
    draft.say('bend-too-tight', 'caution', { values: { given: planValue('bent to', given, 'mm'), radius, diameters }, rule: 'sr-bend-10d' })
  else draft.say('bend', 'sound', { values: { radius, diameters }, rule: 'sr-bend-10d' })
}

/** Flex life of the strands, by a law from memory with its scatter: caution at most. */
function flexing(draft: Draft, facts: JobFacts): void {
  const { bendRadiusMm, bendCycles } = facts.job.surroundings ?? {}
  const strandMm = facts.job.wire.strandDiameterMm ?? (facts.strandCount === null ? null : evenStrandMm(facts.areaMm2, facts.strandCount))
  if (facts.flexes) {
    draft.say('travel', 'sound', { rule: 'sr-moving-travel' })
    if (strandMm !== null) draft.say('fine-strands', 'sound', { values: { strand: planValue('strand', strandMm, 'mm') } })
  }
  if (bendRadiusMm === undefined || bendCycles === undefined || strandMm === null) return
  const strain = { strandDiameterMm: strandMm, bendRadiusMm }
  const amplitude = bendStrain(strain)
  const life = flexLifeCycles({ strainAmplitude: amplitude })
  draft.working('bendStrain', strain).working('flexLifeCycles', { strainAmplitude: amplitude }, 'bends, at least')
  const memory = { status: 'from memory', source: 'ductility law of copper strands with its scatter' } as const
  const values = {
    low: planValue('bends, at least', Math.round(life.low), '', memory),
    high: planValue('bends, at most', Math.round(life.high), '', memory),
    wanted: planValue('bends asked of it', bendCycles, ''),
  }
  if (bendCycles <= life.low) draft.say('flex-life', 'sound', { values })
  else if (bendCycles <= life.high) draft.say('flex-short', 'caution', { values })
  else draft.say('flex-too-short', 'caution', { values })
}
