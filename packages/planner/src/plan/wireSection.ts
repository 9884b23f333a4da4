import {
  conductorTemperatureBandC,
  dropBudget,
  fuseBands,
  fuseForWire,
  fuseOpeningS,
  fuseProtectsWire,
  NoSteadyStateError,
  prospectiveCurrentA,
  resistanceOhm,
  terminalCurrentA,
} from '@strandwise/core'
import { bundleBand, wireCurrent } from '../facts/bundle.ts'
import type { JobFacts } from '../facts/jobFacts.ts'
import { assumed } from '../job/assumed.ts'
import { ampere, degrees, percent, seconds, span, volt } from './print.ts'
import type { PlanSection } from './repairPlan.ts'
import { figure, rule } from './rule.ts'
import { SectionDraft } from './sectionDraft.ts'

const series = fuseBands['ISO 8820-3']
/** Multiple of its rating from which a fuse of the series is sure to open. */
const sureMultiple = Math.min(...series.band.filter((point) => point.longestS !== null).map((point) => point.multiple))

/** The reserve of a terminal's derating curve. */
const reserveFactor = figure('wp-terminal-derating', 'deratingFactor')

function steadyWire(draft: SectionDraft, facts: JobFacts): void {
  const inputs = { ...facts.wire, ambientC: facts.hottestC, currentA: facts.currentA }
  if (facts.limitSource !== null) draft.cite(facts.limitSource)
  try {
    const band = facts.loadedInBundle > 1 ? bundleBand(facts, facts.currentA) : conductorTemperatureBandC(inputs)
    draft.working(facts.loadedInBundle > 1 ? 'bundleTemperatureC' : 'conductorTemperatureC', inputs)
    draft.value('conductor, in the hottest air', band.high, '°C', undefined, band)
    const where = facts.loadedInBundle > 1 ? `among ${facts.loadedInBundle} loaded wires` : 'in free air'
    const room = facts.limitC - band.high
    const what = `${facts.sizeText} with ${ampere(facts.currentA)} ${where} at ${degrees(facts.hottestC)} settles at ${span(band.low, band.high, degrees)}`
    if (room < 0)
      draft.say('unsound', `${what}: ${Math.ceil(-room)} K above the ${degrees(facts.limitC)} of ${facts.limitOf}. Take thicker wire or better insulation.`)
    else if (room < 10) draft.say('caution', `${what}: only ${Math.floor(room)} K below the ${degrees(facts.limitC)} of ${facts.limitOf}.`)
    else draft.say('sound', `${what}, ${Math.floor(room)} K below the ${degrees(facts.limitC)} of ${facts.limitOf}.`)
  } catch (error) {
    if (!(error instanceof NoSteadyStateError)) throw error
    draft.say(
      'unsound',
      `${facts.sizeText} has no steady temperature at ${ampere(facts.currentA)}; up to ${ampere(error.largestCurrentA)} it stays below ${degrees(error.ceilingC)}. Take thicker wire.`,
    )
  }
}

function drop(draft: SectionDraft, facts: JobFacts): void {
  const wireOhm = (lengthM: number) =>
    lengthM === 0 ? 0 : resistanceOhm({ areaMm2: facts.areaMm2, lengthM, material: facts.material, temperatureC: facts.hottestC, layFactor: facts.layFactor })
  const elements = [
    { name: 'wire out', resistanceOhm: wireOhm(facts.outLengthM) },
    { name: 'wire back', resistanceOhm: wireOhm(facts.returnLengthM) },
  ].filter((element) => element.resistanceOhm > 0)
  const budget = dropBudget({ currentA: facts.currentA, elements })
  draft.working('dropBudget', { currentA: facts.currentA, elements })
  draft.value('drop over the wire, out and back', budget.dropV, 'V')
  const share = budget.dropV / facts.supplyV
  const what = `The wire alone drops ${volt(budget.dropV)}, ${percent(share)} of ${facts.supplyV} V; ${volt(facts.allowedDropV)} is allowed over the run`
  if (budget.dropV <= facts.allowedDropV) draft.say('sound', `${what}.`, rule('wp-conflict-drop-budget').source)
  else if (facts.job.circuit.allowedDropV === undefined)
    draft.say(
      'caution',
      `${what}, a limit of ours: the load gets less than it might. Thicker wire is the cure, not a better joint.`,
      rule('wp-conflict-drop-budget').source,
    )
  else draft.say('unsound', `${what}. Thicker or shorter wire is the cure, not a better joint.`)
}

function terminal(draft: SectionDraft, facts: JobFacts): void {
  const { ratedCurrentA, ratedAmbientC = assumed.terminal.ratedAmbientC, limitC = assumed.terminal.limitC, acceptsMm2 } = facts.job.terminal ?? {}
  if (acceptsMm2 !== undefined && (facts.areaMm2 < acceptsMm2.low || facts.areaMm2 > acceptsMm2.high)) {
    draft.say(
      'unsound',
      `The terminal's barrel takes ${acceptsMm2.low} to ${acceptsMm2.high} mm²; this wire has ${facts.areaMm2.toFixed(2)} mm². Take the barrel made for it; never cut strands to fit.`,
      rule('me-barrel-range').source,
    )
  }
  if (ratedCurrentA === undefined) return
  if (facts.hottestC >= limitC) {
    draft.say('unsound', `The hottest air, ${degrees(facts.hottestC)}, is at the terminal's own limit of ${degrees(limitC)}: no current is left.`)
    return
  }
  const inputs = { ratedCurrentA, ratedAmbientC, limitC, ambientC: facts.hottestC, reserveFactor }
  const allowedA = terminalCurrentA(inputs)
  draft.working('terminalCurrentA', inputs)
  draft.value('terminal, in the hottest air', allowedA, 'A')
  const what = `The terminal, rated ${ratedCurrentA} A, carries ${ampere(allowedA)} at ${degrees(facts.hottestC)} with a fifth in reserve`
  if (facts.currentA <= allowedA) draft.say('sound', `${what}: enough for ${ampere(facts.currentA)}.`, rule('wp-terminal-derating').source)
  else
    draft.say(
      'unsound',
      `${what}: too little for ${ampere(facts.currentA)}. Take a larger terminal; a repaired small one will burn again.`,
      rule('wp-terminal-derating').source,
    )
}

/** The hottest air in which the loss of a fuse is known: the domain of fuseForWire. */
const hottestFuseC = 150

function fuse(draft: SectionDraft, facts: JobFacts): void {
  const { circuit, load } = facts.job
  const wireA = wireCurrent(facts)
  if (wireA === null) {
    draft.say(
      'unsound',
      `At ${degrees(facts.hottestC)} the wire may carry nothing, for ${facts.limitOf} ends at ${degrees(facts.limitC)}: no fuse guards it there.`,
    )
    if (circuit.fuseA !== undefined) beyondTheWire(draft, facts, circuit.fuseA)
    return
  }
  draft.value('wire, for ever, in the hottest air', wireA, 'A')
  if (facts.hottestC > hottestFuseC) {
    draft.say('cannot tell', `No fuse is known in air of ${degrees(facts.hottestC)}: above ${degrees(hottestFuseC)} put it where it is cooler.`)
    return
  }
  const choice = fuseForWire({
    loadA: facts.currentA,
    wireA,
    ...(load.inrushA !== undefined && load.inrushS !== undefined ? { inrush: { currentA: load.inrushA, timeS: load.inrushS } } : {}),
    ...(load.stallA === undefined ? {} : { stallA: load.stallA }),
    ambientC: facts.hottestC,
    series: 'ISO 8820-3',
  })
  draft.cite(series.provenance)
  const advice =
    choice.ratedA === null
      ? 'No blade fuse both carries this load and guards this wire: thicker wire, or a slower protector by its own curve.'
      : `A ${choice.ratedA} A blade fuse carries this load and guards this wire.`
  if (circuit.fuseA === undefined) {
    draft.say('caution', `No fuse is named. ${rule('wp-no-fuse').statement} ${advice}`, rule('wp-no-fuse').source)
    return
  }
  const overload = sureMultiple * circuit.fuseA
  if (overload <= wireA)
    draft.say('sound', `The ${circuit.fuseA} A fuse may pass ${ampere(overload)} for ever; the wire stands ${ampere(wireA)}.`, rule('wp-overload-zone').source)
  else if (circuit.fuseA <= figure('wp-cfr-150pct', 'maxRatioToTable') * wireA && load.stallA === undefined && circuit.rules?.includes('small-craft')) {
    draft.say(
      'caution',
      `The ${circuit.fuseA} A fuse may pass ${ampere(overload)} for ever and the wire stands ${ampere(wireA)}: within the 150 % that small-craft law allows. ${advice}`,
      rule('wp-cfr-150pct').source,
    )
  } else
    draft.say(
      'unsound',
      `The ${circuit.fuseA} A fuse may pass ${ampere(overload)} for ever; the wire stands only ${ampere(wireA)}. ${advice}`,
      rule('wp-overload-zone').source,
    )

  const candidate = choice.candidates.find((item) => item.ratedA === circuit.fuseA)
  if (candidate !== undefined && !candidate.carriesLoad)
    draft.say(
      'caution',
      `${circuit.fuseA} A is small for a lasting load of ${ampere(facts.currentA)}: in ${degrees(facts.hottestC)} it should carry no more than ${ampere(series.continuousLoadShare.nominal * candidate.atAmbientA)}. It may blow for no fault.`,
      rule('wp-continuous-75').source,
    )
  if (candidate?.carriesInrush === false) draft.say('caution', `${circuit.fuseA} A may open on the inrush of ${load.inrushA ?? 0} A.`, rule('wp-inrush').source)
  if (facts.loadedInBundle === 1) {
    const inputs = { ratedA: circuit.fuseA, band: series.band, wire: { ...facts.wire, ambientC: facts.hottestC }, limitC: facts.limitC }
    const guard = fuseProtectsWire(inputs)
    draft.working('fuseProtectsWire', { ...inputs, band: 'ISO 8820-3' })
    if (!guard.protects && overload <= wireA) {
      const gap = guard.unprotected[0]
      if (gap !== undefined)
        draft.say(
          'caution',
          `Between ${ampere(gap.lowA)} and ${ampere(gap.highA)} the slowest fuse of its band opens later than the wire reaches ${degrees(facts.limitC)}. ${advice}`,
        )
    }
  }
  beyondTheWire(draft, facts, circuit.fuseA, advice)
}

/** What the fuse owes to more than this wire: a jammed motor, a short at the far end, the stretch before it. */
function beyondTheWire(draft: SectionDraft, facts: JobFacts, fuseA: number, advice = ''): void {
  const { circuit, load } = facts.job
  const overload = sureMultiple * fuseA
  if (load.stallA !== undefined && load.stallA < overload) {
    draft.say(
      'unsound',
      `Stalled, the motor draws ${load.stallA} A, below the ${ampere(overload)} at which a ${fuseA} A fuse is sure to open: a jammed motor cooks on behind it. ${advice}`.trim(),
      rule('wp-motor-stall').source,
    )
  } else if (load.stallA !== undefined) {
    const { longestS } = fuseOpeningS({ ratedA: fuseA, band: series.band, currentA: load.stallA })
    draft.say(
      'sound',
      `Stalled, the motor draws ${load.stallA} A: the ${fuseA} A fuse opens${longestS === null ? '' : ` within ${seconds(longestS)}`}.`,
      rule('wp-motor-stall').source,
    )
  }

  farEnd(draft, facts, fuseA)
  const aimM = figure('wp-fuse-near-source', 'maxDistanceMm') / 1000
  if (circuit.fuseDistanceM !== undefined && circuit.fuseDistanceM > aimM) {
    draft.say(
      'caution',
      `The fuse sits ${circuit.fuseDistanceM} m from the source; what lies before it nothing guards. Within ${aimM} m is the aim.`,
      rule('wp-fuse-near-source').source,
    )
  }
}

function farEnd(draft: SectionDraft, facts: JobFacts, fuseA: number): void {
  const sourceOhm = facts.job.circuit.sourceResistanceOhm
  if (sourceOhm === undefined) return
  const loopOhm = facts.ohmPerM * (facts.outLengthM + facts.returnLengthM)
  const inputs = { supplyV: facts.supplyV, sourceOhm, loopOhm }
  const faultA = prospectiveCurrentA(inputs)
  draft.working('prospectiveCurrentA', inputs)
  draft.value('short circuit at the far end', faultA, 'A')
  const needed = figure('wp-far-end-fault', 'faultOverFuseMinRatio') * fuseA
  if (faultA < needed)
    draft.say(
      'caution',
      `A dead short at the far end draws ${ampere(faultA)}, less than ${ampere(needed)}: the ${fuseA} A fuse may take many seconds.`,
      rule('wp-far-end-fault').source,
    )
  else draft.say('sound', `A dead short at the far end draws ${ampere(faultA)}: the fuse opens at once.`, rule('wp-far-end-fault').source)
}

/** Whether wire, terminal and fuse suit the current, in that heat and bundle. */
export function wireSection(facts: JobFacts): PlanSection {
  const draft = new SectionDraft('wire-and-protection')
  if (facts.material === 'copper-clad-aluminium') draft.say('unsound', rule('wp-cca').statement, rule('wp-cca').source)
  if (facts.job.damage.kind === 'overheated') draft.say('caution', rule('me-conditions-overloaded').statement, rule('me-conditions-overloaded').source)
  steadyWire(draft, facts)
  drop(draft, facts)
  terminal(draft, facts)
  fuse(draft, facts)
  return draft.done()
}
