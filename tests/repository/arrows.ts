import { importsOf, isPackageSource, isTest, targetOf } from './source.ts'
import type { Finding, TreeFile } from './tree.ts'

/** A package may import only from those on its left. */
export const packageOrder = ['core', 'working', 'planner', 'site'] as const
/** A room of core imports only from rooms before it. */
export const roomOrder = [
  'errors',
  'materials',
  'tables',
  'rules',
  'heat',
  'conductor',
  'ampacity',
  'circuit',
  'protection',
  'verdict',
  'meter',
  'joint',
  'heating',
  'solder',
  'crimp',
  'sleeve',
  'bundle',
  'routing',
  'suitability',
] as const

/** Imports of the site at build time: published figures, docstrings as data, bundle sizes. */
const readWhileBuilding = /^(references|tests)\//

/** A room of the planner imports only from rooms before it. */
export const plannerRoomOrder = [
  'job',
  'demo',
  'facts',
  'circuit',
  'diagnosis',
  'ways',
  'decision',
  'work',
  'proof',
  'report',
  'picture',
  'audit',
  'command',
] as const

const packageOf = (path: string): string | undefined => /^(?:packages\/)?(core|working|planner|site)\//.exec(path)?.[1]
const roomsOf = { core: roomOrder, planner: plannerRoomOrder } as const
type Roomy = keyof typeof roomsOf
const placeOf = (path: string): { readonly house: Roomy; readonly room: string } | undefined => {
  const [, house, room] = /^packages\/(core|planner)\/src\/([^/]+)\//.exec(path) ?? []
  return house === undefined || room === undefined ? undefined : { house: house as Roomy, room }
}
const rank = (order: readonly string[], name: string): number => order.indexOf(name)

/** Code of an .astro file: front matter and scripts, the rest blanked so that line numbers stay. */
export function codeOf(file: TreeFile): TreeFile {
  if (!file.path.endsWith('.astro')) return file
  let inside = false
  const lines = file.text.split('\n').map((line) => {
    if (/^---\s*$/.test(line) || /^\s*<\/?script\b/.test(line)) {
      inside = !inside
      return ''
    }
    return inside ? line : ''
  })
  return { path: file.path, text: lines.join('\n') }
}

const isCode = (path: string): boolean => /\.(ts|mjs|astro)$/.test(path)

/** Imports between packages: core <- working <- planner <- site, by package name, never by file. */
export function packageArrows(files: readonly TreeFile[]): readonly Finding[] {
  const findings: Finding[] = []
  for (const file of files.filter(({ path }) => isCode(path) && packageOf(path) !== undefined)) {
    const own = packageOf(file.path) as string
    for (const { specifier, line } of importsOf(codeOf(file))) {
      const target = targetOf(file.path, specifier)
      if (target === undefined) continue
      const other = packageOf(target)
      if (other === own) {
        if (!specifier.startsWith('.') && own !== 'site')
          findings.push({
            path: file.path,
            line,
            found: `imports its own package by name, "${specifier}"`,
            instead: 'import the file or the room index by a relative path',
          })
        continue
      }
      if (other === undefined) {
        if (!isTest(file.path) && !(own === 'site' && readWhileBuilding.test(target)))
          findings.push({
            path: file.path,
            line,
            found: `imports "${specifier}" from outside the packages`,
            instead: 'keep what ships inside packages/ or site/',
          })
        continue
      }
      if (rank(packageOrder, other) > rank(packageOrder, own)) {
        findings.push({
          path: file.path,
          line,
          found: `${own} imports ${other}`,
          instead: `move what both need into ${own} or a package before it; arrows go ${packageOrder.join(' <- ')}`,
        })
      } else if (specifier.startsWith('.')) {
        findings.push({ path: file.path, line, found: `reaches into ${other} by a path`, instead: `import from "@strandwise/${other}" or one of its rooms` })
      }
    }
  }
  return findings
}

/** Imports between rooms of core and of the planner, and their entry points: index.ts is public, inner.ts is for other rooms. */
export function roomArrows(files: readonly TreeFile[]): readonly Finding[] {
  const findings: Finding[] = []
  for (const file of files.filter(({ path }) => isPackageSource(path) && !isTest(path))) {
    const place = placeOf(file.path)
    if (place === undefined) continue
    const { house, room: own } = place
    const order: readonly string[] = roomsOf[house]
    if (rank(order, own) === -1)
      findings.push({ path: file.path, found: `"${own}" is no room of ${house}`, instead: `put the file into one of: ${order.join(', ')}` })
    for (const { specifier, line } of importsOf(file)) {
      const target = targetOf(file.path, specifier)
      if (target === undefined || packageOf(target) !== house) continue
      const other = placeOf(target)?.room
      if (other === own) continue
      if (other === undefined) {
        findings.push({ path: file.path, line, found: `a room imports "${specifier}"`, instead: 'import the index.ts of the room that holds it' })
      } else if (rank(order, other) > rank(order, own)) {
        findings.push({
          path: file.path,
          line,
          found: `room ${own} imports room ${other}`,
          instead: `move what both need into ${own} or a room before it; the order is ${order.join(', ')}`,
        })
      } else if (!/^packages\/[^/]+\/src\/[^/]+\/(index|inner)\.ts$/.test(target)) {
        findings.push({
          path: file.path,
          line,
          found: `goes past the door of room ${other}, "${specifier}"`,
          instead: `hand the name on from ../${other}/index.ts, or from its inner.ts where only other rooms may use it, and import it there`,
        })
      }
    }
  }
  return findings
}
