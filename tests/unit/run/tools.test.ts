import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { withShortLists } from '../../prove/results.ts'
import { findChromium } from '../../run/chromium.mjs'
import { npmEnvironment, root } from '../../run/place.mjs'
import { run } from '../../run/terminal.mjs'
import { counts } from '../../run/vitest.mjs'

let folder: string

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'strandwise-tools-'))
  writeFileSync(join(folder, 'chromium'), '#!/bin/sh\n')
  chmodSync(join(folder, 'chromium'), 0o755)
  writeFileSync(join(folder, 'plain'), '')
})

afterAll(() => rmSync(folder, { recursive: true }))

describe('the browser', () => {
  test('the one that the environment names comes first', () => {
    expect(findChromium({ CHROMIUM_PATH: join(folder, 'chromium') })).toBe(join(folder, 'chromium'))
    expect(findChromium({ CHROME_PATH: join(folder, 'chromium') })).toBe(join(folder, 'chromium'))
  })

  test('a name that is no program is told, not passed over', () => {
    expect(() => findChromium({ CHROMIUM_PATH: join(folder, 'plain') })).toThrow(/CHROMIUM_PATH names .*plain.*no program/)
    expect(() => findChromium({ CHROMIUM_PATH: join(folder, 'nothing') })).toThrow(/unset it/)
  })
})

describe('commands', () => {
  test('both streams and the exit code come back', async () => {
    const script = "process.stdout.write('out '); process.stderr.write('err'); process.exitCode = 3"
    const { code, output } = await run(process.execPath, ['-e', script])
    expect([code, output.includes('out '), output.includes('err')]).toEqual([3, true, true])
  })

  test('a program that is not there, and one that was ended, are failures', async () => {
    expect((await run(join(folder, 'nothing'), [])).code).toBe(127)
    const ended = await run(process.execPath, ['-e', "process.kill(process.pid, 'SIGTERM'); setTimeout(() => {}, 10_000)"])
    expect([ended.code, ended.output]).toEqual([1, 'ended by SIGTERM\n'])
  })

  test('npm runs without the folders that it is about to replace', () => {
    const before = process.env.PATH
    process.env.PATH = `${root}node_modules/.bin:${folder}`
    try {
      expect(npmEnvironment().PATH).toBe(folder)
    } finally {
      process.env.PATH = before
    }
  })
})

describe('counting', () => {
  const file = (status: string, ...tests: readonly string[]) => ({ status, assertionResults: tests.map((one) => ({ status: one })) })
  const report = (numPassedTests: number, numFailedTests: number, ...testResults: readonly object[]) => ({
    numPassedTests,
    numFailedTests,
    numPendingTests: 0,
    numTodoTests: 0,
    testResults,
  })

  test('tests, and files that could not be loaded', () => {
    expect(counts(report(2, 1, file('passed', 'passed'), file('failed', 'passed', 'failed')))).toEqual({ passed: 2, failed: 1, left: 0 })
    expect(counts(report(1, 0, file('passed', 'passed'), file('failed')))).toEqual({ passed: 1, failed: 1, left: 0 })
  })
})

test('a dated report prints thirty items of a list and counts the rest', () => {
  const list = (length: number): string => Array.from({ length }, (_, n) => `- item ${n}\n`).join('')
  expect(withShortLists(`before\n\n${list(30)}\nafter`)).toBe(`before\n\n${list(30)}\nafter`)
  expect(withShortLists(`before\n\n${list(35)}\nafter`)).toBe(`before\n\n${list(30)}- and 5 more\n\nafter`)
})
