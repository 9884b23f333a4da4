import { causeWords } from '../diagnosis/inner.ts'
import { printed, type Units } from '../facts/inner.ts'
import { JobError } from '../job/index.ts'
import type { RepairCheck } from './checks.ts'
import { readRecord } from './readRecord.ts'
import type { RepairRecord } from './repairRecord.ts'

// Content of the record as rows of plain text; each output format escapes them.

export interface RecordTable {
  readonly title: string
  readonly head: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

interface RecordPage {
  readonly title: string
  readonly says: string
  readonly about: readonly (readonly [name: string, value: string])[]
  /** As found and as left, side by side where there is room. */
  readonly readings: readonly RecordTable[]
  readonly tables: readonly RecordTable[]
  readonly lookAgain: readonly string[]
  readonly sources: readonly string[]
}

const span = (low: number, high: number, unit: string, units: Units): string => {
  const [from, to] = [printed(low, unit, units), printed(high, unit, units)]
  return from === to ? from : `${from} to ${to}`
}

/** Values above this are shown as "open". */
const mostPrinted = 1e15

function checkRow({ id, verdict, low, high, limit, unit }: RepairCheck, units: Units): readonly string[] {
  const found = low === undefined && high === undefined ? 'not told' : (high ?? 0) > mostPrinted ? 'open' : span(low ?? 0, high ?? low ?? 0, unit, units)
  const least = unit === 'N' || id.startsWith('insulation') || id.startsWith(byEye)
  return [
    id,
    id.startsWith(byEye) ? (low === 1 ? 'yes' : 'no') : found,
    id.startsWith(byEye) ? 'yes' : `${least ? 'at least' : 'at most'} ${printed(limit, unit, units)}`,
    verdict,
  ]
}

const byEye = 'by eye: '

/** One row a check; visual checks that passed share one row. */
function checkRows(checks: readonly RepairCheck[], units: Units): readonly (readonly string[])[] {
  const seen = checks.filter(({ id, verdict }) => id.startsWith(byEye) && verdict === 'passes').map(({ id }) => id.slice(byEye.length))
  const rows = checks.filter(({ id, verdict }) => !(id.startsWith(byEye) && verdict === 'passes')).map((check) => checkRow(check, units))
  return seen.length === 0 ? rows : [...rows, [`${byEye}${seen.join('; ')}`, 'yes', 'yes', 'passes']]
}

const words: Readonly<Record<RepairRecord['verdict'], string>> = {
  proven: 'PROVEN: every joint is shown to be as good as its own wire.',
  'not proven': 'NOT PROVEN: nothing failed, but the readings cannot show that the joint is good.',
  failed: 'FAILED: a check failed. Make the repair again before the circuit is used.',
}

/**
 * The record as a page of plain text.
 *
 * @throws JobError where it was changed into something that verifyRepair never wrote
 */
export function recordPage(record: Readonly<Record<string, unknown>>): RecordPage {
  const read = readRecord(record)
  try {
    return pageOf(read)
  } catch (error) {
    if (!(error instanceof TypeError || error instanceof RangeError)) throw error
    throw new JobError([
      { path: 'record', value: record, allowed: 'a record as verifyRepair wrote it: one of its entries is missing or of another kind', example: '' },
    ])
  }
}

function pageOf(record: RepairRecord): RecordPage {
  const { units, circuit, work, asFound, asLeft } = record
  const readings = (rows: RepairRecord['asFound']['readings']): readonly (readonly string[])[] =>
    rows.map(({ kind, from, to, load, when, low, high, unit, currentA }) => [
      `${kind}, ${from} to ${to}`,
      `load ${load}${when === 'moved' ? ', moved' : ''}${currentA === null ? '' : `, ${printed(currentA, 'A', units)}`}`,
      span(low, high, unit, units),
    ])
  const told = (value: string | null): string => value ?? ''
  const at = asFound.at === null ? '' : `, between ${asFound.at.from} and ${asFound.at.to}`
  return {
    title: record.title ?? 'Repair of a wire joint',
    says: words[record.verdict],
    about: [
      ['Date', record.date],
      [
        'Circuit',
        `${circuit.kind}, ${printed(circuit.supplyV, 'V', units)}, ${printed(circuit.currentA, 'A', units)}${circuit.fuseA === null ? '' : `, fuse ${circuit.fuseA} A`}`,
      ],
      ['Wire', `${circuit.wire}, ${circuit.insulation}`],
      ['Place', told(work.place)],
      ['Way', `${work.method.replaceAll('-', ' ')}${work.joints > 1 ? `, ${work.joints} joints` : ''}, ${work.repair}`],
      ['Joint', work.joints === 0 ? 'none' : `${printed(work.jointLengthMm, 'mm', units)} from bare wire to bare wire`],
      ['By', told(work.by)],
      ['Tool', told(work.tool)],
      ['Parts', told(work.consumables)],
      ['Found', `${asFound.damage}; fault ${asFound.fault}${at}`],
      [
        'Cause',
        work.cause ??
          (asFound.leading.length === 0
            ? ''
            : `by the readings: ${asFound.leading
                .slice(0, 4)
                .map((id) => causeWords[id])
                .join('; ')}`),
      ],
    ],
    readings: [
      { title: 'As found', head: ['Reading', 'State', 'Interval'], rows: readings(asFound.readings) },
      { title: 'As left', head: ['Reading', 'State', 'Interval'], rows: readings(asLeft.readings) },
    ].filter(({ rows }) => rows.length > 0),
    tables: [
      {
        title: 'Before covering',
        head: ['Joint', 'Over the joint', 'Over as much plain wire'],
        rows: (asLeft.ratio ?? []).map(({ joint, jointV, wireV, wireLengthMm }) => [
          String(joint),
          span(jointV.low, jointV.high, 'V', units),
          `${span(wireV.low, wireV.high, 'V', units)} over ${printed(wireLengthMm, 'mm', units)}`,
        ]),
      },
      { title: 'Checks', head: ['Check', 'Found', 'Limit', 'Verdict'], rows: checkRows(asLeft.checks, units) },
    ].filter(({ rows }) => rows.length > 0),
    lookAgain: record.lookAgain.map(({ what, by }) => (by === null ? what : `${what} By ${by}.`)),
    sources: record.tables.map(({ status, source, edition, clause }) => [source, edition, clause, status].filter((part) => part !== undefined).join(', ')),
  }
}
