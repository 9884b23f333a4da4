import type { SleeveMaterialName } from '@strandwise/core/materials'
import { chooseSleeve, cutLengthMm, fitSleeve, type Sleeve, type SleeveChoice } from '@strandwise/core/sleeve'
import { sleeveSide } from '../../../drawings/sleeveSide.ts'
import {
  type AnswerPart,
  type AskedWorking,
  type InputProblem,
  type Inputs,
  numberOf,
  type Outcome,
  type QuestionModel,
  wordOf,
} from '../../question/question.ts'
import { type Write, writer } from '../../question/write.ts'
import type { SleeveFacts } from './facts.ts'

const figures = 3
const percent = (share: number): string => `${Math.round(100 * share)} %`

interface Joint {
  readonly largestMm: number
  readonly smallestMm: number
  readonly outsideLimitMm: number | undefined
  readonly jointMm: number
  readonly coverMm: number
}

type Named = Sleeve & { readonly name: string; readonly fromMemory?: boolean }

function optional(inputs: Inputs, id: string): number | undefined {
  const value = inputs[id]
  return typeof value === 'number' ? value : undefined
}

/** The measured tube, if all three sizes are given; a partial input is a problem. */
function ownSleeve(inputs: Inputs, facts: SleeveFacts): Named | InputProblem | null {
  const sizes = {
    'own-supplied': optional(inputs, 'own-supplied'),
    'own-recovered': optional(inputs, 'own-recovered'),
    'own-wall': optional(inputs, 'own-wall'),
  }
  const given = Object.values(sizes).filter((size) => size !== undefined).length
  if (given === 0) return null
  const missing = Object.entries(sizes).find(([, size]) => size === undefined)?.[0]
  if (missing !== undefined) return { field: missing, read: 'nothing', allowed: 'all three sizes of your own sleeve, or none', example: '6 mm' }
  const { 'own-supplied': suppliedInsideMm = 0, 'own-recovered': recoveredInsideMm = 0, 'own-wall': recoveredWallMm = 0 } = sizes
  if (recoveredInsideMm >= suppliedInsideMm)
    return {
      field: 'own-recovered',
      read: `${recoveredInsideMm} mm`,
      allowed: `below its inside as supplied, ${suppliedInsideMm} mm`,
      example: `${suppliedInsideMm / 2} mm`,
    }
  const material = wordOf(inputs, 'own-material') as SleeveMaterialName
  const longitudinalChange = facts.changes[material] ?? { low: 0, high: 0 }
  return { name: 'your own', material, suppliedInsideMm, recoveredInsideMm, recoveredWallMm, longitudinalChange }
}

/** Why a sleeve does not fit, and by how much. */
function against(choice: SleeveChoice, write: Write): string {
  const reasons = choice.reasons.map(({ code, value = 0, limit = 0 }) => {
    if (code === 'does-not-slide-over') return `${write(value, 'lengthMm')} inside does not go over ${write(limit, 'lengthMm')}`
    if (code === 'does-not-grip') return `shrinks to ${write(value, 'lengthMm')} and stays loose on ${write(limit, 'lengthMm')}`
    return `is ${write(value, 'lengthMm')} outside after shrinking where ${write(limit, 'lengthMm')} is allowed`
  })
  return reasons.join('; ')
}

function margins(sleeve: Sleeve, joint: Joint, facts: SleeveFacts, write: Write): readonly string[] {
  const { largestMm, smallestMm } = joint
  const notes: string[] = []
  if (sleeve.recoveredInsideMm > facts.recoveredShare * smallestMm)
    notes.push(
      `It grips, and hardly: it would shrink to ${percent(sleeve.recoveredInsideMm / smallestMm)} of the smallest diameter, and a sleeve that must seal to at most ${percent(facts.recoveredShare)}. A step smaller, or one with a higher ratio, holds better.`,
    )
  if (sleeve.suppliedInsideMm < facts.suppliedRatio * largestMm)
    notes.push(
      `It goes on with only ${percent(sleeve.suppliedInsideMm / largestMm - 1)} to spare where ${percent(facts.suppliedRatio - 1)} is usual: try it over the joint before you solder.`,
    )
  if (joint.coverMm < facts.coverDiameters * smallestMm)
    notes.push(
      `Your cover past the joint, ${write(joint.coverMm, 'lengthMm')}, is below ${facts.coverDiameters} wire diameters, ${write(facts.coverDiameters * smallestMm, 'lengthMm')}.`,
    )
  return notes
}

const cut = (sleeve: Sleeve, joint: Joint): number =>
  cutLengthMm({ jointMm: joint.jointMm, overlapEachSideMm: joint.coverMm, longitudinalChange: sleeve.longitudinalChange })

function taken(choice: SleeveChoice, sleeve: Named, joint: Joint, facts: SleeveFacts, write: Write): AnswerPart {
  const warned = margins(sleeve, joint, facts, write)
  const lined = sleeve.material === 'polyolefin-adhesive-lined'
  const { marginSupplied } = fitSleeve({ ...sleeve, largestMm: joint.largestMm, smallestMm: joint.smallestMm })
  return {
    id: 'sleeve',
    title: 'The sleeve to take',
    verdict: warned.length === 0 ? 'sound' : 'caution',
    sentence: `Take ${sleeve.name}, cut ${write(cut(sleeve, joint), 'lengthMm')} long; shrunk on, it is ${write(choice.outsideMm, 'lengthMm')} outside.`,
    drawing: sleeveSide(
      {
        wireMm: joint.smallestMm,
        jointMm: joint.largestMm,
        jointLengthMm: joint.jointMm,
        coverMm: joint.coverMm,
        outsideMm: choice.outsideMm,
        limitMm: joint.outsideLimitMm ?? null,
      },
      { joint: write(joint.jointMm, 'lengthMm'), cover: write(joint.coverMm, 'lengthMm'), outside: write(choice.outsideMm, 'lengthMm') },
    ),
    values: [
      { name: 'inside as supplied', text: `${write(sleeve.suppliedInsideMm, 'lengthMm')}, ${percent(marginSupplied)} over the largest diameter` },
      {
        name: 'inside after free recovery',
        text: `${write(sleeve.recoveredInsideMm, 'lengthMm')}, ${percent(sleeve.recoveredInsideMm / joint.smallestMm)} of the smallest`,
      },
      { name: 'wall on the thickest place', text: write((choice.outsideMm - joint.largestMm) / 2, 'lengthMm') },
      { name: 'cover after shrinking, each side', text: write(joint.coverMm, 'lengthMm') },
    ],
    notes: [
      ...warned,
      `Cut for the most that it may shorten, ${percent(Math.max(0, -sleeve.longitudinalChange.low))}; it may come out longer.`,
      ...(lined ? [] : ['This one has no adhesive: it covers and does not seal. In the damp take a lined one.']),
      ...(sleeve.fromMemory === true ? ['Its sizes are recalled, not read in a standard: measure yours.'] : []),
    ],
  }
}

function none(choices: readonly SleeveChoice[], joint: Joint, write: Write): AnswerPart {
  const limit = joint.outsideLimitMm === undefined ? '' : ` and is at most ${write(joint.outsideLimitMm, 'lengthMm')} outside after shrinking`
  return {
    id: 'sleeve',
    title: 'The sleeve to take',
    verdict: 'unsound',
    sentence: choices.length === 0 ? 'None: no sleeve is ticked.' : `None of these ${choices.length} fits.`,
    values: [],
    notes: [
      `You need one that goes over ${write(joint.largestMm, 'lengthMm')} and would shrink below ${write(joint.smallestMm, 'lengthMm')}${limit}: a ratio above ${(joint.largestMm / joint.smallestMm).toPrecision(2)} to 1.`,
    ],
  }
}

/** The rest of the stock: other fitting sleeves, then the others with their reasons. */
function others(choices: readonly SleeveChoice[], write: Write): AnswerPart {
  const fitting = choices.filter((choice) => choice.fits).length
  const counted = fitting === 0 ? 'None of the others fits.' : `${fitting} of the other ${choices.length} would fit as well.`
  return {
    id: 'others',
    title: 'The rest of the stock',
    verdict: null,
    sentence: choices.length === 0 ? 'Nothing else is ticked.' : counted,
    values: choices.map((choice) => ({
      name: choice.sleeve.name ?? '',
      text: choice.fits ? `fits, ${write(choice.outsideMm, 'lengthMm')} outside` : against(choice, write),
    })),
    notes: [],
  }
}

function workings(best: SleeveChoice | undefined, joint: Joint): readonly AskedWorking[] {
  if (best === undefined) return []
  const { suppliedInsideMm, recoveredInsideMm, recoveredWallMm, longitudinalChange } = best.sleeve
  const { largestMm, smallestMm, jointMm, coverMm } = joint
  return [
    { title: 'Does it go on and grip?', id: 'fitSleeve', inputs: { suppliedInsideMm, recoveredInsideMm, largestMm, smallestMm } },
    ...(recoveredInsideMm < largestMm
      ? [{ title: 'Wall on the thickest place', id: 'recoveredWallMm', inputs: { recoveredWallMm, recoveredInsideMm, ontoMm: largestMm } }]
      : []),
    { title: 'Length to cut', id: 'cutLengthMm', inputs: { jointMm, overlapEachSideMm: coverMm, longitudinalChange } },
  ]
}

function answer(inputs: Inputs, facts: SleeveFacts): Outcome {
  const write = writer(inputs, figures)
  const joint: Joint = {
    largestMm: numberOf(inputs, 'largest'),
    smallestMm: numberOf(inputs, 'smallest'),
    outsideLimitMm: optional(inputs, 'limit'),
    jointMm: numberOf(inputs, 'joint'),
    coverMm: numberOf(inputs, 'cover'),
  }
  const { largestMm, smallestMm, outsideLimitMm } = joint
  if (smallestMm > largestMm)
    return {
      field: 'smallest',
      read: write(smallestMm, 'lengthMm'),
      allowed: `at most the largest diameter, ${write(largestMm, 'lengthMm')}`,
      example: write(largestMm, 'lengthMm'),
    }
  const own = ownSleeve(inputs, facts)
  if (own !== null && 'field' in own) return own
  const ticked = inputs.stock
  const named = (Array.isArray(ticked) ? (ticked as readonly string[]) : []).flatMap((word): Named | readonly Named[] => facts.stock[word] ?? [])
  const stock = own === null ? named : [...named, own]
  const choices = chooseSleeve({ largestMm, smallestMm, stock, ...(outsideLimitMm === undefined ? {} : { outsideLimitMm }) })
  const [best] = choices
  const fits = best?.fits === true
  const sleeve = stock.find((item) => item === best?.sleeve)
  const first = best !== undefined && fits && sleeve !== undefined ? taken(best, sleeve, joint, facts, write) : none(choices, joint, write)
  return { parts: [first, others(fits ? choices.slice(1) : choices, write)], workings: workings(best, joint) }
}

/** Which sleeve of the stock goes over the joint, grips and stays slim enough. */
export const sleeveFromStock: QuestionModel<SleeveFacts> = { answer }
