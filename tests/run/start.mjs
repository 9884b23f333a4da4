import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { build, hasSite } from './build.mjs'
import { ensureInstalled } from './install.mjs'
import { newNode, root, toolEnvironment } from './place.mjs'
import { serve } from './serve.mjs'
import { run } from './terminal.mjs'

/** Runs the first demo job through the command, as a person would. */
async function printDemoPlan() {
  const names = await run(
    newNode(),
    ['--input-type=module', '--eval', `import { demoJobs } from '@strandwise/planner'; process.stdout.write(Object.keys(demoJobs)[0])`],
    {
      cwd: root,
      env: toolEnvironment(),
    },
  )
  if (names.code !== 0) throw new Error(names.output)
  const plan = await run(newNode(), [join(root, 'packages', 'planner', 'dist', 'command', 'main.js'), 'plan', '--demo', names.output], {
    cwd: root,
    env: toolEnvironment(),
  })
  // Exit codes 0 (nothing unsound) and 1 (something unsound or refused) both come with a plan.
  if (plan.code > 1) throw new Error(plan.output)
  process.stdout.write(`\n${plan.output.trimEnd()}\n\n`)
}

/** Prints the address, and serves until interrupted. */
async function serveSite() {
  const folder = join(root, 'site', 'dist')
  if (!hasSite() || !existsSync(folder)) throw new Error('there is no built site to serve')
  const { address, close } = await serve(folder)
  const end = async () => {
    await close()
    process.exit(0)
  }
  process.once('SIGINT', end)
  process.once('SIGTERM', end)
  process.stdout.write(`Ctrl-C ends it.\n${address}\n`)
}

try {
  await ensureInstalled()
  if (!(await build())) process.exit(1)
  await printDemoPlan()
  await serveSite()
} catch (error) {
  process.stderr.write(`${error.message.trimEnd()}\n`)
  process.exit(1)
}
