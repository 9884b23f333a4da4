import { type HeatChange, type HeatJointResult, heatJointAdvice, heatJointBand, insulation, type MethodName, solder } from '@strandwise/core'
import { heatInput, longestHoldS, modelTool, stubMm } from '../facts/heatInputs.ts'
import type { JobFacts } from '../facts/jobFacts.ts'
import { solderedJoint, solderedMethods } from '../facts/soldered.ts'
import type { Assume } from '../job/assume.ts'
import type { JobTool } from '../job/repairJob.ts'
import { heatObstacles } from './heatObstacles.ts'
import { degrees, mm, seconds } from './print.ts'
import type { PlanOption, PlanSection, PlanVerdict } from './repairPlan.ts'
import { rule } from './rule.ts'
import { SectionDraft } from './sectionDraft.ts'
import { type SleeveHeat, sleeveHeat } from './sleeveHeat.ts'
import { worst } from './verdict.ts'

/** How long the joint should stay molten once it is wetted. */
const holdMoltenS = 2

interface ToolFinding {
  readonly tool: JobTool
  readonly verdict: PlanVerdict
  readonly reasons: readonly string[]
  readonly nominal: HeatJointResult
}

/** Whether each tool brings the joint to liquidus and beyond, and what that does to the insulation. */
export function heatingSection(
  facts: JobFacts,
  method: MethodName,
  assume: Assume,
): { readonly section: PlanSection; readonly options: readonly PlanOption[] } {
  const draft = new SectionDraft('heating')
  if (!solderedMethods.includes(method)) {
    draft.say('sound', 'Nothing is soldered; heat is needed only to shrink the sleeve.')
    vapour(draft, facts)
    return { section: draft.done(), options: [] }
  }
  vapour(draft, facts)
  const tools = facts.job.tools ?? []
  const usable = tools.map((tool, index) => ({ tool, index })).filter(({ tool }) => method !== 'solder-sleeve' || tool.kind === 'hot-air')
  if (method === 'solder-sleeve' && facts.job.solderSleeve === undefined) {
    draft.say('cannot tell', 'Which solder ring and tube the sleeve has is not given: its alloy and recovery temperature decide whether your tool flows it.')
  }
  const obstacles = heatObstacles(facts, method)
  for (const { verdict, reason, sources } of obstacles) draft.say(verdict, reason, ...sources)
  if (obstacles.length > 0) return { section: draft.done(), options: [] }
  if (usable.length === 0) {
    draft.say(
      'cannot tell',
      method === 'solder-sleeve'
        ? 'No hot-air tool is named: say its air temperature at the joint, and the speed.'
        : 'No iron or hot-air tool is named: say its power and setting.',
    )
    return { section: draft.done(), options: [] }
  }
  const findings = usable.map(({ tool, index }) => assessTool(draft, tool, index, facts, method, assume))
  const best = findings.reduce((a, b) => (worst(a.verdict, b.verdict) === b.verdict && a.verdict !== b.verdict ? a : b))
  const joint = solderedJoint(method, facts)
  draft.cite(solder(joint.alloy).liquidusC.provenance)
  draft.value('liquidus', solder(joint.alloy).liquidusC.nominal, '°C', solder(joint.alloy).liquidusC.provenance)
  draft.value(`joint for ever under the ${best.tool.name}`, best.nominal.steadyC, '°C')
  if (best.nominal.wettedAtS !== null) draft.value(`wetted with the ${best.tool.name}, about`, best.nominal.wettedAtS, 's')
  draft.value('bare wire to the insulation', stubMm(facts), 'mm', rule('jg-insulation-gap-solder').source)
  for (const reason of best.reasons) draft.say(best.verdict, reason)
  for (const other of findings.filter((finding) => finding !== best)) draft.say('sound', `${other.reasons.slice(0, 2).join(' ')} (${other.verdict})`)
  return {
    section: draft.done(),
    options: findings.map((finding) => ({ of: 'tool', name: finding.tool.name, verdict: finding.verdict, reasons: finding.reasons })),
  }
}

function vapour(draft: SectionDraft, facts: JobFacts): void {
  if (!facts.flammableVapour) return
  draft.say(
    'unsound',
    'Fuel, gas or solvent vapour may stand there: nothing hot, heat-sealed sleeves included, until it is vented and checked with a detector. A blower alone does not clear it.',
    rule('ca-no-hot-work-fuel').source,
  )
}

function assessTool(draft: SectionDraft, tool: JobTool, index: number, facts: JobFacts, method: MethodName, assume: Assume): ToolFinding {
  const joint = solderedJoint(method, facts)
  const liquidusC = solder(joint.alloy).liquidusC.nominal
  const model = modelTool(tool, index, facts, joint.overlapMm, assume)
  const holdS = longestHoldS(tool, facts)
  if (method === 'solder-sleeve' && facts.job.solderSleeve !== undefined) {
    const found = sleeveHeat(facts, facts.job.solderSleeve, model, holdS)
    draft.working('heatSolderSleeve', found.inputs)
    return { tool, ...sleeveVerdict(tool, found, facts, liquidusC, holdS), nominal: found.nominal }
  }
  const inputs = heatInput(method, facts, model, holdS)
  draft.working('heatJoint', { ...inputs })
  const band = heatJointBand(inputs)
  const { nominal, best, worst: slowest } = band
  if (nominal.wettedAtS === null) {
    const never = !best.everReachesLiquidus
    const reach = `${tool.name}: held on for ever the joint stays at ${degrees(nominal.steadyC)}; ${joint.alloy} is liquid at ${degrees(liquidusC)} and wets about 30 K above`
    const may = best.wettedAtS === null ? '' : ' With the best contact it may just do.'
    return {
      tool,
      verdict: best.wettedAtS === null ? 'unsound' : 'cannot tell',
      reasons: [`${reach}. Within ${holdS} s it ${never ? 'never' : 'does not'} flow.${may}`, ...advice(inputs, false)],
      nominal,
    }
  }
  // Lifted a couple of seconds after it is wetted: what the insulation then sees.
  const lifted = heatJointBand(heatInput(method, facts, model, nominal.wettedAtS + holdMoltenS))
  const slow = slowest.wettedAtS === null ? `with poor contact not within ${holdS} s` : `${seconds(slowest.wettedAtS)} with poor contact`
  const reasons = [`${tool.name}: ${joint.alloy} flows and wets in ${seconds(nominal.wettedAtS)}, ${slow}.`]
  const spared = insulationFinding(facts, lifted.nominal)
  if (slowest.wettedAtS === null)
    reasons.push(
      `Wet the tip with fresh solder so that it bridges to the joint, take a wider tip, and stop at ${holdS} s: let it cool, clean, flux, and try again.`,
    )
  reasons.push(spared.text)
  if (spared.verdict !== 'sound')
    reasons.push(...advice({ ...inputs, toolOffS: nominal.wettedAtS + holdMoltenS, observeS: nominal.wettedAtS + holdMoltenS + 30 }, true))
  return { tool, verdict: worst(slowest.wettedAtS === null ? 'caution' : 'sound', spared.verdict), reasons, nominal: lifted.nominal }
}

function insulationFinding(facts: JobFacts, result: HeatJointResult): { readonly verdict: PlanVerdict; readonly text: string } {
  const family = insulation(facts.insulationName)
  const peakC = Math.max(...result.insulationPeakC, ...result.insulationOuterPeakC)
  const exposureS = Math.max(...result.insulationExposureS)
  const limit = family.shortExposureC
  const edge = `The edge of the ${facts.insulationName}, ${mm(stubMm(facts))} from the solder, peaks at ${degrees(peakC)}`
  if (limit === null) return { verdict: 'cannot tell', text: `${edge}; what it stands for seconds is not known.` }
  if (peakC > limit.high)
    return {
      verdict: 'unsound',
      text: `${edge}, above the ${degrees(limit.high)} that it stands for seconds, for ${seconds(exposureS)} past ${degrees(limit.low)}.`,
    }
  if (peakC > limit.low) return { verdict: 'caution', text: `${edge}: past ${degrees(limit.low)}, where it begins to give, for ${seconds(exposureS)}.` }
  return { verdict: 'sound', text: `${edge}; it stands ${degrees(limit.low)} for seconds.` }
}

function sleeveVerdict(
  tool: JobTool,
  found: SleeveHeat,
  facts: JobFacts,
  liquidusC: number,
  holdS: number,
): { readonly verdict: PlanVerdict; readonly reasons: readonly string[] } {
  const { nominal, best } = found
  const names = {
    tube: 'the tube never shrinks',
    ring: 'the solder ring never melts',
    conductor: 'the ring melts but the wire stays too cold to wet',
    insulation: 'the insulation gives up first',
  }
  if (nominal.wettedAtS === null) {
    const first = nominal.firstToFail
    return {
      verdict: best.wettedAtS === null ? 'unsound' : 'cannot tell',
      reasons: [
        `${tool.name}, air at ${degrees(tool.kind === 'hot-air' ? tool.airC : Number.NaN)}: held on for ever the wire in the sleeve comes to ${degrees(nominal.steadyC)}; the ring is liquid at ${degrees(liquidusC)} and wets about 30 K above. Within ${holdS} s ${first === null ? 'it does not wet' : names[first]}.`,
        ...found.advice,
      ],
    }
  }
  const spared = insulationFinding(facts, nominal)
  const slow = found.worst.wettedAtS === null ? `in a weaker stream not within ${holdS} s` : `${seconds(found.worst.wettedAtS)} in a weaker stream`
  return {
    verdict: worst(found.worst.wettedAtS === null ? 'caution' : 'sound', spared.verdict),
    reasons: [`${tool.name}: the sleeve shrinks, the ring melts and the wire is wetted in ${seconds(nominal.wettedAtS)}, ${slow}.`, spared.text],
  }
}

const leverWords: Readonly<Record<HeatChange['lever'], string>> = {
  contactResistanceKPerW: 'contact: tin the tip, flux, and bridge it with solder, down to',
  tipResistanceKPerW: 'a wider tip, down to',
  setC: 'tip setting to',
  airC: 'air at the joint to',
  airSpeedMPerS: 'air speed to',
  maximumW: 'power to',
  stubMm: 'bare wire to the insulation to',
  clip: 'a metal clip on the bare wire,',
  alloy: 'the alloy',
  toolOffS: 'lift the tool at',
}
const leverUnits: Readonly<Partial<Record<HeatChange['lever'], string>>> = {
  contactResistanceKPerW: 'K/W',
  tipResistanceKPerW: 'K/W',
  setC: '°C',
  airC: '°C',
  airSpeedMPerS: 'm/s',
  maximumW: 'W',
  stubMm: 'mm',
  toolOffS: 's',
}

function changeText(change: HeatChange): string {
  const to = typeof change.to === 'number' ? `${Number(change.to.toPrecision(2))} ${leverUnits[change.lever] ?? ''}`.trim() : change.to
  return `${leverWords[change.lever]} ${to}`
}

/** The smallest single changes, each alone; and the ones that do both at once. */
function advice(inputs: Parameters<typeof heatJointAdvice>[0], flows: boolean): readonly string[] {
  // Workmanship wants at most two outer diameters of bare wire.
  const stubMm = { low: 0, high: 2 * Math.max(...inputs.conductors.map((side) => side.insulationOutsideMm)) }
  const found = heatJointAdvice({ ...inputs, limits: { stubMm } })
  const lines: string[] = []
  const list = (changes: readonly HeatChange[]) => changes.slice(0, 3).map(changeText).join('; or ')
  if (found.both.length > 0) lines.push(`The smallest single change that flows it and spares the insulation: ${list(found.both)}.`)
  else if (flows)
    lines.push('No single change of this tool flows it and spares the insulation: a wider tip and a clip together, wire of a hotter grade, or a crimp.')
  else {
    if (found.toFlow.length > 0) lines.push(`To make it flow, one of: ${list(found.toFlow)}.`)
    else lines.push('No single change of this tool within its reach makes it flow: take another tool, a lower-melting alloy or a crimp.')
    if (found.toSpareInsulation.length > 0) lines.push(`To spare the insulation, one of: ${list(found.toSpareInsulation)}. The two pull against each other.`)
  }
  return lines
}
