import { type RecordTable, recordPage } from './recordLines.ts'

/** Outside text escaped for a Markdown line: no tag, link, heading or cell. */
const plain = (text: string): string =>
  String(text)
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, ' ')
    .replace(/[\\`*_{}[\]<>()#+!|~&]/g, (character) => `\\${character}`)
    .replace(/^(\s*)([-=])/, '$1\\$2')
    .replace(/^(\s*\d+)\.(?=\s|$)/, '$1\\.')

function table({ title, head, rows }: RecordTable): string {
  const line = (cells: readonly string[]) => `| ${cells.map(plain).join(' | ')} |`
  return [`## ${title}`, '', line(head), `| ${head.map(() => '---').join(' | ')} |`, ...rows.map(line)].join('\n')
}

/**
 * The record of a repair as found and as left, in Markdown.
 *
 * @throws JobError where the record is not one that verifyRepair wrote
 * @example
 * recordMarkdown(verifyRepair(bilgePumpFeed, { date: '2026-05-04', readings: [] }).record) // "# Repair record: Bilge pump feed…"
 */
export function recordMarkdown(record: Readonly<Record<string, unknown>>): string {
  const page = recordPage(record)
  const about = page.about.filter(([, value]) => value !== '').map(([name, value]) => `- ${plain(name)}: ${plain(value)}`)
  const lines = [
    `# Repair record: ${plain(page.title)}`,
    `**${plain(page.says)}**`,
    about.join('\n'),
    ...[...page.readings, ...page.tables].map(table),
    ['## Look again', '', ...page.lookAgain.map((line) => `- ${plain(line)}`)].join('\n'),
    ['## Rules and tables', '', ...page.sources.map((line) => `- ${plain(line)}`)].join('\n'),
    'Made and read by: ____________________ Date: ____________ Signature: ____________________',
  ]
  return `${lines.join('\n\n')}\n`
}
