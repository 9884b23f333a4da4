#!/usr/bin/env node
import { argv, stderr, stdin, stdout } from 'node:process'
import { internalError, isWriteError, run } from './run.ts'
import { exitCodes } from './streams.ts'

const args = argv.slice(2)
/** Exit code after standard output failed: it replaces the command's own. */
let failed: number | undefined

/** A closed pipe, as after "| head", is no error; a full disk is. */
function unwritable(error: NodeJS.ErrnoException): void {
  if (error.code === 'EPIPE') return
  failed = exitCodes.unusable
  stderr.write(`standard output can't be written (${error.code})\n`)
}

stdout.on('error', unwritable)
// Errors of standard error cannot be reported anywhere.
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
