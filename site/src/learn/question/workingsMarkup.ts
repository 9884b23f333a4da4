import { explain } from '@strandwise/working/formulas'
import { escapeText } from '../../drawings/svg.ts'
import { workingMarkup } from '../workingMarkup.ts'
import type { AskedWorking } from './question.ts'

/** The working behind an answer; on the page it is loaded when opened. */
export function workingsMarkup(workings: readonly AskedWorking[]): string {
  return workings.map((item) => `<h3>${escapeText(item.title)}</h3>${workingMarkup(explain(item.id, item.inputs))}`).join('')
}
