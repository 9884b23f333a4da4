import { describe, expect, test } from 'vitest'
import { codeOf, packageArrows, packageOrder, plannerRoomOrder, roomArrows, roomOrder } from './arrows.ts'
import { fails } from './fails.ts'
import { mathjsDoors, outsideImports, packageName, testsInside, unresolved } from './outside.ts'
import { sample } from './tree.ts'

describe('arrows between packages', () => {
  test('core may not import planner, by name or by path', () => {
    fails(packageArrows, { 'packages/core/src/heat/a.ts': "import { b } from '@strandwise/planner'\n" }, /a\.ts:1: core imports planner/)
    fails(packageArrows, { 'packages/core/src/heat/a.ts': "\nexport { b } from '../../../planner/src/b.ts'\n" }, /a\.ts:2: core imports planner/)
  })

  test('every pair in the wrong order fails, every pair in the right one passes', () => {
    for (const [i, from] of packageOrder.entries()) {
      for (const [j, to] of packageOrder.entries()) {
        if (i === j || to === 'site') continue
        const path = from === 'site' ? 'site/src/a.ts' : `packages/${from}/src/a.ts`
        const findings = packageArrows(sample({ [path]: `import type { B } from '@strandwise/${to}/x'` }))
        expect(findings.length, `${from} -> ${to}`).toBe(j > i ? 1 : 0)
      }
    }
  })

  test('import(), import types and tests count', () => {
    fails(packageArrows, { 'packages/core/src/a.ts': "const b = import('@strandwise/working')" }, /core imports working/)
    fails(packageArrows, { 'packages/core/src/a.ts': "type B = import('@strandwise/working').B" }, /core imports working/)
    fails(packageArrows, { 'packages/core/src/heat/a.test.ts': "import { b } from '@strandwise/working'" }, /core imports working/)
  })

  test('a package is entered by its name, and not by its own name from inside', () => {
    fails(packageArrows, { 'packages/planner/src/a.ts': "import { b } from '../../core/src/heat/b.ts'" }, /reaches into core by a path/)
    fails(packageArrows, { 'packages/core/src/a.ts': "import { b } from '@strandwise/core/heat'" }, /its own package by name/)
    fails(packageArrows, { 'packages/core/src/a.ts': "import { b } from '../../../references/b.ts'" }, /outside the packages/)
    expect(packageArrows(sample({ 'packages/core/src/a.test.ts': "import { b } from '../../../references/b.ts'" }))).toEqual([])
  })

  test('an .astro page is read too', () => {
    const page =
      "---\nimport { b } from '../../packages/core/src/b.ts'\n---\n<p>import nothing</p>\n<script>\nimport '../../packages/core/src/c.ts'\n</script>\n"
    fails(packageArrows, { 'site/src/a.astro': page }, /a\.astro:2: reaches into core/, 2)
    expect(codeOf({ path: 'a.astro', text: page }).text.split('\n')[3]).toBe('')
  })
})

describe('arrows between rooms', () => {
  test.each([
    ['core', roomOrder],
    ['planner', plannerRoomOrder],
  ] as const)('%s: every pair in the wrong order fails, every pair in the right one passes', (house, order) => {
    for (const [i, from] of order.entries()) {
      for (const [j, to] of order.entries()) {
        if (i === j) continue
        const findings = roomArrows(sample({ [`packages/${house}/src/${from}/a.ts`]: `import { b } from '../${to}/index.ts'` }))
        expect(findings.length, `${from} -> ${to}`).toBe(j > i ? 1 : 0)
      }
    }
  })

  test('a room is entered by its index, is known, and takes nothing from the root', () => {
    fails(roomArrows, { 'packages/core/src/heat/a.ts': "import { b } from '../errors/require.ts'" }, /goes past the door of room errors/)
    expect(roomArrows(sample({ 'packages/core/src/ampacity/a.ts': "import { b } from '../heat/inner.ts'" }))).toEqual([])
    fails(roomArrows, { 'packages/core/src/attic/a.ts': 'export const a = 1' }, /"attic" is no room of core/)
    fails(roomArrows, { 'packages/core/src/heat/a.ts': "import { b } from '../index.ts'" }, /a room imports "\.\.\/index\.ts"/)
    expect(roomArrows(sample({ 'packages/core/src/heat/a.test.ts': "import { b } from '../suitability/index.ts'" }))).toEqual([])
  })
})

describe('what packages take from outside', () => {
  const manifest = JSON.stringify({ dependencies: { zod: '4.0.0' } })

  test('a package that the manifest does not name, and Node anywhere but in the command', () => {
    fails(
      outsideImports,
      { 'packages/core/package.json': '{}', 'packages/core/src/a.ts': "import * as z from 'zod/mini'" },
      /does not name.*core has no dependency/,
    )
    fails(outsideImports, { 'packages/planner/package.json': manifest, 'packages/planner/src/a.ts': "import { b } from 'left'" }, /exact version/)
    fails(outsideImports, { 'packages/planner/package.json': manifest, 'packages/planner/src/a.ts': "import { b } from 'node:fs'" }, /imports "node:fs"/)
    const good = {
      'packages/planner/package.json': manifest,
      'packages/planner/src/command/a.ts': "import { b } from 'node:fs'\nimport * as z from 'zod/mini'",
    }
    expect(outsideImports(sample(good))).toEqual([])
    const inside = (imports: object) => JSON.stringify({ dependencies: { zod: '4.0.0' }, imports })
    const use = { 'packages/planner/src/a.ts': "import { z } from '#z'" }
    expect(outsideImports(sample({ 'packages/planner/package.json': inside({ '#z': { browser: 'zod/mini', default: 'zod' } }), ...use }))).toEqual([])
    fails(outsideImports, { 'packages/planner/package.json': inside({ '#z': { browser: 'left', default: 'zod' } }), ...use }, /does not name/)
    fails(outsideImports, { 'packages/planner/package.json': inside({}), ...use }, /imports "#z"/)
    expect(packageName('@a/b/c')).toBe('@a/b')
  })

  test('a second door to mathjs, and any door outside working', () => {
    const door = { 'packages/working/src/formulas/mathematics.ts': "import { create } from 'mathjs/number'" }
    expect(mathjsDoors(sample(door))).toEqual([])
    fails(mathjsDoors, { ...door, 'packages/working/src/quantity/a.ts': "import { unit } from 'mathjs'" }, /quantity\/a\.ts: imports mathjs/)
    fails(mathjsDoors, { ...door, 'site/src/a.ts': "import('mathjs')" }, /site\/src\/a\.ts/)
    fails(mathjsDoors, { 'site/src/a.ts': "import('mathjs')" }, /site\/src\/a\.ts/)
  })

  test('a relative import that is not there', () => {
    fails(unresolved, { 'packages/core/src/a.ts': "import { b } from './b'", 'packages/core/src/b.ts': '' }, /"\.\/b", which is not there/)
    expect(unresolved(sample({ 'packages/core/src/a.ts': "import { b } from './b.ts'", 'packages/core/src/b.ts': '' }))).toEqual([])
  })

  test('only tests take from samples', () => {
    const from = "import { wire } from './a.sample.ts'"
    fails(testsInside, { 'packages/core/src/solder/a.ts': from }, /a\.ts:1: imports "\.\/a\.sample\.ts"/)
    expect(testsInside(sample({ 'packages/core/src/solder/a.test.ts': from, 'packages/core/src/solder/b.sample.ts': from }))).toEqual([])
  })
})
