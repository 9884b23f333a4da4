import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build, hasSite } from './build.mjs'
import { ensureInstalled } from './install.mjs'
import { newNode, root, toolEnvironment } from './place.mjs'
import { serve } from './serve.mjs'
import { run } from './terminal.mjs'

const planner = join(root, 'packages', 'planner', 'dist')

/** The first demo job goes through the command, as a person would run it. */
async function printDemoPlan() {
  const entry = JSON.stringify(new URL(`file://${join(planner, 'index.js')}`).href)
  const script = `const { demoJobs } = await import(${entry}); process.stdout.write(JSON.stringify(Object.values(demoJobs)[0]))`
  const job = await run(newNode(), ['--input-type=module', '--eval', script], { env: toolEnvironment() })
  if (job.code !== 0) throw new Error(job.output)
  const folder = mkdtempSync(join(tmpdir(), 'strandwise-'))
  try {
    const file = join(folder, 'demo.json')
    writeFileSync(file, job.output)
    const plan = await run(newNode(), [join(planner, 'command', 'main.js'), 'plan', file], { env: toolEnvironment() })
    // 0 nothing unsound, 1 something unsound or refused: both are plans.
    if (plan.code > 1) throw new Error(plan.output)
    process.stdout.write(`\n${plan.output.trimEnd()}\n\n`)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** Ends with the address, and stays until it is interrupted. */
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
