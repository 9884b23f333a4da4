import { run } from './run.ts'

/** Runs the command with these arguments and standard input; returns exit code and output. */
export async function call(args: readonly string[], input: string | Uint8Array = '') {
  const out: string[] = []
  const err: string[] = []
  async function* standardInput() {
    yield input
  }
  const code = await run(args, { stdin: standardInput(), stdout: { write: (text) => out.push(text) }, stderr: { write: (text) => err.push(text) } })
  return { code, out: out.join(''), err: err.join('') }
}
