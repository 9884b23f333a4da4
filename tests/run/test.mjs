import { buildPackages, buildSite, hasSite, tool, typescript7 } from './build.mjs'
import { ensureChromium } from './chromium.mjs'
import { ensureInstalled } from './install.mjs'
import { ensureParallel } from './parallel.mjs'
import { newNode, root, toolEnvironment } from './place.mjs'
import { run, step } from './terminal.mjs'
import { vitestProject } from './vitest.mjs'

const node = (...args) => run(newNode(), args, { cwd: root, env: toolEnvironment() })
const check = async (...args) => {
  const { code, output } = await node(...args)
  return { ok: code === 0, output }
}
const biome = (command, ...more) => check(tool('biome'), command, '--config-path=tests/format.json', '--max-diagnostics=50', ...more, '.')

/** Runs commands in order, up to the first failure. */
async function inTurn(...commands) {
  for (const command of commands) {
    const result = await command()
    if (!result.ok) return result
  }
  return { ok: true, output: '' }
}

/** Computes each figure of references/, then counts them by source and by function. */
async function references() {
  const tests = await vitestProject('references')
  if (!tests.ok) return tests
  const { code, output } = await node('references/count/main.ts')
  return { ...tests, ok: code === 0, output, appendix: output }
}

const packageProjects = ['core', 'working', 'planner'].map((name) => `packages/${name}`)

/** Found before the steps begin, so that an installation has a line of its own. */
let browser

/** Steps, most interesting first. A step without `passed` counts as one check. */
const steps = [
  ['format', () => biome('format')],
  ['lint', () => biome('lint', '--error-on-warnings')],
  ['types', () => inTurn(buildPackages, () => check(tool('tsc'), '-p', 'tests/tsconfig.json'))],
  ['types 7', () => inTurn(...[...packageProjects, 'tests'].map((project) => () => check(typescript7(), '--noEmit', '-p', project)))],
  ['unit', () => vitestProject('unit')],
  ['references', references],
  ['arrows', () => vitestProject('repository', updateApi ? { STRANDWISE_UPDATE_API: '1' } : {})],
  ['docs', () => vitestProject('docs')],
  ['sizes', () => vitestProject('sizes')],
  ...(hasSite()
    ? [
        [
          'site',
          () =>
            inTurn(
              () => check(tool('astro'), 'check', '--root', 'site'),
              () => buildSite(),
            ),
        ],
        ['browser', async () => vitestProject('browser', { CHROMIUM_PATH: await browser })],
      ]
    : []),
]

/** `npm test -- --update-api` rewrites tests/public-api.md, for review, and runs the step that compares it. */
const updateApi = process.argv.includes('--update-api')

/** `npm test -- unit arrows` runs only those steps. */
function chosen(names) {
  const unknown = names.filter((name) => !steps.some(([known]) => known === name))
  if (unknown.length > 0) throw new Error(`no step is called "${unknown.join('", "')}"; there are: ${steps.map(([name]) => name).join(', ')}`)
  return names.length === 0 ? steps : steps.filter(([name]) => names.includes(name))
}

async function main() {
  const wanted = chosen(updateApi ? ['arrows'] : process.argv.slice(2))
  await ensureInstalled()
  if (wanted.some(([name]) => name === 'browser')) {
    browser = ensureChromium()
    await browser.catch(() => 'the step that needs it says so')
  }
  if (wanted.some(([name]) => name === 'docs')) await ensureParallel()
  let passed = 0
  let failed = 0
  for (const [name, work] of wanted) {
    const result = await step(name, work)
    passed += result.passed ?? (result.ok ? 1 : 0)
    failed += result.ok ? 0 : result.failed || 1
    // Tables of counts are printed only if the step was asked for by name.
    if (result.ok && result.appendix !== undefined && wanted.length < steps.length) process.stdout.write(`\n${result.appendix}\n`)
  }
  process.stdout.write(`${passed} passed, ${failed} failed\n`)
  process.exitCode = failed === 0 ? 0 : 1
}

main().catch((error) => {
  process.stderr.write(`${error.message.trimEnd()}\n`)
  process.stdout.write('0 passed, 1 failed\n')
  process.exitCode = 1
})
