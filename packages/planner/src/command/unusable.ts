/** Input that cannot be used; each line says what is wrong and what is allowed. */
export class Unusable extends Error {
  override readonly name = 'Unusable'
  readonly lines: readonly string[]

  constructor(...lines: readonly string[]) {
    super(lines.join('\n'))
    this.lines = lines
  }
}

/** The same lines, prefixed with the input's name. */
export const named = (name: string, error: Unusable): Unusable => new Unusable(...error.lines.map((line) => `${name}: ${line}`))
