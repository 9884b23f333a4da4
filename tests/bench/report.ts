/** A measured figure with its limit; without a limit it is only reported. */
export interface Figure {
  readonly what: string
  readonly value: number
  readonly unit: string
  readonly atMost?: number
  readonly atLeast?: number
  readonly note?: string
}

export function keeps({ value, atMost, atLeast }: Figure): boolean {
  return (atMost === undefined || value <= atMost) && (atLeast === undefined || value >= atLeast)
}

const printed = (value: number): string => (value >= 1000 ? Math.round(value).toString() : value.toPrecision(3))

function limitOf({ atMost, atLeast }: Figure): string {
  if (atMost !== undefined) return `at most ${printed(atMost)}`
  return atLeast !== undefined ? `at least ${printed(atLeast)}` : ''
}

/** A table for the terminal, with a mark for each limit kept or missed. */
export function table(title: string, figures: readonly Figure[]): string {
  const rows = figures.map((figure) => [
    figure.what,
    `${printed(figure.value)} ${figure.unit}`.trim(),
    limitOf(figure),
    limitOf(figure) === '' ? '' : keeps(figure) ? 'kept' : 'MISSED',
    figure.note ?? '',
  ])
  const widths = [0, 1, 2, 3].map((column) => Math.max(...rows.map((row) => (row[column] as string).length)))
  const lines = rows.map((row) => `  ${row.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')}`.trimEnd())
  return `${title}\n${lines.join('\n')}\n`
}
