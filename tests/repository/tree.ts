import { readdirSync, readFileSync } from 'node:fs'
import { join, relative, sep } from 'node:path'
import { fileURLToPath } from 'node:url'

/** A file as the checks see it; the path is relative to the root, with forward slashes. */
export interface TreeFile {
  readonly path: string
  readonly text: string
}

/** A finding: place, fault, and what to do instead. */
export interface Finding {
  readonly path: string
  readonly line?: number
  readonly found: string
  readonly instead: string
}

export const root = fileURLToPath(new URL('../..', import.meta.url))

/** Generated folders, as in .gitignore. */
export const made = new Set(['.git', 'node_modules', 'dist', '.astro', '.stryker-tmp'])
const madeFiles = /\.tsbuildinfo$|^tests\/results\/local\//
const binary = /\.(png|jpe?g|webp|avif|ico|woff2?|pdf|zip)$/

function paths(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (made.has(entry.name)) return []
    const path = join(folder, entry.name)
    return entry.isDirectory() ? paths(path) : [path]
  })
}

/** Every hand-written file of the tree; binary files have no text. */
export function readTree(folder: string = root): readonly TreeFile[] {
  return paths(folder)
    .map((path) => ({ path: relative(folder, path).split(sep).join('/'), absolute: path }))
    .filter(({ path }) => !madeFiles.test(path))
    .map(({ path, absolute }) => ({ path, text: binary.test(path) ? '' : readFileSync(absolute, 'utf8') }))
    .sort((a, b) => (a.path < b.path ? -1 : 1))
}

/** One line per finding, as the message of a failing test. */
export function report(findings: readonly Finding[]): string {
  return findings.map(({ path, line, found, instead }) => `${path}${line === undefined ? '' : `:${line}`}: ${found}. Instead: ${instead}`).join('\n')
}

/** A sample tree for the tests of the checks. */
export function sample(files: Readonly<Record<string, string>>): readonly TreeFile[] {
  return Object.entries(files).map(([path, text]) => ({ path, text }))
}
