import { codeOf } from './arrows.ts'
import { exportsOf, importsOf, isPackageSource, isTest, targetOf } from './source.ts'
import type { Finding, TreeFile } from './tree.ts'

/** Exports that no other source imports and no index re-exports. Used by its own test only counts as dead. */
export function deadExports(files: readonly TreeFile[]): readonly Finding[] {
  const taken = new Set<string>()
  for (const file of files.filter(({ path }) => /\.(ts|mjs|astro)$/.test(path) && !isTest(path))) {
    for (const { specifier, names } of importsOf(codeOf(file))) {
      const target = targetOf(file.path, specifier)
      if (target !== undefined) for (const name of names) taken.add(`${target} ${name}`)
    }
  }
  return files
    .filter(({ path }) => isPackageSource(path) && !isTest(path) && !/\/(index|inner)\.ts$/.test(path))
    .filter(({ path }) => !taken.has(`${path} *`))
    .flatMap((file) =>
      exportsOf(file)
        .filter(({ name }) => !taken.has(`${file.path} ${name}`))
        .map(({ name, line }) => ({
          path: file.path,
          line,
          found: `nothing uses "${name}"`,
          instead: 'drop "export", delete it, or hand it on from the room\'s index.ts',
        })),
    )
}
