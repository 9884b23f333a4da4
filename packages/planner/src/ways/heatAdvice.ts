import { type HeatChange, type HeatMove, heatJointAdvice, heatSolderSleeve, heatVerdictDefaults, type MethodName } from '@strandwise/core'
import { type JobFacts, printed, type SectionDraft } from '../facts/inner.ts'
import type { JobTool } from '../job/index.ts'
import { quietly } from '../job/inner.ts'
import type { heatingWords } from './heatingWords.ts'
import { type ToolHeat, toolInputs } from './heatTool.ts'

type Draft = SectionDraft<typeof heatingWords>

const leverWords: Readonly<Record<HeatChange['lever'], string>> = {
  contactResistanceKPerW: 'a contact of',
  tipResistanceKPerW: 'a tip of',
  setC: 'a tip setting of',
  airC: 'air at the joint of',
  airSpeedMPerS: 'an air speed of',
  maximumW: 'a tool of',
  stubMm: 'bare wire to the insulation of',
  clip: 'a metal clip on the bare wire,',
  alloy: 'the alloy',
  toolOffS: 'the tool lifted at',
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
const moveWords: Readonly<Record<HeatMove['lever'], string>> = {
  'wet-tip': 'a tip wetted with fresh solder',
  flux: 'fresh flux',
  press: 'a firmer press',
  nearer: 'holding the tool nearer',
}
/** Levers left out here, since moves of the hand cover the contact. */
const notTold: readonly HeatChange['lever'][] = ['contactResistanceKPerW', 'tipResistanceKPerW', 'toolOffS']

/** Adds advice that would make the heating sound: moves of the hand with their gain, then the smallest single changes. */
export function heatAdvice(draft: Draft, facts: JobFacts, method: MethodName, best: ToolHeat): void {
  const { heat } = best
  if (heat.verdict === 'sound') return
  const [move] = heat.moves.filter(({ wettedAtS }) => wettedAtS !== null)
  if (move !== undefined) {
    const gain = move.gainS === null ? `in ${printed(move.wettedAtS ?? 0, 's')}, where it does not now` : `${printed(move.gainS, 's')} sooner`
    draft.say('moves', 'sound', { names: { move: moveWords[move.lever], gain } })
  }
  if (heat.ends.nominal.wettedAtS === null) toFlow(draft, facts, method, best)
  else toSpare(draft, facts, best)
}

const changeText = (facts: JobFacts, { lever, to }: HeatChange): string =>
  `${leverWords[lever]} ${typeof to === 'number' ? printed(to, leverUnits[lever] ?? '', facts.units) : to}`

function toFlow(draft: Draft, facts: JobFacts, method: MethodName, best: ToolHeat): void {
  if (best.inputs.tube !== undefined) {
    const airC = hotterAirC(facts, method, best)
    if (airC === null) draft.say('no-change', 'sound')
    else draft.say('to-flow', 'sound', { names: { change: `air of ${printed(airC, '°C', facts.units)} at the joint` } })
    return
  }
  const [change] = advised(best, heatVerdictDefaults[best.tool.kind].wettedWithinS).toFlow.filter(({ lever }) => !notTold.includes(lever))
  if (change === undefined) draft.say('no-change', 'sound')
  else draft.say('to-flow', 'sound', { names: { change: changeText(facts, change) } })
}

function toSpare(draft: Draft, facts: JobFacts, best: ToolHeat): void {
  if (!best.heat.findings.some(({ code, verdict }) => code === 'limit-passed' && verdict !== 'sound') || best.inputs.tube !== undefined) return
  const found = advised(best, best.heat.ends.nominal.toolOffS)
  const [change] = [...found.both, ...found.toSpareInsulation].filter(({ lever }) => !notTold.includes(lever))
  if (change !== undefined) draft.say('to-spare', 'sound', { names: { change: changeText(facts, change) } })
}

function advised({ inputs }: ToolHeat, toolOffS: number): ReturnType<typeof heatJointAdvice> {
  const { tube: _tube, tipWidthMm: _width, limitStatuses: _statuses, contactFactor: _contact, streamFactor: _stream, ...joint } = inputs
  // By workmanship, at most two outside diameters of bare wire.
  const stubMm = { low: 0, high: 2 * Math.max(...inputs.conductors.map((side) => side.insulationOutsideMm)) }
  return heatJointAdvice({ ...joint, toolOffS, observeS: toolOffS + heatVerdictDefaults.watchAfterS, limits: { stubMm } })
}

const stepK = 10
const mostC = 500

/** Lowest air temperature, in steps of 10 K, at which the joint wets in time, with the swept air equally hot; null if none. */
function hotterAirC(facts: JobFacts, method: MethodName, { tool, index }: ToolHeat): number | null {
  if (tool.kind !== 'hot-air') return null
  const { wettedWithinS } = heatVerdictDefaults['hot-air']
  const wets = (airC: number): boolean => {
    const hotter: JobTool = { ...tool, airC }
    const {
      tube,
      tipWidthMm: _width,
      limitStatuses: _statuses,
      contactFactor: _contact,
      streamFactor: _stream,
      ...joint
    } = toolInputs(facts, method, hotter, index, quietly)
    if (tube === undefined) return false
    const { wettedAtS } = heatSolderSleeve({ ...joint, tube, toolOffS: wettedWithinS, observeS: wettedWithinS })
    return wettedAtS !== null && wettedAtS <= wettedWithinS
  }
  let low = Math.ceil(tool.airC / stepK) * stepK
  let high = mostC
  if (low >= high || !wets(high)) return null
  while (high - low > stepK) {
    const middle = Math.round((low + high) / 2 / stepK) * stepK
    if (wets(middle)) high = middle
    else low = middle
  }
  return high
}
