/** Input that can't be used, in words for the person who gave it; each line names what, and what is allowed. */
export class Unusable extends Error {
  override readonly name = 'Unusable'
  readonly lines: readonly string[]

  constructor(...lines: readonly string[]) {
    super(lines.join('\n'))
    this.lines = lines
  }
}

/** The same lines, each with the name of the input in front. */
export const named = (name: string, error: Unusable): Unusable => new Unusable(...error.lines.map((line) => `${name}: ${line}`))
