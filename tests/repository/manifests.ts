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
/** Keys of a published package in their order; optional ones may be missing. */
const keys = [
  'name',
  'version',
  'description',
  'keywords',
  'license',
  'repository',
  'type',
  'engines',
  'sideEffects',
  'files',
  'bin',
  'imports',
  'exports',
  'dependencies',
]
const optional = new Set(['bin', 'imports', 'dependencies'])
/** Fields that are equal in every published package. */
const alike: Manifest = {
  license: 'MIT',
  /** By name alone: where it is served is no matter of a package. */
  repository: 'strandwise/strandwise',
  type: 'module',
  engines: { node: '>=20' },
  sideEffects: false,
}
/** Files of the tarball beside README, LICENSE and package.json: the build, sources for the maps, and core's changelog. */
const filesOf = (manifest: Manifest, folder: string): readonly string[] => [
  ...('bin' in manifest ? ['bin'] : []),
  'dist',
  'src',
  ...(folder === 'core' ? ['CHANGELOG.md'] : []),
  '!dist/.tsbuildinfo',
  '!src/**/*.test.ts',
  '!src/**/*.sample.ts',
]

/** Expected exports: the root, each room with an index, and package.json; rooms without one are closed explicitly. */
function exportsOf(files: readonly TreeFile[], folder: string): unknown {
  const inside = new RegExp(`^packages/${folder}/src/([^/]+)/(.*)$`)
  const rooms = new Map<string, boolean>()
  for (const { path } of files) {
    const [, room, file] = inside.exec(path) ?? []
    if (room !== undefined) rooms.set(room, rooms.get(room) === true || file === 'index.ts')
  }
  const closed = [...rooms].filter(([, open]) => !open).map(([room]) => room)
  return {
    '.': { types: './dist/index.d.ts', default: './dist/index.js' },
    ...Object.fromEntries(closed.sort().map((room) => [`./${room}`, null])),
    './*': { types: './dist/*/index.d.ts', default: './dist/*/index.js' },
    './package.json': './package.json',
  }
}

const manifestsIn = (files: readonly TreeFile[]) =>
  files.filter(({ path }) => manifestPath.test(path)).map(({ path, text }) => ({ path, manifest: JSON.parse(text) as Manifest }))

/** Versions must be exact, as a range lets two installs differ. */
export function looseVersions(files: readonly TreeFile[]): readonly Finding[] {
  return manifestsIn(files).flatMap(({ path, manifest }) =>
    groups.flatMap((group) =>
      Object.entries((manifest[group] ?? {}) as Record<string, string>)
        .filter(([, version]) => !exact.test(version))
        .map(([name, version]) => ({ path, found: `${group} has ${name} "${version}"`, instead: 'write the exact version, as "1.2.3"' })),
    ),
  )
}

/** All workspaces must use the same version of a package. */
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

/** The package.json files of packages/ must have the same keys in the same order, the same version and the same entry points. */
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
    for (const name of ['README.md', 'LICENSE'])
      if (!files.some((file) => file.path === `packages/${folder}/${name}`)) say(`no ${name} in the tarball`, `packages/${folder}/${name}`)
    const own = files.find((file) => file.path === `packages/${folder}/LICENSE`)?.text
    const licence = files.find((file) => file.path === 'LICENSE')?.text
    if (own !== undefined && own !== licence) say('another licence than the root', 'the same text as LICENSE')
    for (const [key, value] of Object.entries({ ...alike, files: filesOf(manifest, folder), exports: exportsOf(files, folder) })) {
      if (JSON.stringify(manifest[key]) !== JSON.stringify(value)) say(`"${key}" is ${JSON.stringify(manifest[key])}`, JSON.stringify(value))
    }
    return findings
  })
}
