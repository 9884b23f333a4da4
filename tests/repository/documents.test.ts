import { describe, expect, test } from 'vitest'
import { fails } from './fails.ts'
import { anchorOf, brokenLinks } from './links.ts'
import { looseVersions, unequalVersions, unlikeManifests } from './manifests.ts'
import { sample } from './tree.ts'
import { strayWords } from './words.ts'

describe('package.json files', () => {
  const rootManifest = JSON.stringify({ name: 'strandwise', version: '1.0.0', private: true, license: 'MIT' })
  const core = {
    name: '@strandwise/core',
    version: '1.0.0',
    description: 'x',
    keywords: ['x'],
    license: 'MIT',
    repository: 'strandwise/strandwise',
    type: 'module',
    engines: { node: '>=20' },
    sideEffects: false,
    files: ['dist', 'src', 'CHANGELOG.md', '!dist/.tsbuildinfo', '!src/**/*.test.ts', '!src/**/*.sample.ts'],
    exports: {
      '.': { types: './dist/index.d.ts', default: './dist/index.js' },
      './closed': null,
      './*': { types: './dist/*/index.d.ts', default: './dist/*/index.js' },
      './package.json': './package.json',
    },
  }
  const tree = (changes: object, file = 'packages/core/package.json') => ({
    LICENSE: 'MIT',
    'packages/core/LICENSE': 'MIT',
    'packages/core/README.md': '# core',
    'packages/core/src/open/index.ts': '',
    'packages/core/src/closed/a.ts': '',
    'package.json': rootManifest,
    [file]: JSON.stringify({ ...core, ...changes }),
  })

  test('alike passes; each difference fails', () => {
    expect(unlikeManifests(sample(tree({})))).toEqual([])
    fails(unlikeManifests, tree({ version: '1.0.1' }), /version 1\.0\.1.*the root's, 1\.0\.0/)
    fails(unlikeManifests, tree({ license: 'other' }), /licence/, 2)
    fails(unlikeManifests, tree({ name: 'core' }), /name core/)
    fails(unlikeManifests, tree({ sideEffects: true }), /"sideEffects" is true/)
    fails(unlikeManifests, tree({ type: 'commonjs' }), /"type"/)
    fails(unlikeManifests, tree({ exports: {} }), /"exports"/)
    fails(unlikeManifests, tree({ exports: { ...core.exports, './closed': undefined } }), /"exports"/)
    fails(unlikeManifests, tree({ files: ['dist'] }), /"files"/)
    fails(unlikeManifests, { ...tree({}), 'packages/core/LICENSE': 'other' }, /another licence/)
    fails(unlikeManifests, Object.fromEntries(Object.entries(tree({})).filter(([path]) => path !== 'packages/core/README.md')), /no README\.md in the tarball/)
    fails(unlikeManifests, tree({ main: 'x' }), /keys/)
    fails(unlikeManifests, tree({ private: undefined }, 'site/package.json'), /it could be published/)
  })

  test.each(['^1.2.3', '~1.2.3', '1.2', '*', 'latest', '>=1.0.0', 'workspace:*', 'npm:a@^1.0.0', 'file:../a'])('"%s" is no exact version', (version) => {
    fails(looseVersions, tree({ devDependencies: { a: version } }), /devDependencies has a/)
  })

  test.each(['1.2.3', '1.2.3-rc.1', 'npm:a@1.2.3', 'npm:@a/b@1.2.3'])('"%s" is one', (version) => {
    expect(looseVersions(sample(tree({ dependencies: { a: version } })))).toEqual([])
  })

  test('two versions of one package', () => {
    fails(
      unequalVersions,
      { ...tree({ dependencies: { a: '1.0.0' } }), 'tests/package.json': JSON.stringify({ devDependencies: { a: '1.0.1' } }) },
      /a 1\.0\.1, but packages\/core/,
    )
  })
})

describe('stray words', () => {
  const bad = [
    '/wo|rk/main/a',
    'in /t|mp/x',
    '"/ho|me/me/a"',
    '/ro|ot/.cache',
    '/Us|ers/me',
    'https://registry.np|mjs.org/a',
    'http://local|host:4173/',
    '127.0.|0.1:80',
    '// TO|DO later',
    'FIX|ME',
  ]

  test.each(bad)('%s', (text) => {
    fails(strayWords, { 'packages/core/src/a.ts': `\n${text.replace('|', '')}` }, /a\.ts:2: /)
  })

  test.each(['the working/tmp-free home', 'https://example.org/work/here', './tmp/a', '~/work/x', 'a/root/b'])('%s passes', (text) => {
    expect(strayWords(sample({ 'README.md': text }))).toEqual([])
  })
})

describe('links', () => {
  const tree = (text: string) => ({ 'README.md': text, 'DEVELOPERS.md': '# The map\n## Add a `formula`\n', 'tests/a.ts': '' })

  test('those that lead somewhere', () => {
    const text =
      '# One\n[a](DEVELOPERS.md) [b](./tests/a.ts) [c](tests/) [d](#one) [e](DEVELOPERS.md#add-a-formula) [f](https://example.org/x) `tests/a.ts` `other/x`\n```\n[g](nowhere)\n```\n'
    expect(brokenLinks(sample(tree(text)))).toEqual([])
  })

  test.each([
    ['[a](NOWHERE.md)', /"NOWHERE\.md" leads nowhere/],
    ['x\n[a](tests/b.ts)', /README\.md:2/],
    ['[a](#two)', /no heading "#two"/],
    ['[a](DEVELOPERS.md#two)', /DEVELOPERS\.md has no heading "#two"/],
    ['see `tests/run/b.mjs`', /`tests\/run\/b\.mjs` is not in the tree/],
  ])('%s', (text, found) => {
    fails(brokenLinks, tree(text), found)
  })

  test('anchors are made as renderers make them', () => {
    expect(anchorOf('Add a `formula`, in 5 steps')).toBe('add-a-formula-in-5-steps')
  })
})
