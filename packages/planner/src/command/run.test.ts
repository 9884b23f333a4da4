import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { demoJobs } from '../demo/index.ts'
import { run } from './run.ts'

let folder = ''
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'strandwise-'))
})
afterAll(async () => {
  await rm(folder, { recursive: true })
})

async function call(args: readonly string[], input: string | Uint8Array = '') {
  const out: string[] = []
  const err: string[] = []
  async function* standardInput() {
    yield input
  }
  const code = await run(args, { stdin: standardInput(), stdout: { write: (text) => out.push(text) }, stderr: { write: (text) => err.push(text) } })
  return { code, out: out.join(''), err: err.join('') }
}

async function file(name: string, content: string | Uint8Array): Promise<string> {
  const path = join(folder, name)
  await writeFile(path, content)
  return path
}

const lamp = demoJobs['trailer-tail-lamp']

describe('strandwise plan', () => {
  test('a sound job answers 0, an unsound one 1', async () => {
    expect((await call(['plan', '--demo', 'trailer-tail-lamp'])).code).toBe(0)
    const bad = await call(['plan', '--demo', 'bilge-pump-feed'])
    expect(bad.code).toBe(1)
    expect(bad.out).toContain('REPAIR PLAN: UNSOUND')
    expect(bad.err).toBe('')
  })

  test('reads a file and standard input, prints text, Markdown and JSON', async () => {
    const path = await file('job.json', JSON.stringify(lamp))
    const json = await call(['plan', path, '--format', 'json'])
    expect(JSON.parse(json.out).verdict).toBe('sound')
    expect((await call(['plan', '-', '--format', 'markdown'], JSON.stringify(lamp))).out).toContain('# Repair plan')
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
    expect(await bad(['plan', folder])).toMatch(/is not a file/)
    expect(await bad(['plan', join(folder, 'none.json')])).toMatch(/no such file/)
  })

  test('ten megabytes, from a file and from standard input', async () => {
    const large = ' '.repeat(10_000_000)
    expect(await bad(['plan', await file('large.json', large)])).toMatch(/10000000 bytes; allowed: at most/)
    expect(await bad(['plan', '-'], large)).toMatch(/larger than/)
  })

  test('20,000 nested brackets end soon', async () => {
    const text = `{"version": 1, "tools": ${'['.repeat(20_000)}${']'.repeat(20_000)}}`
    expect(await bad(['plan', '-'], text)).toMatch(/circuit: missing/)
  })

  test('a bad field names file, path, value, what is allowed', async () => {
    const text = JSON.stringify({ ...lamp, wire: { ...lamp?.wire, outLengthM: -3 } })
    expect(await bad(['plan', await file('negative.json', text)])).toMatch(/negative\.json: wire\.outLengthM: is -3; allowed: from 0.001 to 500 m; for example/)
  })

  test('an unknown command, option, format or demo', async () => {
    expect(await bad(['plann'])).toMatch(/no command "plann"/)
    expect(await bad([])).toMatch(/no command/)
    expect(await bad(['plan', '--bogus'])).toMatch(/bogus/)
    expect(await bad(['plan', '--demo', 'bilge-pump-feed', '--format', 'pdf'])).toMatch(/allowed: text, markdown, json/)
    expect(await bad(['plan', '--demo', 'bilge-pump'])).toMatch(/the closest is bilge-pump-feed/)
    expect(await bad(['plan'])).toMatch(/give one job file/)
    expect(await bad(['plan', 'a.json', 'b.json'])).toMatch(/give one job file/)
  })
})

test('strandwise demo and strandwise schema print JSON that works', async () => {
  expect((await call(['demo'])).out.split('\n')).toContain('bilge-pump-feed')
  const printed = (await call(['demo', 'bilge-pump-feed'])).out
  expect((await call(['plan', '-'], printed)).code).toBe(1)
  const schema = JSON.parse((await call(['schema'])).out)
  expect(schema.properties.load.properties.currentA).toMatchObject({ title: 'Load current', description: expect.stringContaining(' A.') })
})
