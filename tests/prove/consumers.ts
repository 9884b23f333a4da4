import { execFile } from 'node:child_process'
import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { publint } from 'publint'
import { formatMessage } from 'publint/utils'
import { root } from '../repository/tree.ts'
import { tool, typescript7 } from '../run/build.mjs'
import { npmEnvironment } from '../run/place.mjs'
import type { PartResult } from './results.ts'

const run = promisify(execFile)
const packages = ['core', 'working', 'planner'] as const

interface Finding {
  readonly what: string
  readonly problem: string | undefined
}

const told = (error: unknown): string => {
  const { stdout = '', stderr = '', message = '' } = error as { readonly stdout?: string; readonly stderr?: string; readonly message?: string }
  return `${stdout}${stderr}`.trim() || message
}

async function attempt(what: string, work: () => Promise<unknown>): Promise<Finding> {
  return work().then(
    () => ({ what, problem: undefined }),
    (error: unknown) => ({ what, problem: told(error).slice(0, 2000) }),
  )
}

async function lint(name: string): Promise<void> {
  const { messages, pkg } = await publint({ pkgDir: `${root}packages/${name}`, strict: true })
  if (messages.length > 0) throw new Error(messages.map((message) => formatMessage(message, pkg)).join('\n'))
}

const ours = `import { awgToAreaMm2, DomainError, type MetalName } from '@strandwise/core'
import { resistanceOhm } from '@strandwise/core/conductor'
import { parseQuantity } from '@strandwise/working/quantity'
import { demoJobs, planRepair } from '@strandwise/planner'
const metal: MetalName = 'annealed-copper'
const ohm: number = resistanceOhm({ areaMm2: awgToAreaMm2(18), lengthM: parseQuantity('3 m', 'lengthM'), material: metal, temperatureC: 20 })
const plans = Object.values(demoJobs).map((job) => planRepair(job).verdict)
if (!(ohm > 0) || plans.length === 0 || !(DomainError.prototype instanceof RangeError)) throw new Error('not what was promised')
`

/** An outside project: the packed packages in its node_modules, and nothing of this tree. */
async function strangersProject(folder: string): Promise<void> {
  const scope = join(folder, 'node_modules', '@strandwise')
  mkdirSync(scope, { recursive: true })
  for (const name of packages) {
    const { stdout } = await run('npm', ['pack', '--json', '--pack-destination', folder], { cwd: `${root}packages/${name}` })
    const [packed] = JSON.parse(stdout) as [{ readonly filename: string }]
    mkdirSync(join(scope, name))
    await run('tar', ['-xzf', join(folder, packed.filename.replace('@strandwise/', 'strandwise-')), '-C', join(scope, name), '--strip-components=1'])
  }
  for (const name of readdirSync(`${root}node_modules`)) {
    // Links the packages' dependencies, but neither the packages themselves nor this tree's tools.
    if (!name.startsWith('.') && name !== '@strandwise') symlinkSync(`${root}node_modules/${name}`, join(folder, 'node_modules', name))
  }
  writeFileSync(join(folder, 'package.json'), '{ "name": "stranger", "type": "module", "private": true }')
  writeFileSync(join(folder, 'use.ts'), ours)
  writeFileSync(join(folder, 'use.js'), ours.replace(', type MetalName', '').replace(/: (MetalName|number)(?= =)/g, ''))
}

const compilers: Readonly<Record<string, string>> = { 'TypeScript 6': tool('tsc'), 'TypeScript 7': typescript7() ?? 'no TypeScript 7' }

/** The packages as consumers see them: linted, typed in each resolution mode, run and compiled from their tarballs. */
export async function consumers(say: (text: string) => void): Promise<PartResult> {
  const folder = mkdtempSync(join(tmpdir(), 'strandwise-consumer-'))
  const findings: Finding[] = []
  try {
    for (const name of packages) {
      say(`publint and attw of ${name}`)
      findings.push(await attempt(`publint, ${name}`, () => lint(name)))
      findings.push(
        await attempt(`types by attw (ESM only), ${name}`, () =>
          run(process.execPath, [tool('attw'), '--pack', `${root}packages/${name}`, '--profile', 'esm-only', '--no-emoji']),
        ),
      )
    }
    say('a project of a stranger')
    findings.push(await attempt('packed and unpacked', () => strangersProject(folder)))
    findings.push(await attempt(`runs on Node ${process.versions.node}`, () => run(process.execPath, ['use.js'], { cwd: folder })))
    findings.push(await attempt('runs on the Node of the machine', () => run('node', ['use.js'], { cwd: folder, env: npmEnvironment() })))
    const command = join(folder, 'node_modules', '@strandwise', 'planner', 'bin', 'strandwise.mjs')
    findings.push(
      await attempt(
        'its command prints the schema of a job',
        async () => JSON.parse((await run(process.execPath, [command, 'schema'], { cwd: folder })).stdout) as unknown,
      ),
    )
    for (const [name, tsc] of Object.entries(compilers)) {
      for (const [module, resolution] of [
        ['nodenext', 'nodenext'],
        ['esnext', 'bundler'],
      ] as const) {
        const args = [tsc, '--noEmit', '--strict', '--target', 'es2023', '--lib', 'es2023,dom', '--module', module, '--moduleResolution', resolution, 'use.ts']
        findings.push(await attempt(`compiles with ${name}, ${resolution}, our declarations checked`, () => run(process.execPath, args, { cwd: folder })))
      }
    }
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
  const bad = findings.filter(({ problem }) => problem !== undefined)
  const details = findings
    .map(({ what, problem }) => (problem === undefined ? `- ${what}: passed` : `- ${what}: FAILED\n\n\`\`\`text\n${problem}\n\`\`\``))
    .join('\n')
  return { ok: bad.length === 0, summary: `${findings.length - bad.length} of ${findings.length} checks passed`, details }
}
