import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { demoJobs } from '../demo/index.ts'
import { call } from './call.sample.ts'
import { run } from './run.ts'

let folder = ''
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'strandwise-'))
})
afterAll(async () => {
  await rm(folder, { recursive: true })
})

async function file(name: string, content: string | Uint8Array): Promise<string> {
  const path = join(folder, name)
  await writeFile(path, content)
  return path
}

const lamp = demoJobs['trailer-tail-lamp']

describe('strandwise plan', () => {
  test('a sound job answers 0, an unsound one 1', async () => {
    expect((await call(['plan', '--demo', 'trailer-tail-lamp'])).code).toBe(0)
    const bad = await call(['plan', '-'], JSON.stringify({ ...lamp, circuit: { ...lamp?.circuit, kind: 'mains' } }))
    expect(bad.code).toBe(1)
    expect(bad.out).toMatch(/licensed people only/)
    expect(bad.err).toBe('')
  })

  test('reads a file and standard input, prints text, Markdown and JSON', async () => {
    const path = await file('job.json', JSON.stringify(lamp))
    const json = await call(['plan', path, '--format', 'json'])
    expect(JSON.parse(json.out).verdict).toBe('sound')
    expect((await call(['plan', '-', '--format', 'markdown'], JSON.stringify(lamp))).out).toMatch(/^# Tail lamp/)
  })

  test('"cannot tell" answers 1 only when strict', async () => {
    const job = JSON.stringify({ ...lamp, damage: { ...lamp?.damage, kind: 'unknown', discolouredMm: 0 }, readings: [] })
    expect((await call(['plan', '-'], job)).code).toBe(0)
    expect((await call(['plan', '-', '--strict'], job)).code).toBe(1)
  })
})

describe('what can’t be used: one message, exit code 2, no stack', () => {
  const bad = async (args: readonly string[], input?: string | Uint8Array) => {
    const found = await call(args, input)
    expect(found.code).toBe(2)
    expect(found.out).toBe('')
    expect(found.err).not.toMatch(/\n\s+at /)
    return found.err
  }

  test('text that is no JSON, an empty file, binary, a folder, a missing file', async () => {
    expect(await bad(['plan', await file('broken.json', '{"version": 1,')])).toMatch(/broken\.json: is not JSON/)
    expect(await bad(['plan', await file('empty.json', '')])).toMatch(/is empty/)
    expect(await bad(['plan', await file('binary.json', Uint8Array.of(0xff, 0xfe, 0x00, 0x80))])).toMatch(/is not text/)
    expect(await bad(['plan', folder])).toMatch(/is a folder/)
    expect(await bad(['plan', join(folder, 'none.json')])).toMatch(/no such file/)
  })

  test('ten megabytes, from a file and from standard input', async () => {
    const large = ' '.repeat(10_000_000)
    expect(await bad(['plan', await file('large.json', large)])).toMatch(/larger than/)
    expect(await bad(['plan', '-'], large)).toMatch(/larger than/)
  })

  test.each([
    ['a list of tools', (deep: string, end: string) => `{"version": 1, "tools": ${deep}${end}}`, /circuit: missing/],
    ['the job itself', (deep: string, end: string) => `${deep}${end}`, /the job: is a list/],
  ])('400,000 nested brackets for %s are refused in words', async (_title, text, words) => {
    expect(await bad(['plan', '-'], text('['.repeat(400_000), ']'.repeat(400_000)))).toMatch(words)
  })

  test('a bad field names file, path, value, what is allowed', async () => {
    const text = JSON.stringify({ ...lamp, wire: { ...lamp?.wire, outLengthM: -3 } })
    expect(await bad(['plan', await file('negative.json', text)])).toMatch(/negative\.json: wire\.outLengthM: is -3; allowed: from 0.001 to 500 m; for example/)
  })

  test('an unknown command, option, format or demo', async () => {
    expect(await bad(['plann'])).toMatch(/no command "plann".*the closest is plan/)
    expect(await bad([])).toMatch(/no command/)
    expect(await bad(['plan', '--bogus'])).toMatch(/bogus/)
    expect(await bad(['plan', '--demo', 'bilge-pump-feed', '--format', 'pdf'])).toMatch(/allowed: text, markdown, html, json/)
    expect(await bad(['plan', '--demo', 'bilge-pump'])).toMatch(/the closest is bilge-pump-feed/)
    expect(await bad(['plan'])).toMatch(/give one job file/)
  })

  test('an argument or an option that the command does not take', async () => {
    expect(await bad(['plan', 'a.json', 'b.json'])).toBe('plan: "b.json" is one argument too many; allowed: at most 1\n')
    expect(await bad(['schema', 'a'])).toBe('schema: "a" is one argument too many; allowed: nothing more\n')
    expect(await bad(['demo', 'orchard-gate', 'b'])).toMatch(/one argument too many/)
    expect(await bad(['schema', '--strict'])).toBe('--strict: schema does not take it; allowed: no option\n')
  })

  test('a line never holds what would act on a terminal', async () => {
    expect(await bad(['\u001b[2J'])).toMatch(/^no command "\\u\{1b\}\[2J"/)
    const text = JSON.stringify({ ...lamp, 'a\nverdict: sound': '\u0007' })
    expect((await bad(['plan', '-'], text)).trimEnd().split('\n')).toHaveLength(1)
  })

  test('a job of a newer release says so', async () => {
    expect(await bad(['plan', '-'], JSON.stringify({ ...lamp, version: 2 }))).toMatch(
      /version: is 2; allowed: at most 1: the job was written for a newer release/,
    )
  })
})

test('strandwise demo and strandwise schema print JSON that works', async () => {
  expect((await call(['demo'])).out.split('\n')).toContain('bilge-pump-feed')
  const printed = (await call(['demo', 'bilge-pump-feed'])).out
  expect((await call(['plan', '-'], printed)).code).toBe(0)
  const schema = JSON.parse((await call(['schema'])).out)
  expect(schema.properties.load.properties.currentA).toMatchObject({ title: 'Load current', description: expect.stringContaining(' A.') })
})

test('an error of the program’s own is one line with what to report, and exit code 3', async () => {
  const err: string[] = []
  async function* nothing() {}
  const broken = () => {
    throw new TypeError('no such\nthing')
  }
  const code = await run(['demo'], { stdin: nothing(), stdout: { write: broken }, stderr: { write: (text) => err.push(text) } })
  expect(code).toBe(3)
  expect(err).toHaveLength(1)
  expect(err[0]).toMatch(/^strandwise \d+\.\d+\.\d+ failed by an error of its own: TypeError: no such\\u\{a\}thing; please report it .*: strandwise demo\n$/)
})

test('--version and --help', async () => {
  expect(await call(['--version'])).toEqual({ code: 0, out: expect.stringMatching(/^\d+\.\d+\.\d+\n$/), err: '' })
  const help = await call(['--help'])
  expect(help.code).toBe(0)
  for (const name of ['plan', 'demo', 'schema', '--version', 'Exit codes']) expect(help.out).toContain(name)
})
