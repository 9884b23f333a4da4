import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { auditRow } from '../audit/index.ts'
import { call } from './call.sample.ts'

const head = 'name,size,insulation,outLengthM,currentA,supplyV,ambientC,fuseA'
const pump = 'pump,16 AWG,XLPE,3,4,12,40,'
const good = { name: 'pump', size: '16 AWG', insulation: 'XLPE', outLengthM: 3, currentA: 4, supplyV: 12, ambientC: 40 }
const table = (...rows: readonly string[]) => `${[head, ...rows].join('\n')}\n`
const rowsOf = async (text: string | Uint8Array, ...options: readonly string[]) => {
  const answer = await call(['audit', '-', '--format', 'ndjson', ...options], text)
  return {
    ...answer,
    rows:
      answer.out === ''
        ? []
        : answer.out
            .trimEnd()
            .split('\n')
            .map((line) => JSON.parse(line)),
  }
}

describe('strandwise audit', () => {
  test('a row of a table is what auditRow says of it; the exit code is that of the list', async () => {
    const { code, rows, err } = await rowsOf(table(pump))
    expect(rows).toEqual([auditRow(good, 2)])
    expect([code, err]).toEqual([0, '1 row: 1 sound, 0 caution, 0 cannot tell, 0 unsound, 0 not usable\n'])
    expect((await rowsOf(table('lamp,0.5 mm²,PVC,3,20,12,40,'))).code).toBe(1)
    expect((await rowsOf(table(pump, 'x,51 AWG,PVC,3,2,12,40,'))).code).toBe(2)
  })

  test('one JSON object per line is read as well; unknown names are reported', async () => {
    const { rows, err } = await rowsOf(`${JSON.stringify({ ...good, colour: 'red' })}\n\n{"bad"\n[1]\n${JSON.stringify({ ...good, currentA: '4 A' })}`)
    expect(rows).toEqual([
      auditRow(good, 1),
      { line: 3, error: { field: '', value: '{"bad"', allowed: 'one JSON object a line' } },
      { line: 4, error: { field: '', value: [1], allowed: 'one JSON object a line' } },
      auditRow(good, 5),
    ])
    expect(err).toMatch(/^not used, for no row has them: colour\n/)
  })

  test.each([
    ['byte order mark', `\ufeff${table(pump)}`],
    ['CRLF', table(pump).replaceAll('\n', '\r\n')],
    ['no line feed at the end', table(pump).trimEnd()],
    ['blanks round the cells', table(' pump , 16 AWG ,XLPE, 3,4 ,12,40,')],
    ['other order, a column of its own', 'colour,ambientC,supplyV,currentA,outLengthM,insulation,size,name\nred,40,12,4,3,XLPE,16 AWG,pump\n'],
  ])('%s changes nothing', async (_title, text) => {
    expect((await rowsOf(text)).rows).toEqual([auditRow(good, 2)])
  })

  test('lines are counted through empty lines and line breaks in quotation marks; bad rows stand in their order', async () => {
    const text = table(
      '"two\nlines",16 AWG,XLPE,3,4,12,40,',
      '',
      'br"oken,16 AWG,XLPE,3,4,12,40,',
      'short,16 AWG',
      `${pump},more`,
      '"a ""b"", c",16 AWG,XLPE,3,4,12,40,',
    )
    const { rows } = await rowsOf(text)
    expect(rows.map(({ line, name, error }) => [line, name ?? error.field])).toEqual([
      [2, 'two\nlines'],
      [5, ''],
      [6, 'insulation'],
      [7, ''],
      [8, 'a "b", c'],
    ])
    expect(rows[1].error.allowed).toMatch(/quotation mark/)
    expect(rows[3].error).toEqual({ field: '', value: 'more', allowed: '8 columns, as in line 1' })
  })

  test.each([
    ['text behind a closing quotation mark', '"x"y,16 AWG,XLPE,3,4,12,40,'],
    ['a quotation mark left open', '"x,16 AWG,XLPE,3,4,12,40,'],
    ['a quotation mark inside a plain cell', 'x"y,16 AWG,XLPE,3,4,12,40,'],
  ])('one bad row spoils no other: %s', async (_title, bad) => {
    const quoted = '"a, b",16 AWG,XLPE,3,4,12,40,'
    for (const others of [
      [pump, pump],
      [quoted, pump],
      [quoted, quoted],
    ]) {
      const { rows } = await rowsOf(table(...others, bad, ...others, '', ...others))
      expect(rows.map(({ line, error }) => [line, error === undefined])).toEqual([2, 3, 4, 5, 6, 8, 9].map((line) => [line, line !== 4]))
    }
  })

  test('CSV: a cell that a spreadsheet would run is text, a name stays on its line', async () => {
    const names = ['=1+1', '+1', '-1', '@a', ' =1', '＝1']
    const { out } = await call(['audit', '-'], table(...names.map((name) => `"${name}",16 AWG,XLPE,3,4,12,40,`), '"a\nb",16 AWG,XLPE,3,4,12,40,'))
    const cells = out
      .trimEnd()
      .split('\n')
      .slice(1)
      .map((line) => line.split(',')[1])
    expect(cells).toEqual(["'=1+1", "'+1", "'-1", "'@a", "' =1", "'＝1", 'a\\u{a}b'])
  })

  test('JSON is one list, Markdown one table in which no name marks up', async () => {
    const text = table(pump, '<script>|*x*,16 AWG,XLPE,3,4,12,40,')
    expect(JSON.parse((await call(['audit', '-', '--format', 'json'], text)).out)).toHaveLength(2)
    expect(JSON.parse((await call(['audit', '-', '--format', 'json'], table())).out)).toEqual([])
    const { out } = await call(['audit', '-', '--format', 'markdown'], text)
    expect(out.split('\n')[3]).toContain('| \\<script\\>\\|\\*x\\* | sound |')
  })

  test('--no-lines: the union of two parts is the whole', async () => {
    const rows = Array.from({ length: 20 }, (_, n) => `wire ${n},16 AWG,XLPE,${n + 1},4,12,40,`)
    const whole = await rowsOf(table(...rows), '--no-lines')
    const parts = await Promise.all([rows.slice(0, 7), rows.slice(7)].map((part) => rowsOf(table(...part), '--no-lines')))
    expect(parts.map(({ out }) => out).join('')).toBe(whole.out)
  })
})

describe('a list that can’t be used is refused in words, exit code 2', () => {
  test.each<readonly [string, string | Uint8Array, RegExp]>([
    ['empty', '', /^-: is empty; allowed: a table with a head/],
    ['binary', Uint8Array.of(0xff, 0xfe, 0, 0x80, 10, 1), /^-: is not text \(UTF-8\)/],
    ['no such columns', 'a,b\n1,2\n', /^-: line 1: name: missing; allowed: a column of that name\n/],
    ['a misspelt column', table(pump).replace('currentA', 'curentA'), /^-: line 1: currentA: missing; .*; "curentA" is close to it\n$/],
    ['a doubled column', table(pump).replace('fuseA', 'size'), /^-: line 1: size: stands twice; allowed: one column of that name\n$/],
    ['300 columns', `${Array.from({ length: 300 }, (_, n) => `c${n}`).join(',')}\n`, /^-: line 1: 300 columns; allowed: at most 200/],
    ['a million columns', `${'c,'.repeat(1_000_000)}\n`, /^-: line 1: 1000001 columns; allowed: at most 200/],
    ['a quotation mark left open', `${head}\n"${pump}\n`.repeat(1) + `${pump}\n`.repeat(40_000), /^-: line 2: more than 1000000 bytes/],
  ])('%s', async (_title, text, words) => {
    const { code, err } = await call(['audit', '-'], text)
    expect(code).toBe(2)
    expect(err).toMatch(words)
    expect(err).not.toMatch(/\n\s+at /)
  })

  test('options', async () => {
    expect((await call(['audit'])).err).toMatch(/give one list of wires/)
    expect((await call(['audit', '-', '--workers', '0'])).err).toBe('--workers: is "0"; allowed: a whole number from 1 to 64\n')
    expect((await call(['audit', '-', '--format', 'xlsx'])).err).toMatch(/allowed: csv, ndjson, json, markdown/)
  })
})

/** More in the long proof. */
const corruptions = Number(process.env.STRANDWISE_CORRUPTIONS ?? 300)

test('corrupted tables: an answer or a refusal, never an error of the program’s own', { timeout: 60_000 + 20 * corruptions }, async () => {
  const clean = table(pump, '"lamp, left",0.5 mm²,PVC,2,1.8,12,40,', 'fan,18 AWG,PVC,3,2,12,40,')
  const cut = fc.record({
    at: fc.nat({ max: clean.length }),
    remove: fc.nat({ max: 8 }),
    put: fc.oneof(fc.constantFrom('"', ',', '\n', '\r', '\0', '\ufeff', '""', '=', '{'), fc.string({ maxLength: 4 })),
  })
  await fc.assert(
    fc.asyncProperty(fc.array(cut, { minLength: 1, maxLength: 5 }), async (cuts) => {
      const text = cuts.reduce((so, { at, remove, put }) => so.slice(0, at) + put + so.slice(at + remove), clean)
      const { code, err } = await call(['audit', '-', '--workers', '1'], text)
      expect(err).not.toMatch(/error of its own/)
      expect(code).toBeLessThanOrEqual(2)
    }),
    { numRuns: corruptions },
  )
})
