/** A list that can't be read at all; each line says what is wrong and what is allowed. */
export class ListError extends Error {
  override readonly name = 'ListError'
  readonly lines: readonly string[]

  constructor(...lines: readonly string[]) {
    super(lines.join('\n'))
    this.lines = lines
  }
}
