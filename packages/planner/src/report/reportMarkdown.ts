import { type Block, plainText } from './blocks.ts'
import type { RepairPlan } from './repairPlan.ts'
import { type ReportOptions, reportBlocks } from './reportBlocks.ts'

/** Escapes Markdown punctuation, and text that would become a link. */
const inMarkdown = (text: string): string =>
  plainText(text)
    .replace(/[\\`*_[\]<>|#~&]/g, (mark) => `\\${mark}`)
    .replaceAll('://', ':\\/\\/')
    .replace(/\bwww\./gi, (text) => `${text.slice(0, -1)}\\.`)

const row = (cells: readonly string[]): string => `| ${cells.map(inMarkdown).join(' | ')} |`

function lines(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return [`${'#'.repeat(block.level)} ${inMarkdown(block.text)}`, '']
    case 'text':
      return [inMarkdown(block.text), '']
    case 'list':
      return [...block.items.map((item) => `- ${inMarkdown(item)}`), '']
    case 'steps':
      return [...block.items.map(({ text, check }, index) => `${index + 1}. ${inMarkdown(text)}\n   Right when: ${inMarkdown(check)}`), '']
    case 'table':
      return [row(block.head), `|${block.head.map(() => '---').join('|')}|`, ...block.rows.map(row), '']
  }
}

/**
 * The plan as Markdown: card, cautions and steps; everything where asked for. Names and titles are escaped: none becomes a heading, a link or markup.
 *
 * @throws nothing
 * @example
 * reportMarkdown(planRepair(trailerTailLamp)) // "# Tail lamp of a bee-keeper’s trailer…"
 */
export function reportMarkdown(plan: RepairPlan, options: ReportOptions = {}): string {
  return reportBlocks(plan, options).flatMap(lines).join('\n')
}
