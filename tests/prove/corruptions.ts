import { type AuditResult, auditList, ListError } from '@strandwise/planner/audit'
import { Random, seedOf } from '../random/random.ts'
import type { PartResult } from './results.ts'

/** A corrupted list may take at most this long, the ones with a million columns included. */
const slowestAllowedMs = 5000

const head = 'name,size,insulation,outLengthM,currentA,supplyV,ambientC,fuseA'
const rows = [
  'pump,16 AWG,XLPE,3,4,12,40,',
  '"lamp, left",0.5 mm²,PVC,2,1.8,12,40,5',
  'fan,18 AWG,PVC,3,2,12,40,',
  'heater,2.5 mm²,PVC,6,20,12,35,15',
  '"two\nlines",10 AWG,ETFE,4,9,24,60,',
  'bell,22 AWG,PVC,12,0.8,12,30,2',
]
const list = (lines: readonly string[], first = head): string => `${[first, ...lines].join('\n')}\n`
const bytesOf = (text: string): Uint8Array<ArrayBuffer> => new TextEncoder().encode(text)

/** A corrupted list; `row` is the only row touched, or null where others may suffer as well. */
interface Corrupted {
  readonly bytes: Uint8Array
  readonly row: number | null
}

/** Cells that spoil their own row and no other: no quotation mark, no line break. */
const odd = [
  '',
  '-3',
  'NaN',
  '1e999',
  '0x10',
  'null',
  '=1+1',
  '4 V',
  '½',
  '\u0000',
  '\ufffd',
  '10'.repeat(500),
  '🔌',
  '\u202e',
  '1,2',
  ',,,,',
  '1;2;3',
  ' ',
  '\t',
]

type Corruption = (random: Random) => Corrupted

const one = (row: number, line: string): Corrupted => ({ bytes: bytesOf(list(rows.map((text, at) => (at === row ? line : text)))), row })

/** One row spoilt: the others must be judged as before. */
const rowCorruptions: Readonly<Record<string, Corruption>> = {
  'a cell of nonsense': (random) => {
    const row = random.whole(4)
    const cells = (rows[row === 1 ? 0 : row] as string).split(',')
    cells[random.whole(cells.length)] = random.of(odd)
    return one(row, cells.join(','))
  },
  'a cell less': (random) => one(0, (rows[0] as string).split(',').slice(0, random.whole(7)).join(',')),
  'cells too many': (random) => one(2, `${rows[2]}${',x'.repeat(1 + random.whole(50))}`),
  'a quotation mark inside a cell': (random) => {
    const at = 1 + random.whole(2)
    return one(2, `${'fan'.slice(0, at)}"${'fan'.slice(at)},18 AWG,PVC,3,2,12,40,`)
  },
  'a quotation mark left open before another row': (random) => {
    const row = random.whole(2)
    return one(row, `"${rows[row]}`)
  },
  'text behind a closing quotation mark': () => one(0, '"pump"x,16 AWG,XLPE,3,4,12,40,'),
  'a row of random letters': (random) =>
    one(3, Array.from({ length: 1 + random.whole(200) }, () => String.fromCodePoint(0x23 + random.whole(0x3000))).join('')),
}

function flipped(random: Random): Uint8Array {
  const bytes = bytesOf(list(rows))
  for (let n = 1 + random.whole(6); n > 0; n -= 1) bytes[random.whole(bytes.length)] = random.whole(256)
  return bytes
}

function cut(random: Random): Uint8Array {
  const text = list(rows)
  const at = random.whole(text.length)
  return bytesOf(text.slice(0, at) + random.of(['"', ',', '\n', '\r', '\u0000', '\ufeff', '""', '={', '']) + text.slice(at + random.whole(30)))
}

/** Anything may suffer: an answer or a refusal is asked for, and no more. */
const listCorruptions: Readonly<Record<string, Corruption>> = {
  'bytes flipped': (random) => ({ bytes: flipped(random), row: null }),
  'a piece cut out or put in': (random) => ({ bytes: cut(random), row: null }),
  'a quotation mark left open': (random) => {
    const row = random.whole(rows.length)
    return { bytes: bytesOf(list(rows.map((text, at) => (at === row ? `"${text}` : text)))), row: null }
  },
  'a column missing': (random) => ({ bytes: bytesOf(list(rows, head.split(',').toSpliced(random.whole(8), 1).join(','))), row: null }),
  'a column twice': (random) => ({ bytes: bytesOf(list(rows, `${head},${random.of(head.split(','))}`)), row: null }),
  'random bytes': (random) => ({ bytes: Uint8Array.from({ length: random.whole(2000) }, () => random.whole(256)), row: null }),
  'another encoding': () => ({ bytes: new Uint8Array(Buffer.from(`\ufeff${list(rows)}`, 'utf16le')), row: null }),
  'JSON lines cut': (random) => {
    const text = rows
      .map((_, at) => JSON.stringify({ name: `${at}`, size: '1 mm²', insulation: 'PVC', outLengthM: 1, currentA: at, supplyV: 12, ambientC: 20 }))
      .join('\n')
    return { bytes: bytesOf(text.slice(0, random.whole(text.length))), row: null }
  },
}

/** Another form of the same list: every row must be judged as before. */
const harmless: Readonly<Record<string, Corruption>> = {
  'a byte order mark': () => ({ bytes: bytesOf(`\ufeff${list(rows)}`), row: -1 }),
  'carriage returns': () => ({ bytes: bytesOf(list(rows).replaceAll(/(?<!two)\n/g, '\r\n')), row: -1 }),
  'no line break at the end': () => ({ bytes: bytesOf(list(rows).trimEnd()), row: -1 }),
  'a column of its own': () => ({
    bytes: bytesOf(
      list(
        rows.map((row) => `${row},red`),
        `${head},colour`,
      ),
    ),
    row: -1,
  }),
}

const all = { ...rowCorruptions, ...listCorruptions, ...harmless }

/** Rare, as each takes longer: a million columns, in the head or in a row, and a long cell. */
const large: Readonly<Record<string, Corruption>> = {
  'a million columns in the head': () => ({ bytes: bytesOf(list(rows, 'c,'.repeat(1_000_000))), row: null }),
  'a head that goes on for a million columns': () => ({ bytes: bytesOf(list(rows, `${head},${'c,'.repeat(1_000_000)}`)), row: null }),
  'a row of a million columns': () => ({ bytes: bytesOf(list([...rows, ','.repeat(999_000)])), row: rows.length }),
  'a cell of nearly a megabyte': () => ({ bytes: bytesOf(list([`${'x'.repeat(990_000)},16 AWG,XLPE,3,4,12,40,`, ...rows.slice(1)])), row: 0 }),
  'a file without an end of record': () => ({ bytes: bytesOf(`${head}\n${'x'.repeat(3_000_000)}`), row: null }),
}

/** Hands the bytes on in pieces, as a file or a pipe does. */
async function* pieces(bytes: Uint8Array, random: Random): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; ) {
    const size = bytes.length > 10_000 ? 65_536 : 1 + random.whole(200)
    yield bytes.subarray(at, at + size)
    at += size
  }
}

/** Everything of a result but its line, which a spoilt row may move. */
const said = ({ line: _line, ...rest }: AuditResult): string => JSON.stringify(rest)

function malformed(result: AuditResult): string | undefined {
  if (!Number.isSafeInteger(result.line) || result.line < 1) return `line ${result.line}`
  if ('error' in result) return typeof result.error.field === 'string' && result.error.allowed !== '' ? undefined : `error ${JSON.stringify(result.error)}`
  const numbers = [result.conductorLowC, result.conductorHighC, result.allowedA, result.dropV, result.dropShare]
  return numbers.every((number) => number === null || Number.isFinite(number)) ? undefined : `numbers ${numbers.join(', ')}`
}

async function judged(bytes: Uint8Array, random: Random): Promise<readonly AuditResult[] | ListError> {
  const found: AuditResult[] = []
  try {
    for await (const result of auditList(pieces(bytes, random))) found.push(result)
    return found
  } catch (error) {
    if (error instanceof ListError) return error
    throw error
  }
}

/** What is wrong with the answer to a corrupted list; undefined if nothing is. */
function faultOf(answer: readonly AuditResult[] | ListError, row: number | null, clean: readonly string[]): string | undefined {
  if (answer instanceof ListError) return row === null ? undefined : `refused as a whole: ${answer.message.slice(0, 200)}`
  const wrong = answer.map(malformed).find((one) => one !== undefined)
  if (wrong !== undefined) return wrong
  if (answer.some(({ line }, at) => at > 0 && line < (answer[at - 1] as AuditResult).line)) return 'lines out of order'
  if (row === null) return undefined
  const others = new Set(answer.map(said))
  const lost = clean.filter((text, at) => at !== row && !others.has(text))
  return lost.length === 0 ? undefined : `lost or changed: ${lost.join(' ')}`
}

/** So many corrupted lists: never an error of the program, never a hang, and a spoilt row spoils no other. */
export async function corruptions(count: number, seed: number, say: (text: string) => void): Promise<PartResult> {
  const clean = ((await judged(bytesOf(list(rows)), new Random(seed))) as readonly AuditResult[]).map(said)
  const tally = new Map<string, { made: number; refused: number; slowestMs: number }>()
  const wrong: string[] = []
  const names = Object.keys(all)
  const run = async (name: string, corruption: Corruption, index: number): Promise<void> => {
    const random = new Random(seedOf(seed, name, index))
    const { bytes, row } = corruption(random)
    const kept = tally.get(name) ?? { made: 0, refused: 0, slowestMs: 0 }
    tally.set(name, kept)
    const start = performance.now()
    const fault = await judged(bytes, random).then(
      (answer) => {
        if (answer instanceof ListError) kept.refused += 1
        return faultOf(answer, row, clean)
      },
      (error: Error) => `an error of the program: ${error.stack}`,
    )
    const tookMs = performance.now() - start
    kept.made += 1
    kept.slowestMs = Math.max(kept.slowestMs, tookMs)
    if (fault !== undefined) wrong.push(`${name}, case ${index}: ${fault}`)
    if (tookMs > slowestAllowedMs) wrong.push(`${name}, case ${index}: took ${tookMs.toFixed(0)} ms`)
  }
  for (const [name, corruption] of Object.entries(large)) await run(name, corruption, 0)
  for (let index = 0; index < count; index += 1) {
    const name = names[index % names.length] as string
    await run(name, all[name] as Corruption, index)
    if (index % 1000 === 0) say(`${index} corrupted lists`)
  }
  const lines = [...tally].map(([name, { made, refused, slowestMs }]) => `| ${name} | ${made} | ${refused} | ${slowestMs.toFixed(1)} |`)
  const table = `| corruption | lists | refused as a whole | slowest, ms |\n| --- | --- | --- | --- |\n${lines.join('\n')}`
  const faults =
    wrong.length === 0
      ? ''
      : `\n\n${wrong
          .slice(0, 20)
          .map((one) => `- ${one}`)
          .join('\n')}`
  return {
    ok: wrong.length === 0,
    summary: `${count + Object.keys(large).length} corrupted lists: ${wrong.length} wrong answers, no row lost beside a spoilt one`,
    details: `${table}${faults}`,
  }
}
