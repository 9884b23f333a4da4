import type { Finding, TreeFile } from './tree.ts'

/** Allowed entries at the root; other tool configuration is kept where it is used. */
export const topLevel = [
  '.ci',
  '.gitignore',
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'package-lock.json',
  'package.json',
  'packages',
  'references',
  'site',
  'tests',
  'tsconfig.json',
] as const

const folders = new Set(['core', 'working', 'planner'])

export function strangers(files: readonly TreeFile[]): readonly Finding[] {
  const there = new Set(files.map(({ path }) => path.split('/')[0] as string))
  const known = new Set<string>(topLevel)
  return [
    ...[...there]
      .filter((name) => !known.has(name))
      .map((name) => ({ path: name, found: 'does not belong at the root', instead: 'put it beside what uses it: tests/, site/, references/ or a package' })),
    ...topLevel.filter((name) => !there.has(name)).map((name) => ({ path: name, found: 'is missing at the root', instead: 'add it' })),
    ...[...new Set(files.flatMap(({ path }) => /^packages\/([^/]+)/.exec(path)?.[1] ?? []))]
      .filter((name) => !folders.has(name))
      .map((name) => ({ path: `packages/${name}`, found: 'is no package of the design', instead: `one of ${[...folders].join(', ')}` })),
  ]
}
