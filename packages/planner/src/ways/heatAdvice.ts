import { type HeatMove, heatAtEnd, heatVerdict, heatVerdictDefaults, type MethodName } from '@strandwise/core'
import { type JobFacts, printed, type SectionDraft } from '../facts/inner.ts'
import { quietly } from '../job/inner.ts'
import type { heatingWords } from './heatingWords.ts'
import { type Lever, longerStub, nearerClip, noClip, otherAlloys, type Position, towards } from './heatLevers.ts'
import { heatedFor, type ToolHeat, toolInputs } from './heatTool.ts'

type Draft = SectionDraft<typeof heatingWords>
type Inputs = ToolHeat['inputs']

const moveWords: Readonly<Record<HeatMove['lever'], string>> = {
  'wet-tip': 'a tip wetted with fresh solder',
  flux: 'fresh flux',
  press: 'a firmer press',
  nearer: 'holding the tool nearer',
}

/** Adds advice that would make the heating sound: moves of the hand with their gain, then the smallest single change of what the job says. */
export function heatAdvice(draft: Draft, facts: JobFacts, method: MethodName, best: ToolHeat): void {
  const { heat } = best
  if (heat.verdict === 'sound') return
  const [move] = heat.moves.filter(({ wettedAtS }) => wettedAtS !== null)
  if (move !== undefined) {
    const gain = move.gainS === null ? `in ${printed(move.wettedAtS ?? 0, 's')}, where it does not now` : `${printed(move.gainS, 's')} sooner`
    draft.say('moves', 'sound', { names: { move: moveWords[move.lever], gain } })
  }
  if (heat.ends.nominal.wettedAtS === null) {
    const change = toFlow(facts, method, best)
    if (change === null) draft.say('no-change', 'sound')
    else draft.say('to-flow', 'sound', saying(change))
  } else if (best.inputs.tube === undefined && heat.findings.some(({ code, verdict }) => code === 'limit-passed' && verdict !== 'sound')) {
    const change = toSpare(facts, method, best)
    if (change !== null) draft.say('to-spare', 'sound', saying(change))
  }
}

interface Change {
  readonly lever: Lever
  readonly position: Position
}

const saying = ({ lever, position }: Change) => ({
  names: { change: position.text, lever: lever.name },
  ...(position.to === null ? {} : { values: { to: position.to } }),
})

/** The nearest position that serves, tried at so many places and then between the last that fails and the first that serves; null if none does. */
function nearest({ positions }: Lever, places: number, serves: (position: Position) => boolean): Position | null {
  let bad = -1
  for (let place = 1; place <= places; place += 1) {
    let good = Math.ceil((positions.length * place) / places) - 1
    if (good <= bad) continue
    if (!serves(positions[good] as Position)) {
      bad = good
      continue
    }
    while (good - bad > 1) {
      const middle = Math.floor((good + bad) / 2)
      if (serves(positions[middle] as Position)) good = middle
      else bad = middle
    }
    return positions[good] as Position
  }
  return null
}

/** The smallest change of the levers, by |ln(to/from)|; those without numbers come last, in their order. */
function smallest(levers: readonly (readonly [lever: Lever, places: number])[], serves: (position: Position) => boolean): Change | null {
  let best: Change | null = null
  let least = Number.POSITIVE_INFINITY
  for (const [lever, places] of levers) {
    if (best !== null && lever.from === null) continue
    const position = nearest(lever, places, serves)
    if (position === null) continue
    const size = lever.from === null || position.to === null ? Number.POSITIVE_INFINITY : Math.abs(Math.log(position.to.value / lever.from))
    if (best === null || size < least) [best, least] = [{ lever, position }, size]
  }
  return best
}

/** True if it holds for the job as changed, in each unit that the change is printed in. */
const holds =
  (method: MethodName, { index }: ToolHeat, goal: (inputs: Inputs) => boolean) =>
  ({ entered }: Position): boolean =>
    entered.every(({ facts, tool }) => goal(toolInputs(facts, method, tool, index, quietly)))

/** True if the nominal joint wets within the time allowed. */
function flows(inputs: Inputs): boolean {
  const { wettedWithinS } = heatVerdictDefaults[inputs.tool.kind]
  return heatedFor(inputs, { toolOffS: wettedWithinS, observeS: wettedWithinS }).wettedAtS !== null
}

/** True if the nominal joint wets and no end passes the insulation's limit. The favourable end is the hottest and tried first. */
function spares(inputs: Inputs): boolean {
  if (heatAtEnd({ ...inputs, end: 'favourable' }).result.insulationExposureS.some((exposureS) => exposureS > 0)) return false
  const { ends, findings } = heatVerdict(inputs)
  return ends.nominal.wettedAtS !== null && findings.every(({ code }) => code !== 'limit-passed')
}

/** More heat flows sooner: the end of each lever tells whether any of it does. */
function toFlow(facts: JobFacts, method: MethodName, best: ToolHeat): Change | null {
  const up = (slider: Parameters<typeof towards>[2]) => [towards(facts, best, slider, 'high'), 1] as const
  const levers =
    best.inputs.tube !== undefined
      ? [up('airC')]
      : [
          ...(best.tool.kind === 'iron' ? [up('setC'), up('powerW')] : [up('airC'), up('airSpeedMPerS')]),
          [noClip(facts, best), 1] as const,
          ...otherAlloys(facts, method, best).map((lever) => [lever, 1] as const),
        ]
  return smallest(levers, holds(method, best, flows))
}

/** A hotter tip is on for less time and may spare more, halfway or at its end; less heat spares where the joint still wets. */
function toSpare(facts: JobFacts, method: MethodName, best: ToolHeat): Change | null {
  const [heat, strength] = best.tool.kind === 'iron' ? (['setC', 'powerW'] as const) : (['airC', 'airSpeedMPerS'] as const)
  const levers = [
    [towards(facts, best, heat, 'high'), 2],
    [towards(facts, best, heat, 'low'), 2],
    [towards(facts, best, strength, 'high'), 1],
    [longerStub(facts, method, best), 1],
    [nearerClip(facts, method, best), 1],
  ] as const
  return smallest(levers, holds(method, best, spares))
}
