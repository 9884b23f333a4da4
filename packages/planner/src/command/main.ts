#!/usr/bin/env node
import { argv, stderr, stdin, stdout } from 'node:process'
import { internalError, isWriteError, run } from './run.ts'
import { exitCodes } from './streams.ts'

const args = argv.slice(2)
/** Set where standard output failed: it outweighs the answer that nobody could read. */
let failed: number | undefined

/** A reader that has gone, as in "| head", is no error; a full disk is. */
function unwritable(error: NodeJS.ErrnoException): void {
  if (error.code === 'EPIPE') return
  failed = exitCodes.unusable
  stderr.write(`standard output can't be written (${error.code})\n`)
}

stdout.on('error', unwritable)
// Nobody is left to tell.
stderr.on('error', () => undefined)
process.on('uncaughtException', (error) => {
  stderr.write(`${internalError(error, args)}\n`)
  failed = exitCodes.internal
  process.exitCode = failed
})

let code: number = exitCodes.sound
try {
  code = await run(args, { stdin, stdout, stderr })
} catch (error) {
  if (!isWriteError(error)) throw error
  unwritable(error)
}
process.exitCode = failed ?? code
process.on('exit', () => {
  process.exitCode = failed ?? code
})
