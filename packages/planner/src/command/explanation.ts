import type { Explanation } from '@strandwise/working/formulas'

const figure = (value: number): string => String(Number(value.toPrecision(6)))
const quantity = (value: number, unit: string): string => (unit === '1' ? figure(value) : `${figure(value)} ${unit}`)
const sourceOf = ({ source }: Explanation): string => [source.source, source.edition, source.clause].filter((part) => part !== undefined).join(', ')

/** A working as plain text: value, formula with its numbers, meaning of each name, steps, source and validity. */
export function explanationText(shown: Explanation): string {
  const names = shown.symbols.map((symbol) => [symbol.name, quantity(symbol.value, symbol.unit), symbol.meaning] as const)
  const wide = (column: 0 | 1) => Math.max(0, ...names.map((row) => row[column].length))
  const table = names.map(([name, value, meaning]) => `  ${name.padEnd(wide(0))}  ${value.padEnd(wide(1))}  ${meaning}`)
  const steps = shown.steps.map((step) => `  ${step.text}${step.value === undefined ? '' : `: ${quantity(step.value, step.unit ?? '1')}`}`)
  const list = (title: string, lines: readonly string[]) => (lines.length === 0 ? [] : ['', title, ...lines])
  return [
    `${shown.id} = ${quantity(shown.value, shown.unit)}`,
    '',
    shown.plain,
    ...list('Names', table),
    ...list('Steps', steps),
    ...list(
      'Holds where',
      shown.validity.map((line) => `  ${line}`),
    ),
    ...list(
      'Notes',
      shown.notes.map((line) => `  ${line}`),
    ),
    ...list('Source', [`  ${sourceOf(shown)} (${shown.source.status})`]),
    '',
  ].join('\n')
}

const cell = (text: string): string => text.replace(/[|\\]/g, '\\$&')

/** The same as Markdown, formulas in TeX. */
export function explanationMarkdown(shown: Explanation): string {
  const rows = shown.symbols.map(
    (symbol) => `| $${symbol.tex.replaceAll('|', '\\vert ')}$ | ${cell(quantity(symbol.value, symbol.unit))} | ${cell(symbol.meaning)} |`,
  )
  const list = (title: string, lines: readonly string[]) => (lines.length === 0 ? [] : ['', `## ${title}`, '', ...lines.map((line) => `- ${line}`)])
  return [
    `# ${shown.id} = ${quantity(shown.value, shown.unit)}`,
    '',
    `$$${shown.formulaTex}$$`,
    '',
    `$$${shown.substitutedTex}$$`,
    ...(rows.length === 0 ? [] : ['', '| name | value | meaning |', '| --- | --- | --- |', ...rows]),
    ...list(
      'Steps',
      shown.steps.map((step) => `${step.text}: $${step.tex}$`),
    ),
    ...list('Holds where', shown.validity),
    ...list('Notes', shown.notes),
    ...list('Source', [`${sourceOf(shown)} (${shown.source.status})`]),
    '',
  ].join('\n')
}
