import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { root } from '../repository/tree.ts'
import { type Fence, fencesIn, runnable } from './fences.ts'
import { differences } from './printed.ts'

const documents = ['README.md', 'DEVELOPERS.md', 'packages/core/README.md', 'packages/working/README.md', 'packages/planner/README.md'].filter((name) =>
  existsSync(root + name),
)
const rooms = import.meta.glob<Record<string, unknown>>('../../packages/*/src/{index,*/index}.ts')
const code = new Set(['ts', 'js', 'mjs', 'typescript', 'javascript'])

/** Loads '@strandwise/core/heat' and the like from the sources. */
async function load(specifier: string): Promise<Record<string, unknown>> {
  const [, name = '', room] = /^@strandwise\/(\w+)(?:\/(\w+))?$/.exec(specifier) ?? []
  const found = rooms[`../../packages/${name}/src/${room === undefined ? '' : `${room}/`}index.ts`]
  return found === undefined ? ((await import(/* @vite-ignore */ specifier)) as Record<string, unknown>) : found()
}

/** Runs a block of code and compares each printed result. Returns the differences, and the number of comparisons. */
async function runCode(text: string): Promise<{ readonly found: readonly string[]; readonly compared: number }> {
  const found: string[] = []
  let compared = 0
  const check = async (got: unknown, printed: string): Promise<void> => {
    compared += 1
    found.push(...differences(await got, printed))
  }
  const silent = { log: () => undefined, table: () => undefined }
  const run = new Function('load', 'check', 'console', `return (async () => {\n${runnable(text).replace(/^check\(/gm, 'await check(')}\n})()`)
  await run(load, check, silent)
  return { found, compared }
}

describe.each(documents)('%s', (name) => {
  const fences = fencesIn(readFileSync(root + name, 'utf8'))
  const at = (fence: Fence): string => `line ${fence.line}`

  test.each(fences.filter(({ language }) => code.has(language)).map((fence) => [at(fence), fence] as const))(
    'code in %s runs and gives what it prints',
    async (_line, fence) => {
      expect((await runCode(fence.text)).found).toEqual([])
    },
  )

  test.each(fences.filter(({ language }) => language === 'json').map((fence) => [at(fence), fence] as const))('data in %s is JSON', (_line, fence) => {
    expect(() => JSON.parse(fence.text) as unknown).not.toThrow()
  })
})

describe('the means of these tests', () => {
  test('blocks are found with their language, file and line', () => {
    const fences = fencesIn('a\n```ts\nb\n```\n\n```json job.json\n{}\n```\n')
    expect(fences).toEqual([
      { language: 'ts', file: undefined, text: 'b', line: 2 },
      { language: 'json', file: 'job.json', text: '{}', line: 6 },
    ])
    expect(() => fencesIn('```ts\n')).toThrow(/line 1 has no end/)
  })

  test('what a block prints is compared', async () => {
    const block = (printed: string) =>
      `import { DomainError, requirePositive as positive } from '@strandwise/core/errors'\nimport type { Metal } from '@strandwise/core'\nconst a: number = positive('a', 2)\na // ${printed}\nconsole.log({ a }) // { a: ${printed} }\nDomainError.name // 'DomainError'`
    expect(await runCode(block('2'))).toEqual({ found: [], compared: 3 })
    expect((await runCode(block('3'))).found.length).toBe(2)
    await expect(runCode("import { nothing } from '@strandwise/core'\nnothing()")).rejects.toThrow(TypeError)
  })
})
