import { describe, expect, test } from 'vitest'
import { deadExports } from './deadExports.ts'
import { fails } from './fails.ts'
import { kindOf, limits, tooLong } from './fileLength.ts'
import { anys, busyIndexes, consoles, defaultExports } from './style.ts'
import { strangers, topLevel } from './topLevel.ts'
import { sample } from './tree.ts'

const lines = (count: number): string => 'x\n'.repeat(count)

describe('file lengths', () => {
  test.each([
    ['packages/core/src/joint/lapJoint.ts', 'formula'],
    ['packages/working/src/formulas/joint/lapJoint.ts', 'formula'],
    ['packages/core/src/tables/awg.ts', 'table'],
    ['packages/core/src/materials/metals.ts', 'table'],
    ['packages/core/src/rules/joint.ts', 'table'],
    ['references/iec.ts', 'table'],
    ['packages/core/src/joint/lapJoint.test.ts', 'other'],
    ['packages/core/src/tables/awg.test.ts', 'other'],
    ['packages/planner/src/plan.ts', 'other'],
    ['tests/run/test.mjs', 'other'],
    ['site/src/pages/index.astro', 'other'],
  ] as const)('%s is a %s: its limit passes, one line more fails', (path, kind) => {
    expect(kindOf(path)).toBe(kind)
    expect(tooLong(sample({ [path]: lines(limits[kind]) }))).toEqual([])
    fails(tooLong, { [path]: lines(limits[kind] + 1) }, new RegExp(`${limits[kind] + 1} lines`))
  })

  test('the last line counts without a line end too', () => {
    fails(tooLong, { 'tests/a.ts': `${lines(250)}x` }, /251 lines/)
  })
})

describe('style', () => {
  const path = 'packages/core/src/heat/a.ts'

  test('console in a package, and nowhere else', () => {
    fails(consoles, { [path]: "\nconsole.log('x')" }, /a\.ts:2: uses console/)
    fails(consoles, { [path]: "const { log } = console\nglobalThis['x']" }, /a\.ts:1/)
    expect(consoles(sample({ [path]: "const a = '// console'\nb.console", 'tests/a.ts': 'console.log(1)' }))).toEqual([])
  })

  test('default exports of each form', () => {
    for (const text of [
      'export default 1',
      'export default function a() {}',
      'export default class {}',
      'const a = 1\nexport { a as default }',
      "export { default } from './b.ts'",
    ]) {
      fails(defaultExports, { [path]: text }, /a default export/)
    }
    expect(defaultExports(sample({ [path]: 'export const a = 1', 'tests/vitest.config.ts': 'export default {}' }))).toEqual([])
  })

  test('any as a type, not as a word', () => {
    fails(anys, { [path]: 'const a: any = 1\nconst b = a as any[]' }, /a\.ts:2: "any"/, 2)
    expect(anys(sample({ [path]: "// any\nconst any = 'any'\nexport const b = { any }" }))).toEqual([])
  })

  test('an index that does something', () => {
    fails(busyIndexes, { 'packages/core/src/heat/index.ts': "export { a } from './a.ts'\nexport const b = 1" }, /index\.ts:2/)
    fails(busyIndexes, { 'packages/core/src/index.ts': "import './a.ts'" }, /index\.ts:1/)
    expect(busyIndexes(sample({ 'packages/core/src/heat/index.ts': "export { a } from './a.ts'\nexport * from './b.ts'\nexport {}" }))).toEqual([])
  })
})

describe('dead exports', () => {
  const index = 'packages/core/src/heat/index.ts'
  const path = 'packages/core/src/heat/a.ts'
  const used = 'export const used = 1\n'

  test.each([
    'export const dead = 1',
    'export function dead() {}',
    'export interface dead {}',
    'export type dead = 1',
    'export class dead {}',
    'const dead = 1\nexport { dead }',
  ])('%s', (text) => {
    fails(deadExports, { [index]: "export { used } from './a.ts'", [path]: used + text }, /nothing uses "dead"/)
  })

  test('what only its own test takes is dead', () => {
    fails(deadExports, { [path]: used, 'packages/core/src/heat/a.test.ts': "import { used } from './a.ts'" }, /nothing uses "used"/)
  })

  test('alive by an import, under another name, by a star, by import()', () => {
    for (const user of [
      "import { used } from './a.ts'",
      "import { used as other } from './a.ts'",
      "import * as a from './a.ts'",
      "export * from './a.ts'",
      "const a = import('./a.ts')",
      "import type { used } from './a.ts'",
    ]) {
      expect(deadExports(sample({ [path]: used, 'packages/core/src/heat/b.ts': user })), user).toEqual([])
    }
  })
})

describe('the root', () => {
  const good = Object.fromEntries(
    topLevel.map((name) => [name.includes('.') || name === 'LICENSE' ? name : name === 'packages' ? 'packages/core/a' : `${name}/a`, '']),
  )

  test('as listed passes; a stranger, a missing one and an unknown package fail', () => {
    expect(strangers(sample(good))).toEqual([])
    fails(strangers, { ...good, 'notes.md': '' }, /notes\.md: does not belong at the root/)
    fails(strangers, { ...good, 'scripts/a.mjs': '' }, /scripts: does not belong/)
    fails(strangers, { ...good, 'packages/core/a.ts': '', 'packages/extra/a.ts': '' }, /packages\/extra: is no package/, 1)
    const { LICENSE: _, ...rest } = good
    fails(strangers, rest, /LICENSE: is missing/)
  })
})
