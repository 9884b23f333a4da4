import { type Block, plainText } from './blocks.ts'
import type { RepairPlan } from './repairPlan.ts'
import { type ReportOptions, reportBlocks } from './reportBlocks.ts'

const width = 96

/** Wraps a line at spaces, with the rest indented under the first letter. */
function wrapped(text: string, lead: string): readonly string[] {
  const hang = ' '.repeat(lead.length)
  const lines: string[] = []
  let line = lead
  for (const word of plainText(text).split(' ')) {
    if (line.length + word.length + 1 > width && line.trim() !== '' && line !== lead) {
      lines.push(line.trimEnd())
      line = hang
    }
    line += line === lead || line === hang ? word : ` ${word}`
  }
  return [...lines, line.trimEnd()]
}

function tableLines(head: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  const all = [head, ...rows].map((row) => row.map(plainText))
  const widths = head.map((_, column) => (column === head.length - 1 ? 0 : Math.max(...all.map((row) => row[column]?.length ?? 0))))
  return all.flatMap((row) => {
    const lead = row
      .slice(0, -1)
      .map((cell, column) => `${cell.padEnd(widths[column] ?? 0)}  `)
      .join('')
    return wrapped(row.at(-1) ?? '', `  ${lead}`)
  })
}

function lines(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return block.level === 1
        ? [plainText(block.text), '='.repeat(Math.min(width, plainText(block.text).length))]
        : ['', ...wrapped(block.text, ''), ...(block.level === 2 ? ['-'.repeat(8)] : [])]
    case 'text':
      return wrapped(block.text, '')
    case 'list':
      return block.items.flatMap((item) => wrapped(item, '- '))
    case 'steps':
      return block.items.flatMap(({ text, check }, index) => [
        ...wrapped(text, `${String(index + 1).padStart(2)}. `),
        ...wrapped(`Right when: ${check}`, '    '),
      ])
    case 'table':
      return tableLines(block.head, block.rows)
  }
}

/**
 * The plan as plain text: card, cautions and steps; everything where asked for. Control characters in names and titles become spaces.
 *
 * @throws nothing
 * @example
 * reportText(planRepair(trailerTailLamp)) // "Tail lamp of a bee-keeper’s trailer…"
 */
export function reportText(plan: RepairPlan, options: ReportOptions = {}): string {
  return `${reportBlocks(plan, options).flatMap(lines).join('\n')}\n`
}
