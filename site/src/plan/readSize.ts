import { JobError, parseRepairJob } from '@strandwise/planner/job'
import { formatQuantity, parseQuantity, QuantityError } from '@strandwise/working/quantity'
import type { Refusal } from './readTyped.ts'
import type { UnitSystem } from './units.ts'

/** A wire's size as the job holds it: a printed size, or an area. */
export type ReadSize = { readonly size: string } | { readonly areaMm2: number }

export const isSizeRefusal = (outcome: ReadSize | Refusal): outcome is Refusal => 'allowed' in outcome

const examples = '“18 AWG”, “2/0”, “1.5” or “1.5 mm²”, “7/0.3 mm”, “19 x 32 AWG”'
/** Whole numbers that are both an area in mm² and an AWG size. */
const bothSystems = new Set([1, 2, 4, 6, 10, 16])
const smallestCable = 25
const largestGauge = 40
const largestMm2 = 300

function bareNumber(text: string, system: UnitSystem): ReadSize | Refusal {
  const value = Number(text.replace(',', '.'))
  if (/[.,]/.test(text)) return { areaMm2: value }
  if (system === 'inch') return { size: `${text} AWG` }
  if (bothSystems.has(value))
    return { read: `“${text}”: ${text} mm² or ${text} AWG`, allowed: 'a size with its unit, where both have that number', example: `${text} mm²` }
  if (value >= smallestCable && value <= largestMm2 && value % 5 === 0) return { size: `${text} mm²` }
  return value <= largestGauge ? { size: `${text} AWG` } : { read: `“${text}”`, allowed: examples, example: '18 AWG' }
}

/** A complete job but for its wire's size, so that the size can be checked alone. */
const restOfJob = {
  version: 1,
  circuit: { kind: 'lighting', supplyV: 12 },
  load: { currentA: 0.1 },
  damage: { kind: 'broken', fromTerminationMm: 0 },
} as const

function refusalOf(found: ReadSize, standard: string, text: string): Refusal | null {
  try {
    parseRepairJob({ ...restOfJob, wire: { ...found, ...(standard === '' ? {} : { standard }), insulation: 'PVC', outLengthM: 1 } })
    return null
  } catch (error) {
    if (!(error instanceof JobError)) throw error
    const issue = error.issues.find(({ path }) => path === 'wire.size' || path === 'wire.areaMm2')
    if (issue === undefined) return null
    const allowed = 'areaMm2' in found ? `${issue.allowed}; or ${examples}` : issue.allowed.replaceAll('"', '')
    return { read: `“${text.slice(0, 40)}”`, allowed, example: '18 AWG' }
  }
}

/** Parses kind, size and area of a wire from one answer; unknown sizes are refused at once. A bare decimal is an area in mm²; a bare whole number is whichever size exists, and ambiguous if both do. */
export function readSize(text: string, standard: string, system: UnitSystem): ReadSize | Refusal {
  const typed = text.trim()
  const bare = /^\d{1,4}(?:[.,]\d{1,4})?$/.test(typed)
  const found = bare && (standard === '' || /[.,]/.test(typed)) ? bareNumber(typed, system) : { size: typed }
  return isSizeRefusal(found) ? found : (refusalOf(found, standard, typed) ?? found)
}

/** Text of this area, such that it reads back. */
export const areaText = (areaMm2: unknown): string => (typeof areaMm2 === 'number' && Number.isInteger(areaMm2) ? `${areaMm2}.0` : String(areaMm2))

/** Area of a size, for the line beneath the field. */
export function areaHeard(found: ReadSize, standard: string, system: UnitSystem): string {
  if ('areaMm2' in found) return formatQuantity(found.areaMm2, 'areaMm2', { system })
  if (standard === 'SAE J1128') return ''
  const unit = standard === '' || standard === 'AWG' ? 'AWG' : 'mm²'
  for (const text of [found.size, `${found.size} ${unit}`]) {
    try {
      return formatQuantity(parseQuantity(text, 'areaMm2'), 'areaMm2', { system })
    } catch (error) {
      if (!(error instanceof QuantityError)) throw error
    }
  }
  return ''
}
