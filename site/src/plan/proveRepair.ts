import { JobError, type RepairJob } from '@strandwise/planner/job'
import { type FoundReadings, recordHtml, verifyRepair } from '@strandwise/planner/proof'
import { planInParts, valueText } from '@strandwise/planner/report'
import { parseQuantity, QuantityError, type QuantityKind } from '@strandwise/working/quantity'
import { html, type Markup } from '../lib/markup.ts'
import { proofFields, proofTexts } from './proofFields.ts'

/** Texts of the proof form by field name. */
export type FoundTexts = Readonly<Record<string, string>>

export interface Proved {
  readonly markup: string
  /** The record as found and as left, one page; null if nothing could be judged. */
  readonly record: string | null
}

interface Ends {
  readonly low: number
  readonly high: number
}

const kinds: Readonly<Record<string, QuantityKind>> = { mV: 'voltageV', mm: 'lengthMm', A: 'currentA', N: 'forceN' }
const fields = proofFields.flatMap((group) => group.fields)

/** One unit of the last digit typed: 0.1 of "2.1 mV". */
function lastDigit(text: string): string {
  const decimals = /\d+[.,](\d+)/.exec(text)?.[1]?.length ?? 0
  return text.replace(/[-+−]?\d+(?:[.,]\d+)?/, (10 ** -decimals).toFixed(decimals))
}

/** A refused answer; its message names the field, the value read and what is allowed. */
class FoundError extends Error {
  override readonly name = 'FoundError'
}

function quantity(texts: FoundTexts, name: string): Ends | null {
  const field = fields.find((one) => one.name === name)
  const typed = (texts[name] ?? '').trim()
  const kind = kinds[field?.unit ?? '']
  if (typed === '' || field === undefined || kind === undefined) return null
  const text = /[a-zµ]/i.test(typed) ? typed : `${typed} ${field.unit}`
  try {
    const value = parseQuantity(text, kind)
    const step = Math.abs(parseQuantity(lastDigit(text), kind))
    return { low: Math.max(0, value - step), high: value + step }
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error
    throw new FoundError(`${field.title}: read “${typed}”, ${error.reason}. For example 2.1 ${field.unit}.`)
  }
}

const middle = (ends: Ends): number => (ends.low + ends.high) / 2

function ratioOf(texts: FoundTexts, joint: 1 | 2): NonNullable<FoundReadings['ratio']> {
  const [jointV, wireV] = [quantity(texts, `joint${joint}V`), quantity(texts, `wire${joint}V`)]
  const length = quantity(texts, 'wireLengthMm')
  if (jointV === null && wireV === null) return []
  if (jointV === null || wireV === null) throw new FoundError('The drop over a joint and the one over its wire belong together: enter both.')
  if (length === null) throw new FoundError('Length of that wire is missing: how far apart the probes stood on the plain wire. For example 25 mm.')
  return [{ joint, jointV, wireV, wireLengthMm: middle(length) }]
}

function foundIn(texts: FoundTexts, method: FoundReadings['method'] | null): FoundReadings {
  const [drop, current, tug, sample] = ['dropV', 'currentA', 'tugN', 'samplePullN'].map((name) => quantity(texts, name))
  const ratio = [...ratioOf(texts, 1), ...ratioOf(texts, 2)]
  const said = proofTexts.map(({ name }) => [name, (texts[name] ?? '').trim()] as const).filter(([, text]) => text !== '')
  const read: FoundReadings['readings'] = drop
    ? [{ kind: 'drop', from: 'joint-in', to: 'joint-out', load: 'on', ...drop, ...(current ? { currentA: middle(current) } : {}) }]
    : []
  return {
    date: texts.date ?? '',
    readings: read,
    ...(ratio.length > 0 ? { ratio } : {}),
    ...(tug ? { tugN: middle(tug) } : {}),
    ...(sample ? { samplePullN: middle(sample) } : {}),
    ...(method ? { method } : {}),
    ...Object.fromEntries(said),
  }
}

const said = { proven: 'Proven.', 'not proven': 'Not proven yet: no reading shows that every joint is good.', failed: 'Failed: make it again.' } as const
const derived = { status: 'derived', source: 'computed' } as const

function checks(proof: ReturnType<typeof verifyRepair>): Markup {
  const shown = (value: number, unit: string, ends: { readonly low?: number; readonly high?: number } = {}) =>
    valueText({ name: '', value, unit, ...ends, provenance: derived })
  return html`<p class="lead">${said[proof.verdict]}</p><ul class="answered">${proof.checks.map(({ id, verdict, low, high, limit, unit }) => {
    const found = low === undefined || high === undefined ? '' : `${shown((low + high) / 2, unit, { low, high })}, `
    const mark = verdict === 'passes' ? 'sound' : verdict === 'fails' ? 'unsound' : 'cannot tell'
    return html`<li data-verdict="${mark}">${id}: ${found}limit ${shown(limit, unit)}; ${verdict}</li>`
  })}</ul>`
}

/** Judges the finished repair by its readings, with the record; unusable answers give a message. */
export function proveRepair(job: RepairJob, texts: FoundTexts): Proved {
  try {
    const proof = verifyRepair(job, foundIn(texts, planInParts(job).plan.decision.method))
    return { markup: checks(proof).text, record: recordHtml(proof.record) }
  } catch (error) {
    if (error instanceof FoundError) return { markup: html`<p class="problem">${error.message}</p>`.text, record: null }
    if (!(error instanceof JobError)) throw error
    const lines = error.issues.map(({ path, allowed, example }) => html`<li>${path.replace(/^found\./, '')}: allowed ${allowed}; for example ${example}</li>`)
    return { markup: html`<div class="problem"><p>These readings can’t be used.</p><ul>${lines}</ul></div>`.text, record: null }
  }
}
