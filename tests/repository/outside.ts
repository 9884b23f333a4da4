import { codeOf } from './arrows.ts'
import { importsOf, isPackageSource, isTest, targetOf } from './source.ts'
import type { Finding, TreeFile } from './tree.ts'

interface Manifest {
  readonly dependencies?: Readonly<Record<string, string>>
  /** A name of the package's own for another module, by platform: { "#x": { "browser": "a", "default": "b" } }. */
  readonly imports?: Readonly<Record<string, Readonly<Record<string, string>>>>
}

/** Package of a specifier: "@scope/name/deep" and "name/deep"; "node:fs" belongs to the platform. */
export function packageName(specifier: string): string {
  const parts = specifier.split('/')
  return specifier.startsWith('@') ? parts.slice(0, 2).join('/') : (parts[0] as string)
}

/** Shipped code imports only dependencies in its package.json; core has none, and only the command uses Node's modules. */
export function outsideImports(files: readonly TreeFile[]): readonly Finding[] {
  const findings: Finding[] = []
  for (const file of files.filter(({ path }) => isPackageSource(path) && !isTest(path))) {
    const owner = file.path.split('/')[1] as string
    const manifest = files.find(({ path }) => path === `packages/${owner}/package.json`)
    const { dependencies = {}, imports = {} } = manifest === undefined ? {} : (JSON.parse(manifest.text) as Manifest)
    const named = Object.keys(dependencies)
    const meant = (specifier: string): readonly string[] =>
      specifier.startsWith('#') ? Object.values(imports[specifier] ?? { missing: specifier }) : [specifier]
    for (const { specifier, line } of importsOf(codeOf(file))) {
      if (specifier.startsWith('.')) continue
      if (specifier.startsWith('node:')) {
        if (!file.path.startsWith('packages/planner/src/command/')) {
          findings.push({
            path: file.path,
            line,
            found: `imports "${specifier}"`,
            instead: 'a model has no files, clock or processes: pass the data in; only packages/planner/src/command/ may use Node',
          })
        }
      } else if (!meant(specifier).every((one) => named.includes(packageName(one)))) {
        findings.push({
          path: file.path,
          line,
          found: `imports "${specifier}", which packages/${owner}/package.json does not name`,
          instead:
            owner === 'core'
              ? 'core has no dependency: write it here or move the caller to working'
              : 'add the exact version there, with its reason in DEVELOPERS.md',
        })
      }
    }
  }
  return findings
}

/** mathjs is imported by one module only, which creates the instance. */
export function mathjsDoors(files: readonly TreeFile[]): readonly Finding[] {
  const doors = files
    .filter(({ path }) => /^(packages|site)\//.test(path) && /\.(ts|astro)$/.test(path) && !isTest(path))
    .filter((file) => importsOf(codeOf(file)).some(({ specifier }) => packageName(specifier) === 'mathjs'))
  const allowed = doors.find(({ path }) => path.startsWith('packages/working/')) ?? doors[0]
  return doors
    .filter((file) => file !== allowed || !file.path.startsWith('packages/working/'))
    .map(({ path }) => ({
      path,
      found: 'imports mathjs',
      instead: `take what you need from the one module that creates the instance${allowed === undefined ? '' : ` (${allowed.path})`}`,
    }))
}

/** A relative import must name an existing file, with its extension. */
export function unresolved(files: readonly TreeFile[]): readonly Finding[] {
  const known = new Set(files.map(({ path }) => path))
  return files
    .filter(({ path }) => /^(packages|references|tests)\/.*\.ts$/.test(path))
    .flatMap((file) =>
      importsOf(file)
        .filter(({ specifier }) => specifier.startsWith('.'))
        .map(({ specifier, line }) => ({ specifier, line, target: targetOf(file.path, specifier) as string }))
        .filter(({ target }) => !known.has(target) && !target.includes('/dist/'))
        .map(({ specifier, line }) => ({
          path: file.path,
          line,
          found: `imports "${specifier}", which is not there`,
          instead: 'name the file with its ending, "./x.ts"',
        })),
    )
}

/** Shipped code must not import tests or samples. */
export function testsInside(files: readonly TreeFile[]): readonly Finding[] {
  return files
    .filter(({ path }) => isPackageSource(path) && !isTest(path))
    .flatMap((file) =>
      importsOf(file)
        .filter(({ specifier }) => isTest(specifier))
        .map(({ specifier, line }) => ({ path: file.path, line, found: `imports "${specifier}"`, instead: 'move what both need into a file of its own' })),
    )
}
