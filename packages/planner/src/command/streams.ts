/** An output stream; a real one reports back-pressure and whether it is a terminal. */
interface Out {
  write(text: string): unknown
  once?(event: 'drain' | 'close', listener: () => void): unknown
  off?(event: 'drain' | 'close', listener: () => void): unknown
  readonly destroyed?: boolean
  readonly isTTY?: boolean
}

/** Streams of the command. */
export interface Streams {
  readonly stdin: AsyncIterable<Uint8Array | string>
  readonly stdout: Out
  readonly stderr: Out
}

/** sound: nothing unsound; unsound: something unsound or refused; unusable: bad input or output; internal: an error of the program. */
export const exitCodes = { sound: 0, unsound: 1, unusable: 2, internal: 3 } as const

/** Values of the options. */
export interface Options {
  readonly format?: string
  readonly strict?: boolean
  readonly all?: boolean
  readonly demo?: string
  readonly workers?: string
  readonly 'no-lines'?: boolean
}

/** One command: its options and names, and its action, which returns an exit code. */
export interface Command {
  readonly options: readonly (keyof Options)[]
  /** Most names after the command. */
  readonly mostNames: number
  readonly run: (names: readonly string[], options: Options, streams: Streams) => number | Promise<number>
}
