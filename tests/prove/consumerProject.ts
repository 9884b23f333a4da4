import { execFile } from 'node:child_process'
import { existsSync, mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { root } from '../repository/tree.ts'
import { npmEnvironment } from '../run/place.mjs'

const run = promisify(execFile)
export const packages = ['core', 'working', 'planner'] as const

/** What a caller would write: every package, rooms too, with types. */
const program = `import { awgToAreaMm2, commonWallMm, DomainError, type MetalName } from '@strandwise/core'
import { resistanceOhm } from '@strandwise/core/conductor'
import { parseQuantity } from '@strandwise/working/quantity'
import { explain } from '@strandwise/working/formulas'
import { demoJobs, planRepair, type RepairPlan } from '@strandwise/planner'
import { auditCsv, auditList, type AuditResult } from '@strandwise/planner/audit'
const metal: MetalName = 'annealed-copper'
const ohm: number = resistanceOhm({ areaMm2: awgToAreaMm2(18), lengthM: parseQuantity('3 m', 'lengthM'), material: metal, temperatureC: 20 })
const plans: readonly RepairPlan[] = Object.values(demoJobs).map((job) => planRepair(job))
const audited: AuditResult[] = []
for await (const result of auditList('name,size,insulation,outLengthM,currentA,supplyV,ambientC\\nlamp,18 AWG,PVC,3,2,12,40\\n')) audited.push(result)
const shown = explain('lapJointResistanceOhm', { overlapMm: 6, conductorsOhmPerM: [0.0137, 0.0137], interfaceSPerM: 5e6 })
if (!(ohm > 0) || !(commonWallMm(1) > 0) || plans.length === 0 || shown === undefined) throw new Error('not what was promised')
if (auditCsv(audited).split('\\n').length !== 3 || !(DomainError.prototype instanceof RangeError)) throw new Error('not what was promised')
console.log('used')
`

/** The same for a browser: modules alone, no bundler. */
export const pageProgram = `import { awgToAreaMm2 } from '@strandwise/core'
import { resistanceOhm } from '@strandwise/core/conductor'
import { parseQuantity } from '@strandwise/working/quantity'
import { auditList } from '@strandwise/planner/audit'
const ohm = resistanceOhm({ areaMm2: awgToAreaMm2(18), lengthM: parseQuantity('3 m', 'lengthM'), material: 'annealed-copper', temperatureC: 20 })
let verdict = ''
for await (const row of auditList('name,size,insulation,outLengthM,currentA,supplyV,ambientC\\nlamp,18 AWG,PVC,3,2,12,40\\n')) verdict = row.verdict ?? 'none'
document.title = ohm.toFixed(4) + ' ' + verdict
`

/** Tools of the matrix, by the name under which they are installed. */
export const tools = {
  'typescript-5.9': 'npm:typescript@5.9.3',
  'typescript-6': 'npm:typescript@6.0.3',
  'typescript-7': 'npm:typescript@7.0.2',
  'node-20': `npm:node-${process.platform}-${process.arch}@20.20.2`,
  'node-22': `npm:node-${process.platform}-${process.arch}@22.23.5`,
  'node-24': `npm:node-${process.platform}-${process.arch}@24.22.3`,
  esbuild: '0.28.2',
  rolldown: '1.3.2',
} as const

const manifest = (folder: string, name: string, more: object): void =>
  writeFileSync(join(folder, 'package.json'), JSON.stringify({ name, version: '1.0.0', type: 'module', private: true, ...more }))

/** Packs a package; the path of its tarball. */
async function packed(name: string, folder: string): Promise<string> {
  const { stdout } = await run('npm', ['pack', '--json', '--pack-destination', folder], { cwd: `${root}packages/${name}`, env: npmEnvironment() })
  const [{ filename }] = JSON.parse(stdout) as [{ readonly filename: string }]
  return [filename, filename.replace('@', '').replace('/', '-')].map((one) => join(folder, one)).find(existsSync) as string
}

/** A fresh folder in which the three tarballs are installed by npm, as anyone would, and nothing of this tree. */
export async function freshProject(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true })
  manifest(folder, 'fresh', {})
  const tarballs = await Promise.all(packages.map((name) => packed(name, folder)))
  await run('npm', ['install', '--no-audit', '--no-fund', ...tarballs], { cwd: folder, env: npmEnvironment() })
  writeFileSync(join(folder, 'use.ts'), program)
  writeFileSync(join(folder, 'use.js'), program.replace(/, type \w+|type \w+, /g, '').replace(/: (readonly )?\w+(\[\])?(?= =)/g, ''))
  writeFileSync(join(folder, 'page.js'), pageProgram)
}

/** The tools, in a folder of their own. */
export async function installTools(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true })
  manifest(folder, 'tools', { dependencies: tools })
  await run('npm', ['install', '--no-audit', '--no-fund'], { cwd: folder, env: npmEnvironment() })
}
