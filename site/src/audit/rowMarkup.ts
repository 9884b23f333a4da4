import type { AuditResult } from '@strandwise/planner/audit'
import { html, type Markup } from '../lib/markup.ts'
import { kindOf } from './judgedList.ts'

const fixed = (value: number | null, digits: number): string => (value === null ? '' : value.toFixed(digits).replace('-', '−'))

/** Most characters of an unusable value that are shown. */
const longestValue = 60

function valueWords(value: unknown): string {
  if (value === undefined) return 'nothing'
  const text = typeof value === 'string' ? value : JSON.stringify(value)
  return `“${text.length > longestValue ? `${text.slice(0, longestValue)}…` : text}”`
}

function whyOf(result: AuditResult): string {
  if (!('error' in result)) return result.reasons.join('; ')
  const { field, value, allowed } = result.error
  return `${field === '' ? '' : `${field}: `}${valueWords(value)}; allowed: ${allowed}`
}

/** One row of the table. */
export function rowMarkup(result: AuditResult): Markup {
  const kind = kindOf(result)
  const judged = 'error' in result ? null : result
  return html`<tr data-kind="${kind}">
    <td class="number">${result.line}</td>
    <th scope="row">${judged?.name ?? '—'}</th>
    <td class="kind"><span class="mark-of" data-kind="${kind}"></span>${kind}</td>
    <td class="why">${whyOf(result)}</td>
    <td class="number">${fixed(judged?.conductorHighC ?? null, 1)}</td>
    <td class="number">${fixed(judged?.allowedA ?? null, 1)}</td>
    <td class="number">${fixed(judged?.dropV ?? null, 2)}</td>
    <td class="number">${judged === null || judged.dropShare === null ? '' : fixed(judged.dropShare * 100, 1)}</td>
    <td>${judged?.fuseVerdict ?? ''}</td>
  </tr>`
}
