import {
  type CauseScore,
  everyCause,
  faultsFoundAtPlace,
  healthyCalledFaulty,
  meanOf,
  scoreCause,
} from '../../packages/planner/src/diagnosis/experiments.sample.ts'
import { judgedJoints } from '../../packages/planner/src/proof/joints.sample.ts'
import type { PartResult } from './results.ts'

const circuits = 300
const perCause = 60
const joints = 500
/** Probability that a technician takes each reading of a round: few, half, most. */
const chances = [0.35, 0.6, 0.9]

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`

function table(chance: number, scores: readonly CauseScore[]): string {
  const rows = scores.map(
    ({ cause, covered, size, coveredAfter, sizeAfter }) =>
      `| ${cause} | ${percent(covered)} | ${size.toFixed(1)} | ${percent(coveredAfter)} | ${sizeAfter.toFixed(1)} |`,
  )
  return [
    `Readings taken with a chance of ${chance}:`,
    '',
    '| cause | leads | causes | leads after the next reading | causes |',
    '| --- | --- | --- | --- | --- |',
    ...rows,
  ].join('\n')
}

/** Diagnosis and ranking of causes against an independent nodal solver. */
export async function planner(seed: number, say: (text: string) => void): Promise<PartResult> {
  say('healthy circuits')
  const faulty = healthyCalledFaulty(circuits, seed)
  say('series faults')
  const found = faultsFoundAtPlace(circuits, seed + 1)
  say('joints')
  const judged = judgedJoints(joints, seed + 2)
  const rounds = chances.map((chance) => {
    const scores = everyCause.map((cause, index) => {
      say(`${cause}, readings with a chance of ${chance}`)
      return scoreCause(cause, perCause, chance, seed + 100 + index)
    })
    return { chance, scores }
  })
  const all = rounds.flatMap(({ scores }) => scores)
  const covered = meanOf(all.map((score) => score.covered))
  const size = meanOf(all.map((score) => score.size))
  return {
    ok: faulty === 0 && found >= 0.95 && covered >= 0.95 && size <= 4 && judged.badProven <= 0.01 * judged.bad && judged.blindProven === 0,
    summary: `${faulty} of ${circuits} healthy circuits called faulty; ${percent(found)} of series faults proven at their place; the true cause leads in ${percent(covered)} with ${size.toFixed(1)} causes; ${judged.badProven} of ${judged.bad} bad joints proven, ${judged.goodProven} of ${judged.good} good ones`,
    details: rounds.map(({ chance, scores }) => table(chance, scores)).join('\n\n'),
  }
}
