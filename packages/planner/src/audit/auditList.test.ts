import { expect, test } from 'vitest'
import { call } from '../command/call.sample.ts'
import { auditColumns, auditCsv, auditList, auditRow, ListError } from './index.ts'

const head = 'name,size,insulation,outLengthM,currentA,supplyV,ambientC'
const pump = { name: 'pump', size: '16 AWG', insulation: 'XLPE', outLengthM: 3, currentA: 4, supplyV: 12, ambientC: 40 }
const text = `${head},colour\r\npump,16 AWG,XLPE,3,4,12,40,red\r\n"=1+1",51 AWG,XLPE,3,4,12,40,\r\n`
const collected = async (...args: Parameters<typeof auditList>) => {
  const found = []
  for await (const result of auditList(...args)) found.push(result)
  return found
}

test('auditList: the rows of a table are judged as auditRow judges them, unknown columns are told once', async () => {
  const unused: string[] = []
  const found = await collected(text, (name) => unused.push(name))
  expect(found).toEqual([auditRow(pump, 2), { line: 3, error: expect.objectContaining({ field: 'size', value: '51 AWG' }) }])
  expect(unused).toEqual(['colour'])
})

test('auditList: bytes in pieces and JSON lines give the same rows', async () => {
  const bytes = new TextEncoder().encode(text)
  async function* pieces() {
    for (let at = 0; at < bytes.length; at += 7) yield bytes.subarray(at, at + 7)
  }
  expect(await collected(pieces())).toEqual(await collected(text))
  expect(await collected(`${JSON.stringify(pump)}\n${JSON.stringify({ ...pump, colour: 1 })}`)).toMatchObject([{ name: 'pump' }, { name: 'pump' }])
})

test.each<readonly [string, string | Uint8Array, RegExp]>([
  ['empty', '', /^is empty/],
  ['binary', Uint8Array.of(0xff, 0xfe, 10), /^is not text \(UTF-8\)/],
  ['without a column', 'name\n', /^line 1: insulation: missing/],
  ['a quotation mark left open', `${head}\n"${'a,b\n'.repeat(300_000)}`, /^line 2: more than 1000000 bytes/],
])('auditList: a list that is %s is refused as ListError', async (_title, list, words) => {
  async function* bytes() {
    yield list as Uint8Array
  }
  const refused = await collected(typeof list === 'string' ? list : bytes()).catch((error: unknown) => error)
  expect(refused).toBeInstanceOf(ListError)
  expect((refused as ListError).message).toMatch(words)
})

test('auditCsv prints what the command prints', async () => {
  expect(auditCsv(await collected(text))).toBe((await call(['audit', '-'], text)).out)
})

test('auditColumns are the fields that a row may have', () => {
  expect(auditColumns.filter(({ needed }) => needed).map(({ name }) => name)).toEqual(['name', 'insulation', 'outLengthM', 'currentA', 'supplyV', 'ambientC'])
  for (const { name, allowed } of auditColumns) {
    const refused = auditRow({ ...pump, [name]: {} }, 1)
    expect('error' in refused && refused.error).toMatchObject({ field: name, allowed })
  }
})
