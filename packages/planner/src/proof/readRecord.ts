import { JobError } from '../job/index.ts'
import type { RepairRecord } from './repairRecord.ts'

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === 'object' && value !== null && !Array.isArray(value)

/** Parts of a record that every output format shows. */
const objects = ['circuit', 'work', 'asFound', 'asLeft'] as const
const lists = ['lookAgain', 'tables'] as const

/** Checks a record made by verifyRepair, possibly read back from a file; refuses anything else by its field. */
export function readRecord(record: Readonly<Record<string, unknown>>): RepairRecord {
  const refuse = (path: string, value: unknown, allowed: string): never => {
    throw new JobError([{ path: `record.${path}`, value, allowed, example: '' }])
  }
  if (record.record !== 'strandwise repair' || record.version !== 1) refuse('record', record.record, 'a record that verifyRepair wrote, version 1')
  for (const name of objects) if (!isObject(record[name])) refuse(name, record[name], 'an object, as verifyRepair wrote it')
  for (const name of lists) if (!Array.isArray(record[name])) refuse(name, record[name], 'a list, as verifyRepair wrote it')
  const { asFound, asLeft } = record as unknown as RepairRecord
  if (!Array.isArray(asFound.readings)) refuse('asFound.readings', asFound.readings, 'a list, as verifyRepair wrote it')
  if (!Array.isArray(asLeft.readings)) refuse('asLeft.readings', asLeft.readings, 'a list, as verifyRepair wrote it')
  if (!Array.isArray(asLeft.checks)) refuse('asLeft.checks', asLeft.checks, 'a list, as verifyRepair wrote it')
  return record as unknown as RepairRecord
}
