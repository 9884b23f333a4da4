import { spawn } from 'node:child_process'
import { buildPackages } from './build.mjs'
import { ensureInstalled } from './install.mjs'
import { newNode, root, toolEnvironment } from './place.mjs'
import { step } from './terminal.mjs'

// Measured on what a user installs: the built packages.
try {
  await ensureInstalled()
  if (!(await step('packages', buildPackages)).ok) process.exit(1)
  const child = spawn(newNode(), ['tests/bench/main.ts', ...process.argv.slice(2)], { cwd: root, env: toolEnvironment(), stdio: 'inherit' })
  child.on('close', (code) => process.exit(code ?? 1))
} catch (error) {
  process.stderr.write(`${error.message.trimEnd()}\n`)
  process.exit(1)
}
