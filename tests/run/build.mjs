import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { pathToFileURL } from 'node:url'
import { ensureInstalled } from './install.mjs'
import { bin, newNode, root, toolEnvironment } from './place.mjs'
import { run, step } from './terminal.mjs'

const packages = ['core', 'working', 'planner']
const siteFolder = join(root, 'site')
const cacheFolder = join(root, 'node_modules', '.cache')
/** Output folders of a build, never its input. */
const made = new Set(['dist', '.astro', 'node_modules'])

export const hasSite = () => ['astro.config.mjs', 'astro.config.ts'].some((name) => existsSync(join(siteFolder, name)))

export const tool = (name) => realpathSync(join(bin, name))

/** Path of TypeScript 7, installed beside 6 under an alias, in whichever folder the installer chose. */
export const typescript7 = () =>
  ['node_modules', 'tests/node_modules'].map((folder) => join(root, folder, 'typescript7', 'bin', 'tsc')).find((path) => existsSync(path))

function filesIn(folder, skip = made) {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) return skip.has(entry.name) ? [] : filesIn(path, skip)
    return [path]
  })
}

/** Compiler output of a source. */
const madeFrom = /\.(d\.ts|js)(\.map)?$/

/** Removes output of deleted sources, which would still resolve as imports. */
function removeLeftovers(name) {
  const dist = join(root, 'packages', name, 'dist')
  if (!existsSync(dist)) return
  for (const path of filesIn(dist)) {
    const source = join(root, 'packages', name, 'src', relative(dist, path))
    if (madeFrom.test(path) && !existsSync(source.replace(madeFrom, '.ts'))) rmSync(path)
  }
}

export async function buildPackages() {
  packages.forEach(removeLeftovers)
  const { code, output } = await run(newNode(), [tool('tsc'), '-b'], { cwd: root, env: toolEnvironment() })
  if (code !== 0) return { ok: false, output }
  // What editors show of an input is made from the tags of its function.
  const lines = await run(newNode(), [join(root, 'tests', 'docs', 'writeParamLines.ts')], { cwd: root, env: toolEnvironment() })
  return { ok: lines.code === 0, output: output + lines.output }
}

/** Hash of the site's inputs: its files, the built packages, published figures, the reader of docstrings, tool versions. */
function siteInputs() {
  const files = [
    ...filesIn(siteFolder),
    ...packages.flatMap((name) => filesIn(join(root, 'packages', name, 'dist'))),
    ...filesIn(join(root, 'references')),
    ...filesIn(join(root, 'tests', 'docs')),
    join(root, 'package-lock.json'),
  ]
  const hash = createHash('sha256')
  for (const path of files.filter((file) => !file.endsWith('.tsbuildinfo')).sort())
    hash.update(relative(root, path)).update('\0').update(readFileSync(path)).update('\0')
  return hash.digest('hex')
}

/** Where the site for a base address is built: site/dist for "/", else below a folder of the cache that a server may show. */
const siteOutput = (base) => (base === '/' ? join(siteFolder, 'dist') : join(cacheFolder, 'strandwise-below', base))
/** The folder to serve so that the site of a base address stands below it. */
export const servedFolder = (base) => (base === '/' ? siteOutput(base) : join(cacheFolder, 'strandwise-below'))

/** Builds the site for a base address, unless its inputs are those of the last build. */
export async function buildSite(base = '/') {
  const wanted = siteInputs()
  const output = siteOutput(base)
  const mark = join(cacheFolder, `strandwise-site${base.replaceAll('/', '-')}`)
  if (existsSync(join(output, 'index.html')) && existsSync(mark) && readFileSync(mark, 'utf8') === wanted) return { ok: true, output: '', note: 'up to date' }
  rmSync(mark, { force: true })
  // Vitest's own BASE_URL and mode would leak into the build that one of its tests asks for.
  const { BASE_URL: _base, NODE_ENV: _env, MODE: _mode, DEV: _dev, PROD: _prod, SSR: _ssr, ...env } = toolEnvironment({ STRANDWISE_BASE: base })
  const built = await run(newNode(), [tool('astro'), 'build', '--outDir', output], { cwd: siteFolder, env })
  if (built.code === 0) {
    mkdirSync(cacheFolder, { recursive: true })
    writeFileSync(mark, wanted)
  }
  return { ok: built.code === 0, output: built.output }
}

/** Builds the packages, then the site; false if one failed. */
export async function build() {
  if (!(await step('packages', buildPackages)).ok) return false
  return hasSite() ? (await step('site', () => buildSite())).ok : true
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  await ensureInstalled()
  process.exitCode = (await build()) ? 0 : 1
}
