import { createHash } from 'node:crypto'
import { existsSync, readFileSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { npmEnvironment, root } from './place.mjs'
import { run, step } from './terminal.mjs'

const lockFile = join(root, 'package-lock.json')
const installed = join(root, 'node_modules', '.package-lock.json')
const marker = join(root, 'node_modules', '.strandwise-lock')

const lockHash = () => createHash('sha256').update(readFileSync(lockFile)).digest('hex')

/** True if node_modules matches package-lock.json: by the hash noted, or, without one, by not being older. */
export function isInstalled() {
  if (!existsSync(installed)) return false
  if (existsSync(marker) && readFileSync(marker, 'utf8') === lockHash()) return true
  return statSync(installed).mtimeMs >= statSync(lockFile).mtimeMs
}

/** Installs the lock file's packages unless they are installed. */
export async function ensureInstalled() {
  const [major = 0] = process.versions.node.split('.').map(Number)
  if (major < 20) throw new Error(`Node ${process.versions.node} is too old: install Node 20 or newer`)
  if (!isInstalled()) {
    const npm = process.platform === 'win32' ? 'npm.cmd' : 'npm'
    const { ok } = await step('install', async () => {
      const { code, output } = await run(npm, ['ci', '--no-audit', '--no-fund'], { cwd: root, env: npmEnvironment() })
      return { ok: code === 0, output: `${output}\nwhat to do: check the network, then run "npm ci" by hand` }
    })
    if (!ok) throw new Error('nothing was installed')
  }
  writeFileSync(marker, lockHash())
}
