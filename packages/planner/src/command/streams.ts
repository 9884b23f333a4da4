/** What the command reads from and writes to. */
export interface Streams {
  readonly stdin: AsyncIterable<Uint8Array | string>
  readonly stdout: { write(text: string): unknown }
  readonly stderr: { write(text: string): unknown }
}

/** Nothing unsound; something unsound or refused; unusable input. */
export const exitCodes = { sound: 0, unsound: 1, unusable: 2 } as const
