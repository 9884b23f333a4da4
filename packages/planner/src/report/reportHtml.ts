import { type Block, plainText } from './blocks.ts'
import type { RepairPlan } from './repairPlan.ts'
import { type ReportOptions, reportBlocks } from './reportBlocks.ts'

const entities: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' }
const inHtml = (text: string): string => plainText(text).replace(/[&<>"']/g, (mark) => entities[mark] ?? '')

const style =
  'body{font:16px/1.5 system-ui,sans-serif;max-width:70ch;margin:2rem auto;padding:0 1rem;color:#111;background:#fff}' +
  'h1{font-size:1.5rem}h2{font-size:1.15rem;margin-top:1.5rem}h3{font-size:1rem}' +
  'table{border-collapse:collapse;width:100%}th,td{text-align:left;vertical-align:top;border-bottom:1px solid #bbb;padding:.25rem .5rem .25rem 0}' +
  'li{margin:.25rem 0}.check{display:block;color:#444}@media print{body{margin:0;font-size:11pt}li,tr{break-inside:avoid}}'

const cells = (tag: 'th' | 'td', row: readonly string[]): string => `<tr>${row.map((cell) => `<${tag}>${inHtml(cell)}</${tag}>`).join('')}</tr>`

function html(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `<h${block.level}>${inHtml(block.text)}</h${block.level}>`
    case 'text':
      return `<p>${inHtml(block.text)}</p>`
    case 'list':
      return `<ul>${block.items.map((item) => `<li>${inHtml(item)}</li>`).join('')}</ul>`
    case 'steps':
      return `<ol>${block.items.map(({ text, check }) => `<li>${inHtml(text)} <span class="check">Right when: ${inHtml(check)}</span></li>`).join('')}</ol>`
    case 'table':
      return `<table><thead>${cells('th', block.head)}</thead><tbody>${block.rows.map((row) => cells('td', row)).join('')}</tbody></table>`
  }
}

/**
 * The plan as one self-contained HTML page, to read, print or keep. Names and titles are escaped.
 *
 * @throws nothing
 * @example
 * reportHtml(planRepair(trailerTailLamp)) // "<!doctype html>…"
 */
export function reportHtml(plan: RepairPlan, options: ReportOptions = {}): string {
  const title = inHtml(plan.title ?? 'Repair plan')
  const head = `<meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${title}</title><style>${style}</style>`
  return `<!doctype html>\n<html lang="en"><head>${head}</head><body>\n${reportBlocks(plan, options).map(html).join('\n')}\n</body></html>\n`
}
