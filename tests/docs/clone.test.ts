import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { root } from '../repository/tree.ts'
import { Clone } from './clone.ts'
import { type Fence, fencesIn } from './fences.ts'
import { checkedOnly, commandsIn } from './shell.ts'

const documents = ['README.md', 'DEVELOPERS.md'].filter((name) => existsSync(root + name))
const shell = new Set(['sh', 'bash', 'console'])
const scripts = (JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as { readonly scripts: Readonly<Record<string, string>> }).scripts

const clone = new Clone()
beforeAll(async () => {
  const { code, output } = await clone.start()
  expect(code, output).toBe(0)
}, 300_000)
afterAll(() => clone.end())

describe.each(documents)('%s, typed into a fresh clone as it is printed', (name) => {
  const fences = fencesIn(readFileSync(root + name, 'utf8'))
  const blocks = fences.filter(({ language }) => shell.has(language)).map((fence): readonly [string, Fence] => [`line ${fence.line}`, fence])

  beforeAll(() => {
    for (const { file, text } of fences) if (file !== undefined) writeFileSync(join(clone.folder, file), `${text}\n`)
  })

  test.each(blocks)('commands in %s run', async (_line, fence) => {
    let printed = ''
    for (const command of commandsIn(fence)) {
      const verdict = checkedOnly(command, scripts)
      if (verdict !== 'run') {
        expect(verdict).toBe('fine')
        continue
      }
      const { code, output } = await clone.run(command)
      // 1 means that a plan holds something unsound: an answer, not a failure.
      expect(code, `${command}\n${output}`).toBeLessThanOrEqual(1)
      printed += output
    }
    const next = fences[fences.indexOf(fence) + 1]
    if (next?.language === 'text' && printed !== '') expect(printed.trimEnd()).toBe(next.text.trimEnd())
  })
})

test('a script that package.json lacks is told; other commands run in the clone', async () => {
  expect(checkedOnly('npm run nothing', scripts)).toMatch(/no script "nothing"/)
  expect(checkedOnly('npm start', scripts)).toBe('fine')
  expect(checkedOnly('npx strandwise plan a', scripts)).toBe('run')
  expect(await clone.run('head -c 12 README.md; false | cat')).toEqual({ code: 1, output: '# Strandwise' })
})

describe('the command in a shell', () => {
  const strandwise = 'node_modules/.bin/strandwise'
  const job = `${strandwise} demo trailer-tail-lamp`

  test.each([
    ['a reader that goes away', `${strandwise} schema | true`, 0, /^$/],
    ['a full disk', `${strandwise} schema > /dev/full`, 2, /^standard output can't be written \(ENOSPC\)\n$/],
    ['a full disk for the messages as well', `${strandwise} schema > /dev/full 2> /dev/full`, 2, /^$/],
    ['a job on standard input, by its path', `${job} | ${strandwise} plan /dev/stdin | tail -n 1`, 0, /\S/],
    ['a job from a process substitution', `${strandwise} plan <(${job}) | tail -n 1`, 0, /\S/],
    ['an endless file', `${strandwise} plan /dev/zero`, 2, /larger than 1000000 bytes/],
    ['a name that would colour the terminal', `${strandwise} plan $'a\\033[31m.json'`, 2, /^a\\u\{1b\}\[31m\.json: there is no such file\n$/],
  ])('%s', async (_title, command, code, output) => {
    const answer = await clone.run(command)
    expect(answer.output).toMatch(output)
    expect(answer.output).not.toMatch(/\n\s+at /)
    expect(answer.code, answer.output).toBe(code)
  })

  test('before it is built it says what to do', async () => {
    const { code, output } = await clone.run(`mv packages/planner/dist kept && ${strandwise} plan a; code=$?; mv kept packages/planner/dist; exit $code`)
    expect({ code, output }).toEqual({ code: 3, output: expect.stringMatching(/not built yet; run "npm start"/) })
  })
})
