import { existsSync } from 'node:fs'
import { delimiter, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

export const root = fileURLToPath(new URL('../..', import.meta.url))
export const bin = join(root, 'node_modules', '.bin')

/** Oldest Node that runs every tool here; the installed one is newer. */
const needed = [22, 18]

/** The Node to continue with after installation: the one in node_modules, or the running one if new enough. */
export function newNode() {
  const installed = join(root, 'node_modules', 'node', 'bin', process.platform === 'win32' ? 'node.exe' : 'node')
  if (existsSync(installed)) return installed
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number)
  if (major > needed[0] || (major === needed[0] && minor >= needed[1])) return process.execPath
  throw new Error(
    `the package "node" was installed without its program and Node ${process.versions.node} is too old: install Node 24, or run "npm rebuild node"`,
  )
}

/** Environment of a tool: "node" is the installed one, no telemetry, no colour codes. */
export function toolEnvironment(more = {}) {
  const { FORCE_COLOR: _, ...environment } = process.env
  return { ...environment, PATH: `${bin}${delimiter}${process.env.PATH ?? ''}`, ASTRO_TELEMETRY_DISABLED: '1', NO_UPDATE_NOTIFIER: '1', NO_COLOR: '1', ...more }
}

/** Environment of npm itself, without the folders that it is about to replace on the path. */
export function npmEnvironment() {
  const kept = (process.env.PATH ?? '').split(delimiter).filter((folder) => !resolve(folder).startsWith(resolve(root)))
  return { ...process.env, PATH: kept.join(delimiter) }
}
