/** A stream to write to; a real one says when it is full, and whether a person looks at it. */
interface Out {
  write(text: string): unknown
  once?(event: 'drain' | 'close', listener: () => void): unknown
  readonly destroyed?: boolean
  readonly isTTY?: boolean
}

/** What the command reads from and writes to. */
export interface Streams {
  readonly stdin: AsyncIterable<Uint8Array | string>
  readonly stdout: Out
  readonly stderr: Out
}

/** Nothing unsound; something unsound or refused; input that can't be used, or output that can't be written; an error of the program's own. */
export const exitCodes = { sound: 0, unsound: 1, unusable: 2, internal: 3 } as const

/** The answers to the options that were given. */
export interface Options {
  readonly format?: string
  readonly strict?: boolean
  readonly all?: boolean
  readonly demo?: string
  readonly workers?: string
  readonly 'no-lines'?: boolean
}

/** One command: the options and names that it takes, and what it does with them. Its exit code comes back. */
export interface Command {
  readonly options: readonly (keyof Options)[]
  /** How many names may follow it. */
  readonly mostNames: number
  readonly run: (names: readonly string[], options: Options, streams: Streams) => number | Promise<number>
}
