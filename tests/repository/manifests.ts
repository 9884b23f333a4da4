import type { Finding, TreeFile } from './tree.ts'

interface Manifest extends Readonly<Record<string, unknown>> {
  readonly name?: unknown
  readonly version?: unknown
  readonly license?: unknown
  readonly private?: unknown
}

const manifestPath = /^(package\.json|(packages\/[^/]+|site|tests)\/package\.json)$/
const exact = /^(npm:(@[^/]+\/)?[^@]+@)?\d+\.\d+\.\d+(-[0-9A-Za-z.-]+)?$/
const groups = ['dependencies', 'devDependencies', 'peerDependencies', 'optionalDependencies']
/** The keys of a package that is published, in this order; a missing optional one is left out. */
const keys = ['name', 'version', 'description', 'license', 'type', 'sideEffects', 'files', 'bin', 'exports', 'dependencies']
const optional = new Set(['bin', 'dependencies'])
/** What every published package says alike. */
const alike: Manifest = {
  license: 'MIT',
  type: 'module',
  sideEffects: false,
  exports: {
    '.': { types: './dist/index.d.ts', default: './dist/index.js' },
    './*': { types: './dist/*/index.d.ts', default: './dist/*/index.js' },
    './package.json': './package.json',
  },
}

const manifestsIn = (files: readonly TreeFile[]) =>
  files.filter(({ path }) => manifestPath.test(path)).map(({ path, text }) => ({ path, manifest: JSON.parse(text) as Manifest }))

/** A range lets two installs differ; an exact version doesn't. */
export function looseVersions(files: readonly TreeFile[]): readonly Finding[] {
  return manifestsIn(files).flatMap(({ path, manifest }) =>
    groups.flatMap((group) =>
      Object.entries((manifest[group] ?? {}) as Record<string, string>)
        .filter(([, version]) => !exact.test(version))
        .map(([name, version]) => ({ path, found: `${group} has ${name} "${version}"`, instead: 'write the exact version, as "1.2.3"' })),
    ),
  )
}

/** One package, one version of it: two workspaces never name different ones. */
export function unequalVersions(files: readonly TreeFile[]): readonly Finding[] {
  const first = new Map<string, { readonly path: string; readonly version: string }>()
  const findings: Finding[] = []
  for (const { path, manifest } of manifestsIn(files)) {
    for (const group of groups) {
      for (const [name, version] of Object.entries((manifest[group] ?? {}) as Record<string, string>)) {
        const seen = first.get(name)
        if (seen === undefined) first.set(name, { path, version })
        else if (seen.version !== version)
          findings.push({ path, found: `${name} ${version}, but ${seen.path} has ${seen.version}`, instead: 'name the same version in both' })
      }
    }
  }
  return findings
}

/** The package.json files of packages/ are alike: same keys in the same order, same version, same way in. */
export function unlikeManifests(files: readonly TreeFile[]): readonly Finding[] {
  const all = manifestsIn(files)
  const version = all.find(({ path }) => path === 'package.json')?.manifest.version
  return all.flatMap(({ path, manifest }) => {
    const findings: Finding[] = []
    const say = (found: string, instead: string) => findings.push({ path, found, instead })
    if (manifest.version !== version) say(`version ${String(manifest.version)}`, `the root's, ${String(version)}`)
    if (manifest.license !== 'MIT') say('no MIT licence', '"license": "MIT"')
    const folder = /^packages\/([^/]+)\//.exec(path)?.[1]
    if (folder === undefined) {
      if (manifest.private !== true) say('it could be published', '"private": true')
      return findings
    }
    if (manifest.name !== `@strandwise/${folder}`) say(`name ${String(manifest.name)}`, `"@strandwise/${folder}"`)
    const wanted = keys.filter((key) => key in manifest || !optional.has(key))
    if (Object.keys(manifest).join() !== wanted.join())
      say(`keys ${Object.keys(manifest).join(', ')}`, `${keys.join(', ')}, in this order; only ${[...optional].join(' and ')} may be absent`)
    const files = 'bin' in manifest ? ['bin', 'dist'] : ['dist']
    for (const [key, value] of Object.entries({ ...alike, files })) {
      if (JSON.stringify(manifest[key]) !== JSON.stringify(value)) say(`"${key}" is ${JSON.stringify(manifest[key])}`, JSON.stringify(value))
    }
    return findings
  })
}
