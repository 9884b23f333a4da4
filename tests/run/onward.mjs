import { spawn } from 'node:child_process'
import { buildPackages } from './build.mjs'
import { ensureInstalled } from './install.mjs'
import { newNode, root, toolEnvironment } from './place.mjs'
import { step } from './terminal.mjs'

/** Continues in a TypeScript script under the installed Node, with the packages as built. */
export async function onward(script) {
  try {
    await ensureInstalled()
    if (!(await step('packages', buildPackages)).ok) process.exit(1)
    const child = spawn(newNode(), [script, ...process.argv.slice(2)], { cwd: root, env: toolEnvironment(), stdio: 'inherit' })
    child.on('close', (code, signal) => {
      if (signal !== null) process.stderr.write(`ended by ${signal}; what was finished is kept\n`)
      process.exit(code ?? 1)
    })
  } catch (error) {
    process.stderr.write(`${error.message.trimEnd()}\n`)
    process.exit(1)
  }
}
