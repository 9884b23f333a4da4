import { type InsulationName, insulation, knownNominal, type MetalName, metal, type Verdict, type WireJob, wireVerdict } from '@strandwise/core'
import { assumed, isFuseRating, metalFault, quietly, type WireSize, WireSizeError, wireShape, wireSize } from '../job/inner.ts'
import { type RowError, readRow } from './auditFields.ts'
import { reasonOf } from './reasons.ts'

/** A wire of the list; the field names are the column headers. */
export interface AuditRow {
  readonly name: string
  readonly areaMm2?: number
  readonly size?: string
  readonly material?: MetalName
  readonly insulation: InsulationName
  readonly insulationThicknessMm?: number
  readonly outLengthM: number
  readonly returnLengthM?: number
  readonly currentA: number
  readonly supplyV: number
  readonly allowedDropV?: number
  readonly ambientC: number
  readonly loadedInBundle?: number
  readonly limitC?: number
  readonly fuseA?: number
  readonly fuseSeries?: 'ISO 8820-3'
}

/** A judged row: conductor temperature by both still-air correlations, continuous current, drop, fuse, and the deciding findings. */
export interface JudgedRow {
  readonly line: number
  readonly name: string
  readonly verdict: Verdict
  readonly conductorLowC: number | null
  readonly conductorHighC: number | null
  readonly allowedA: number | null
  readonly dropV: number | null
  readonly dropShare: number | null
  readonly fuseVerdict: Verdict | null
  readonly reasons: readonly string[]
}

/** A judged row, or the unusable field. */
export type AuditResult = JudgedRow | { readonly line: number; readonly error: RowError }

/** Cache of sizes: a list repeats few of them. */
const sizes = new Map<string, WireSize | RowError>()
const mostSizes = 1000

function sizeOf(row: AuditRow): WireSize | RowError {
  if ((row.areaMm2 === undefined) === (row.size === undefined)) return { field: 'areaMm2', value: row.areaMm2, allowed: 'one of areaMm2 and size' }
  const key = row.size ?? `${row.areaMm2}`
  const seen = sizes.get(key)
  if (seen !== undefined) return seen
  const found = readSize(row)
  if (sizes.size < mostSizes) sizes.set(key, found)
  return found
}

function readSize(row: AuditRow): WireSize | RowError {
  try {
    return wireSize(row)
  } catch (error) {
    if (!(error instanceof WireSizeError)) throw error
    return { field: 'size', value: row.size, allowed: error.allowed }
  }
}

/** Continuous temperature limit: the lowest of insulation (its lowest grade unless given), plating and metal. */
function limitOf(material: MetalName, insulationC: number): number {
  const platingC = material === 'tinned-copper' ? assumed.tinPlatingLimitC.value : Number.POSITIVE_INFINITY
  return Math.min(insulationC, platingC, metal(material).meltingC.nominal)
}

/** The row as input of core's verdict, with the plan's defaults. */
function jobOf(row: AuditRow, size: WireSize): WireJob {
  const material = row.material ?? assumed.material.value
  const family = insulation(row.insulation)
  const { conductorDiameterMm, insulationThicknessMm } = wireShape(row, size, quietly)
  const limited = row.allowedDropV !== undefined
  return {
    wire: {
      areaMm2: size.areaMm2,
      material,
      conductorDiameterMm,
      insulationThicknessMm,
      insulationConductivityWPerMK: knownNominal(family, 'conductivityWPerMK', family.conductivityWPerMK),
      layFactor: assumed.layFactor.value,
    },
    limitC: limitOf(material, row.limitC ?? family.continuousC.low),
    hottestC: row.ambientC,
    currentA: row.currentA,
    ...(row.loadedInBundle === undefined ? {} : { loadedWires: row.loadedInBundle }),
    run: {
      supplyV: row.supplyV,
      outLengthM: row.outLengthM,
      returnLengthM: row.returnLengthM ?? row.outLengthM,
      allowedDropV: row.allowedDropV ?? assumed.dropShare.value * row.supplyV,
      limitIsStated: limited,
    },
    ...(row.fuseA === undefined ? {} : { fuse: { ratedA: row.fuseA, ...(row.fuseSeries === undefined ? {} : { kind: 'blade' as const }) } }),
  }
}

/** The plan's judgement of the metal itself, as a reason. */
function metalReason(row: AuditRow, areaMm2: number): { readonly verdict: Verdict; readonly reason: string } | null {
  const fault = metalFault(row.material ?? assumed.material.value, areaMm2)
  if (fault === null) return null
  if (fault.code === 'cca') return { verdict: 'unsound', reason: 'copper-clad aluminium' }
  return { verdict: 'caution', reason: `aluminium of ${areaMm2.toPrecision(3)} mm², at least ${fault.leastMm2} mm²` }
}

const bestFirst: readonly Verdict[] = ['sound', 'caution', 'cannot tell', 'unsound']

const worseOf = (one: Verdict, other: Verdict): Verdict => (bestFirst.indexOf(one) > bestFirst.indexOf(other) ? one : other)

function fuseError(row: AuditRow): RowError | null {
  if (row.fuseSeries === undefined) return null
  if (row.fuseA === undefined) return { field: 'fuseA', value: undefined, allowed: 'the rating with fuseSeries' }
  return isFuseRating(row.fuseSeries, row.fuseA) ? null : { field: 'fuseA', value: row.fuseA, allowed: `a rating of ${row.fuseSeries}` }
}

/** The row read, with its size, or the unusable field. */
function readWire(row: unknown): { readonly wire: AuditRow; readonly size: WireSize } | { readonly error: RowError } {
  const read = readRow(row)
  if ('error' in read) return read
  const wire = read.row as unknown as AuditRow
  const size = sizeOf(wire)
  if ('allowed' in size) return { error: size }
  const wrongFuse = fuseError(wire)
  return wrongFuse === null ? { wire, size } : { error: wrongFuse }
}

/**
 * The wire of a row as core's wireVerdict takes it, with the plan's defaults for what the row leaves open: to ask which size and fuse would suit.
 *
 * @throws nothing: a row that can't be used comes back with the field, its value and what is allowed
 * @example
 * auditJob({ name: 'pump', size: '16 AWG', insulation: 'XLPE', outLengthM: 3, currentA: 4, supplyV: 12, ambientC: 40 }) // { job: { limitC: 90, currentA: 4, hottestC: 40 } }
 */
export function auditJob(row: unknown): { readonly job: WireJob } | { readonly error: RowError } {
  const read = readWire(row)
  return 'error' in read ? read : { job: jobOf(read.wire, read.size) }
}

/**
 * Judges one wire of a list as the wire section of a plan does: its metal, its conductor against its limit, its drop against its budget, its fuse as fitted.
 *
 * A number may be given as text, with or without a unit. Missing fields have the plan's defaults.
 *
 * @throws nothing: a row that can't be used comes back with the field, its value and what is allowed
 * @example
 * auditRow({ name: 'pump', size: '16 AWG', insulation: 'XLPE', outLengthM: 3, currentA: 4, supplyV: 12, ambientC: 40 }, 2) // { line: 2, name: 'pump', verdict: 'sound' }
 * @example
 * auditRow({ name: 'pump', size: '51 AWG', insulation: 'XLPE', outLengthM: 3, currentA: 4, supplyV: 12, ambientC: 40 }, 2) // { line: 2, error: { field: 'size', value: '51 AWG' } }
 */
export function auditRow(row: unknown, line: number): AuditResult {
  const read = readWire(row)
  if ('error' in read) return { line, error: read.error }
  const { wire, size } = read
  const { verdict, findings, conductorC, continuousA, dropV } = wireVerdict({ ...jobOf(wire, size), offers: false })
  let fuse = -1
  for (const finding of findings) if (finding.topic === 'fuse') fuse = Math.max(fuse, bestFirst.indexOf(finding.verdict))
  const ofMetal = metalReason(wire, size.areaMm2)
  const reasons = findings.filter((finding) => finding.verdict !== 'sound').map(reasonOf)
  return {
    line,
    name: wire.name,
    verdict: ofMetal === null ? verdict : worseOf(verdict, ofMetal.verdict),
    conductorLowC: conductorC === null ? null : conductorC.low,
    conductorHighC: conductorC === null ? null : conductorC.high,
    allowedA: continuousA === null ? null : continuousA.low,
    dropV,
    dropShare: dropV === null ? null : dropV / wire.supplyV,
    fuseVerdict: bestFirst[fuse] ?? null,
    reasons: ofMetal === null ? reasons : [ofMetal.reason, ...reasons],
  }
}

/**
 * Judges the wires of a list one after the other, in their order; rows are counted from 1.
 *
 * @throws whatever reading the rows throws; a row that can't be used is a result of its own
 * @example
 * auditStream([]) // {}
 */
export async function* auditStream(rows: AsyncIterable<unknown> | Iterable<unknown>): AsyncGenerator<AuditResult> {
  let line = 0
  for await (const row of rows) {
    line += 1
    yield auditRow(row, line)
  }
}
