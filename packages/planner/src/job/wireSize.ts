import { awgToAreaMm2, DomainError, formatAwg, iec60228, iso6722, parseAwg, saeJ1128 } from '@strandwise/core'
import { parseQuantity, QuantityError } from '@strandwise/working/quantity'
import type { RepairJob } from './repairJob.ts'
import { areaRange } from './wireSchema.ts'

export interface WireSize {
  readonly areaMm2: number
  /** Size as printed on a reel. */
  readonly text: string
  readonly gauge: number | null
  /** Strand count of the printed size: 7 of "7/0.3 mm". */
  readonly printedStrands?: number
  readonly strandCount?: number
  readonly strandDiameterMm?: number
}

/** An unknown size; the message lists valid ones. */
export class WireSizeError extends RangeError {
  override readonly name = 'WireSizeError'
  readonly allowed: string

  constructor(size: string, allowed: string) {
    super(`"${size}" is no wire size; allowed: ${allowed}`)
    this.allowed = allowed
  }
}

const examples = '"18 AWG", "2/0", "1.5 mm²", "7/0.3 mm" or "19 x 32 AWG"'

function fromGauge(gauge: number, standard: RepairJob['wire']['standard']): WireSize {
  const text = `${formatAwg(gauge)} AWG`
  if (standard !== 'SAE J1128') return { areaMm2: awgToAreaMm2(gauge), text, gauge }
  const row = saeJ1128.rows.find((candidate) => candidate.gauge === gauge)
  if (row === undefined) throw new WireSizeError(text, `an SAE J1128 gauge: ${saeJ1128.rows.map((candidate) => candidate.size).join(', ')}`)
  return { areaMm2: row.minimumAreaMm2, text: `SAE ${row.size}`, gauge }
}

function gaugeIn(size: string): number | null {
  try {
    return parseAwg(size)
  } catch (error) {
    if (error instanceof DomainError) return null
    throw error
  }
}

/** Strand count before a slash or times sign, as in "7/0.3 mm" and "19 x 32 AWG". */
const strandsFirst = /^\s*(\d{1,5})\s*[/x×*]/i

/** Strand diameter at which so many strands make the area. */
export function evenStrandMm(areaMm2: number, strandCount: number): number {
  return Math.sqrt((4 * areaMm2) / (Math.PI * strandCount))
}

function fromText(size: string, standard: RepairJob['wire']['standard']): WireSize {
  const metric = standard === 'ISO 6722-1' || standard === 'IEC 60228'
  const gauge = metric ? null : gaugeIn(size)
  if (gauge !== null) return fromGauge(gauge, standard)
  try {
    const areaMm2 = parseQuantity(metric && /^\s*[\d.,]+\s*$/.test(size) ? `${size} mm2` : size, 'areaMm2')
    const rows = standard === 'ISO 6722-1' ? iso6722.rows : standard === 'IEC 60228' ? iec60228.rows : null
    if (rows !== null && !rows.some((row) => row.areaMm2 === areaMm2)) {
      throw new WireSizeError(size, `an area of ${standard}: ${[...new Set(rows.map((row) => row.areaMm2))].join(', ')} mm²`)
    }
    if (areaMm2 < areaRange.from || areaMm2 > areaRange.to) throw new WireSizeError(size, `from ${areaRange.from} to ${areaRange.to} mm²`)
    const printedStrands = Number(strandsFirst.exec(size)?.[1] ?? 0)
    return {
      areaMm2,
      text: size.trim(),
      gauge: null,
      ...(printedStrands > 0 ? { printedStrands, strandDiameterMm: evenStrandMm(areaMm2, printedStrands) } : {}),
    }
  } catch (error) {
    if (error instanceof QuantityError) throw new WireSizeError(size, examples)
    throw error
  }
}

/**
 * The conductor's area: as given, or from its printed size in the named standard (AWG by default).
 *
 * @throws WireSizeError for a size that the standard has not
 */
export function wireSize(wire: Pick<RepairJob['wire'], 'areaMm2' | 'size' | 'standard' | 'strandCount' | 'strandDiameterMm'>): WireSize {
  const given: WireSize =
    wire.areaMm2 === undefined ? fromText(wire.size ?? '', wire.standard) : { areaMm2: wire.areaMm2, text: `${wire.areaMm2} mm²`, gauge: null }
  const strandCount = wire.strandCount ?? given.printedStrands
  if (strandCount === undefined) return given
  return {
    ...given,
    strandCount,
    strandDiameterMm: wire.strandDiameterMm ?? given.strandDiameterMm ?? evenStrandMm(given.areaMm2, strandCount),
  }
}
