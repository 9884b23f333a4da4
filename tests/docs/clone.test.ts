import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Explanation } from '@strandwise/working/formulas'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { root } from '../repository/tree.ts'
import { Clone } from './clone.ts'
import { asArguments, notedIn, printsOneOf, someOf } from './explained.ts'
import { type Fence, fencesIn } from './fences.ts'
import { checkedOnly, commandsIn } from './shell.ts'

const documents = ['README.md', 'DEVELOPERS.md'].filter((name) => existsSync(root + name))
const shell = new Set(['sh', 'bash', 'console'])
const scripts = (JSON.parse(readFileSync(`${root}package.json`, 'utf8')) as { readonly scripts: Readonly<Record<string, string>> }).scripts

/** True for GNU parallel, a Debian package; another program of that name lacks --pipe. */
function hasParallel(): { readonly there: boolean; readonly why: string } {
  const { stdout } = spawnSync('parallel', ['--version'], { encoding: 'utf8' })
  return { there: /GNU parallel/.test(stdout ?? ''), why: 'left out, for GNU parallel is not installed ("apt-get install parallel")' }
}

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
      // Exit code 1 means that a plan holds something unsound: a result, not a failure.
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

  describe('a plan’s numbers, computed again by "strandwise explain" in a process of their own', () => {
    const names = ['bilge-pump-feed', 'workshop-led-strip', 'market-stall-fridge']
    const quoted = (text: string) => `'${text.replaceAll("'", "'\\''")}'`

    test.each(names)('%s', async (name) => {
      const { output } = await clone.run(`${strandwise} plan --demo ${name} --format json`)
      const noted = notedIn(name, JSON.parse(output)).filter(({ values }) => values.length > 0)
      for (const { at, working, values } of someOf(noted, 2)) {
        const answer = await clone.run([strandwise, 'explain', working.id, ...asArguments(working.inputs).map(quoted), '--format json'].join(' '))
        expect(answer.code, `${at}\n${answer.output}`).toBe(0)
        const { value, steps } = JSON.parse(answer.output) as Explanation
        const numbers = [value, ...steps.flatMap((step) => step.value ?? [])]
        expect(
          values.some((one) => printsOneOf(one, numbers)),
          `${at}: ${numbers}`,
        ).toBe(true)
      }
    })
  })

  describe('an audit in parts', () => {
    const parallel = hasParallel()
    const kinds = ['PVC', 'XLPE', 'ETFE', 'silicone']
    /** Enough for threads and for several parts. */
    const rows = 10_000
    const sizes = ['18 AWG', '1.5 mm²', '0.5 mm²', '10 AWG']
    beforeAll(() => {
      const lines = Array.from({ length: rows }, (_, n) => `"wire, ${n}",${sizes[n % 4]},${kinds[n % 3]},${1 + (n % 17)},${1 + (n % 13)},12,${20 + (n % 41)}`)
      writeFileSync(join(clone.folder, 'wires.csv'), `name,size,insulation,outLengthM,currentA,supplyV,ambientC\n${lines.join('\n')}\n`)
    })

    test('threads give the same bytes as one', async () => {
      for (const format of ['csv', 'ndjson', 'json', 'markdown']) {
        const { output } = await clone.run(
          `cmp <(${strandwise} audit wires.csv --workers 1 --format ${format} 2>/dev/null) <(${strandwise} audit wires.csv --workers 3 --format ${format} 2>/dev/null) && echo same`,
        )
        expect(output, format).toBe('same\n')
      }
    })

    test('a reader slower than the audit is waited for, without a word', async () => {
      const { output } = await clone.run(`{ ${strandwise} audit wires.csv --workers 1 | (sleep 1; wc -l); } 2>&1`)
      expect(output).toMatch(new RegExp(`^${rows} rows: [^\\n]*\\n${rows + 1}\\n$`))
    })

    test('a reader that goes away ends it', async () => {
      const { output } = await clone.run(`${strandwise} audit wires.csv 2>/dev/null | head -n 2 | wc -l`)
      expect(output.trim()).toBe('2')
    })

    test.runIf(parallel.there)(
      `under GNU parallel the union of the parts is the whole, byte for byte${parallel.there ? '' : `: ${parallel.why}`}`,
      async () => {
        const filter = `${strandwise} audit - --no-lines --format ndjson`
        const parts = `parallel --will-cite --pipe --header : --block 100k --keep-order '${filter} 2>/dev/null' < wires.csv`
        const { output } = await clone.run(`cmp <(${parts}) <(${filter} < wires.csv 2>/dev/null) && ${parts} | wc -l`)
        expect(output.trim()).toBe(String(rows))
      },
    )
  })

  test('before it is built it says what to do', async () => {
    const { code, output } = await clone.run(`mv packages/planner/dist kept && ${strandwise} plan a; code=$?; mv kept packages/planner/dist; exit $code`)
    expect({ code, output }).toEqual({ code: 3, output: expect.stringMatching(/not built yet; run "npm start"/) })
  })
})
