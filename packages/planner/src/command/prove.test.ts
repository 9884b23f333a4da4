import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { bilgePumpFeed } from '../demo/index.ts'
import { call } from './call.sample.ts'

const folder = mkdtempSync(join(tmpdir(), 'strandwise-'))
afterAll(() => rmSync(folder, { recursive: true }))
const file = (name: string, value: unknown): string => {
  const path = join(folder, name)
  writeFileSync(path, typeof value === 'string' ? value : JSON.stringify(value))
  return path
}
const job = file('job.json', { ...bilgePumpFeed, intendedMethod: 'crimped-butt-splice' })
const ratio = (high: number) => [{ joint: 1, jointV: { low: high - 0.0001, high }, wireV: { low: 0.0016, high: 0.0017 }, wireLengthMm: 25 }]
const good = file('good.json', { date: '2026-05-04', readings: [], ratio: ratio(0.0013) })

describe('strandwise prove', () => {
  test('prints the record, and its exit code is the verdict', async () => {
    const proven = await call(['prove', job, good])
    expect(proven).toMatchObject({ code: 0, err: '' })
    expect(proven.out).toContain('PROVEN')
    expect((await call(['prove', job, file('bad.json', { date: '2026-05-04', readings: [], ratio: ratio(0.003) })])).code).toBe(1)
    const untold = file('untold.json', { date: '2026-05-04', readings: [] })
    expect((await call(['prove', job, untold])).code).toBe(0)
    expect((await call(['prove', job, untold, '--strict'])).code).toBe(1)
  })
  test('prints JSON and a page', async () => {
    const { out } = await call(['prove', job, good, '--format', 'json'])
    expect(JSON.parse(out)).toMatchObject({ verdict: 'proven', record: { date: '2026-05-04' } })
    expect((await call(['prove', job, good, '--format', 'html'])).out).toMatch(/^<!doctype html>/)
  })
  test('what cannot be used is named by file and field', async () => {
    expect(await call(['prove', job])).toMatchObject({ code: 2, out: '' })
    const bad = await call(['prove', job, file('noDate.json', { readings: [] })])
    expect(bad.code).toBe(2)
    expect(bad.err).toContain('noDate.json: found.date: missing')
    expect((await call(['prove', job, file('text.json', 'no JSON')])).err).toContain('text.json: is not JSON')
    expect((await call(['prove', file('other.json', { version: 1 }), good])).err).toContain('other.json: ')
  })
})
