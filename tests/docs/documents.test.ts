import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { root } from '../repository/tree.ts'
import { type Fence, fencesIn, runnable } from './fences.ts'
import { differences } from './printed.ts'
import { checkedOnly, commandsIn, Shell } from './shell.ts'

const documents = ['README.md', 'DEVELOPERS.md'].filter((name) => existsSync(root + name))
const rooms = import.meta.glob<Record<string, unknown>>('../../packages/*/src/{index,*/index}.ts')
const code = new Set(['ts', 'js', 'mjs', 'typescript', 'javascript'])
const shell = new Set(['sh', 'bash', 'console'])

/** '@strandwise/core/heat' as a user imports it, from the sources. */
async function load(specifier: string): Promise<Record<string, unknown>> {
  const [, name = '', room] = /^@strandwise\/(\w+)(?:\/(\w+))?$/.exec(specifier) ?? []
  const found = rooms[`../../packages/${name}/src/${room === undefined ? '' : `${room}/`}index.ts`]
  return found === undefined ? ((await import(/* @vite-ignore */ specifier)) as Record<string, unknown>) : found()
}

/** Runs a block of code; what it prints behind an expression must be what it gives. Returns what differs, and how many were compared. */
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

const scripts = (JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as { readonly scripts: Readonly<Record<string, string>> }).scripts

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

  test.each(fences.filter(({ language }) => shell.has(language)).map((fence) => [at(fence), fence] as const))('commands in %s run', async (_line, fence) => {
    const place = new Shell(fences)
    try {
      let printed = ''
      for (const command of commandsIn(fence)) {
        const verdict = checkedOnly(command, scripts)
        if (verdict !== 'run') expect(verdict).toBe('fine')
        else {
          const { code: exitCode, output } = await place.run(command)
          // 1 means that a plan holds something unsound: an answer, not a failure.
          expect(exitCode, `${command}\n${output}`).toBeLessThanOrEqual(1)
          printed += output
        }
      }
      const next = fences[fences.indexOf(fence) + 1]
      if (next?.language === 'text' && printed !== '') expect(printed.trimEnd()).toBe(next.text.trimEnd())
    } finally {
      place.end()
    }
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

  test('a script that package.json lacks is told; other commands run where the data are', async () => {
    expect(checkedOnly('npm run nothing', scripts)).toMatch(/no script "nothing"/)
    expect(checkedOnly('npm start', scripts)).toBe('fine')
    expect(checkedOnly('strandwise plan a', scripts)).toBe('run')
    const place = new Shell([{ language: 'json', file: 'job.json', text: '{}', line: 1 }])
    expect(await place.run('cat job.json')).toEqual({ code: 0, output: '{}\n' })
    expect((await place.run('cat nothing | cat')).code).toBe(1)
    place.end()
  })
})
