import { describe, expect, test } from 'vitest'
import { packageArrows, roomArrows } from './arrows.ts'
import { deadExports } from './deadExports.ts'
import { tooLong } from './fileLength.ts'
import { brokenLinks } from './links.ts'
import { looseVersions, unequalVersions, unlikeManifests } from './manifests.ts'
import { mathjsDoors, outsideImports, testsInside, unresolved } from './outside.ts'
import { anys, busyIndexes, consoles, defaultExports } from './style.ts'
import { strangers } from './topLevel.ts'
import { type Finding, readTree, report, type TreeFile } from './tree.ts'
import { strayWords } from './words.ts'

const files = readTree()

/** Checks run on this tree; the tests beside each show that it can fail. */
const checks: readonly (readonly [string, (files: readonly TreeFile[]) => readonly Finding[]])[] = [
  ['arrows between packages go core <- working <- planner <- site', packageArrows],
  ['arrows between the rooms of core and of planner go one way, by the door', roomArrows],
  ['packages take from outside only what they name', outsideImports],
  ['mathjs has one door', mathjsDoors],
  ['every relative import is there', unresolved],
  ['no source takes from tests', testsInside],
  ['no file is too long', tooLong],
  ['no console in packages', consoles],
  ['no default export', defaultExports],
  ['no any', anys],
  ['an index only hands on', busyIndexes],
  ['no dead export', deadExports],
  ['package.json files are alike', unlikeManifests],
  ['versions are exact', looseVersions],
  ['a package has one version', unequalVersions],
  ['the root holds what it should', strangers],
  ['no machine paths, registry hosts or notes for later', strayWords],
  ['links in the documents lead somewhere', brokenLinks],
]

describe('the tree', () => {
  test('was read', () => {
    expect(files.length).toBeGreaterThan(100)
  })

  test.each(checks)('%s', (_title, check) => {
    const findings = check(files)
    expect(findings.length, report(findings)).toBe(0)
  })
})
