import { execFile } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { publint } from 'publint'
import { formatMessage } from 'publint/utils'
import { root } from '../repository/tree.ts'
import { tool } from '../run/build.mjs'
import { npmEnvironment } from '../run/place.mjs'
import { freshProject, installTools, packages, tools } from './consumerProject.ts'
import { titleOf } from './plainPage.ts'
import type { PartResult } from './results.ts'

const run = promisify(execFile)

interface Finding {
  readonly what: string
  readonly problem: string | undefined
}

const told = (error: unknown): string => {
  const { stdout = '', stderr = '', message = '' } = error as { readonly stdout?: string; readonly stderr?: string; readonly message?: string }
  return `${stdout}${stderr}`.trim() || message
}

async function lint(name: string): Promise<void> {
  const { messages, pkg } = await publint({ pkgDir: `${root}packages/${name}`, strict: true })
  if (messages.length > 0) throw new Error(messages.map((message) => formatMessage(message, pkg)).join('\n'))
}

function expectText(got: string, wanted: RegExp): void {
  if (!wanted.test(got)) throw new Error(`printed ${JSON.stringify(got.slice(0, 300))}, expected ${wanted}`)
}

const pageTitle = /^0\.06\d+ sound$/
const wires = 'name,size,insulation,outLengthM,currentA,supplyV,ambientC\nlamp,18 AWG,PVC,3,2,12,40\n'

/** Each check of the matrix, by what it shows. */
function checks(project: string, toolFolder: string): Readonly<Record<string, () => Promise<unknown>>> {
  const inProject = { cwd: project, env: npmEnvironment() }
  const at = (...path: readonly string[]) => join(toolFolder, 'node_modules', ...path)
  const names = Object.keys(tools)
  const nodes = names.filter((name) => name.startsWith('node-'))
  const compilers = names.filter((name) => name.startsWith('typescript-'))
  const modes = [
    ['nodenext', 'nodenext'],
    ['esnext', 'bundler'],
  ] as const
  const bundlers: Readonly<Record<string, (input: string, output: string, platform: string) => Promise<unknown>>> = {
    esbuild: (input, output, platform) =>
      run(at('.bin', 'esbuild'), [input, '--bundle', '--format=esm', `--platform=${platform}`, `--outfile=${output}`], inProject),
    rolldown: (input, output, platform) =>
      run(process.execPath, [at('rolldown', 'bin', 'cli.mjs'), input, '--format', 'esm', '--platform', platform, '--file', output], inProject),
  }
  return {
    ...Object.fromEntries(packages.map((name) => [`publint, ${name}`, () => lint(name)])),
    ...Object.fromEntries(
      packages.map((name) => [
        `types by attw (ESM only), ${name}`,
        () => run(process.execPath, [tool('attw'), '--pack', `${root}packages/${name}`, '--profile', 'esm-only', '--no-emoji']),
      ]),
    ),
    ...Object.fromEntries(
      nodes.map((name) => [`runs on ${name}`, async () => expectText((await run(at(name, 'bin', 'node'), ['use.js'], inProject)).stdout, /^used$/m)]),
    ),
    ...Object.fromEntries(
      nodes.map((name) => [
        `the command audits on ${name}`,
        async () => {
          writeFileSync(join(project, 'wires.csv'), wires)
          const command = join('node_modules', '@strandwise', 'planner', 'bin', 'strandwise.mjs')
          expectText((await run(at(name, 'bin', 'node'), [command, 'audit', 'wires.csv'], inProject)).stdout, /^2,lamp,sound,/m)
        },
      ]),
    ),
    'npx @strandwise/planner': async () =>
      expectText((await run('npx', ['--no', '@strandwise/planner', '--version'], inProject)).stdout, /^\S*\s*\d+\.\d+\.\d+/),
    'npx strandwise': async () => JSON.parse((await run('npx', ['--no', 'strandwise', 'schema'], inProject)).stdout),
    ...Object.fromEntries(
      compilers.flatMap((name) =>
        modes.map(([module, resolution]) => [
          `compiles with ${name}, ${resolution}, our declarations checked`,
          () => {
            const settings = ['--strict', '--exactOptionalPropertyTypes', '--target', 'es2023', '--lib', 'es2023,dom', '--skipLibCheck', 'false']
            const args = [at(name, 'bin', 'tsc'), '--noEmit', ...settings, '--module', module, '--moduleResolution', resolution, 'use.ts']
            return run(process.execPath, args, inProject)
          },
        ]),
      ),
    ),
    ...Object.fromEntries(
      Object.entries(bundlers).flatMap(([name, bundle]) => [
        [
          `bundled by ${name} for Node, it runs`,
          async () => {
            await bundle('use.js', `out-${name}.mjs`, 'node')
            expectText((await run(process.execPath, [`out-${name}.mjs`], inProject)).stdout, /^used$/m)
          },
        ],
        [
          `bundled by ${name} for a browser, it runs there`,
          async () => {
            await bundle('page.js', `out-page-${name}.js`, 'browser')
            expectText(await titleOf(project, { file: `out-page-${name}.js` }), pageTitle)
          },
        ],
      ]),
    ),
    'a plain page with modules and an import map': async () => expectText(await titleOf(project, 'modules as they are'), pageTitle),
  }
}

/** The packages as consumers see them: linted, installed from their tarballs, run, typed, bundled and opened in a browser. */
export async function consumers(say: (text: string) => void): Promise<PartResult> {
  const folder = mkdtempSync(join(tmpdir(), 'strandwise-consumer-'))
  const findings: Finding[] = []
  const attempt = async (what: string, work: () => Promise<unknown>): Promise<void> => {
    say(what)
    findings.push(
      await work().then(
        () => ({ what, problem: undefined }),
        (error: unknown) => ({ what, problem: told(error).slice(0, 2000) }),
      ),
    )
  }
  try {
    const [project, toolFolder] = [join(folder, 'project'), join(folder, 'tools')]
    await attempt('the tarballs install in a fresh folder', () => freshProject(project))
    await attempt('the tools of the matrix install', () => installTools(toolFolder))
    for (const [what, work] of Object.entries(checks(project, toolFolder))) await attempt(what, work)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
  const bad = findings.filter(({ problem }) => problem !== undefined)
  const lines = findings.map(({ what, problem }) => (problem === undefined ? `- ${what}: passed` : `- ${what}: FAILED\n\n\`\`\`text\n${problem}\n\`\`\``))
  const versions = Object.entries(tools).map(([name, version]) => `${name} ${version.replace(/^npm:/, '')}`)
  return {
    ok: bad.length === 0,
    summary: `${findings.length - bad.length} of ${findings.length} checks passed`,
    details: `${lines.join('\n')}\n\n${versions.join(', ')}`,
  }
}
