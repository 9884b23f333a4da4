import { explain, formulas } from '@strandwise/working/formulas'
import { workingMarkup } from '../learn/workingMarkup.ts'
import { link } from '../lib/link.ts'
import { html, type Markup } from '../lib/markup.ts'

type Inputs = Readonly<Record<string, unknown>>

/** Plain numbers and words of the inputs, by path. */
function flat(inputs: unknown, path = ''): readonly (readonly [string, string])[] {
  if (typeof inputs === 'number' || typeof inputs === 'string' || typeof inputs === 'boolean')
    return [[path, typeof inputs === 'number' ? String(Number(inputs.toPrecision(5))) : String(inputs)]]
  if (typeof inputs !== 'object' || inputs === null) return []
  return Object.entries(inputs).flatMap(([key, value]) => flat(value, path === '' ? key : `${path}.${key}`))
}

/** A verdict by several models has no single formula: shows its inputs, and where it is described. */
function asked(id: string, inputs: Inputs): Markup {
  return html`<p>Judged by several models in one call: <a href="${link(`handbook/${id}/`)}">${id}</a>. It was asked with:</p>
    <dl class="values">${flat(inputs).map(([path, value]) => html`<dt>${path}</dt><dd>${value}</dd>`)}</dl>`
}

/** A formula with its numbers and source as markup, loaded when a working is opened. */
export const workingOf = (id: string, inputs: Inputs): string => (Object.hasOwn(formulas, id) ? workingMarkup(explain(id, inputs)) : asked(id, inputs).text)
