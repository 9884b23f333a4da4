import { awgToAreaMm2 } from '../conductor/index.ts'
import { requirePositive, UnknownEntryError } from '../errors/index.ts'
import type { MetalName } from '../materials/index.ts'
import { awgTable, iec60228 } from '../tables/index.ts'
import { dropTimesAreaVMm2 } from './areaForDrop.ts'

interface Size {
  readonly size: string
  readonly areaMm2: number
}
const sizesOf = {
  /** Gauges by the exact AWG series. */
  AWG: awgTable.rows.map(({ gauge, size }): Size => ({ size, areaMm2: awgToAreaMm2(gauge) })).sort(byArea),
  /** Nominal areas of all classes, without duplicates. */
  'IEC 60228': [...new Set(iec60228.rows.map(({ areaMm2 }) => areaMm2))].map((areaMm2): Size => ({ size: String(areaMm2), areaMm2 })).sort(byArea),
} as const satisfies Readonly<Record<string, readonly Size[]>>

function byArea(a: Size, b: Size): number {
  return a.areaMm2 - b.areaMm2
}

/** Tolerance for rounding in the comparison with the allowed drop. */
const roundingShare = 1e-12

/**
 * The thinnest standard size whose feed and return lose no more than the allowed volts; null where the thickest still loses more.
 *
 * Nominal areas of pure metal: add lay and the standard's tolerance.
 *
 * @equation smallest A of the series with rho I (L_out + L_return)/A <= V
 * @symbol rho - material - ohm m - resistivity of the metal at the temperature
 * @symbol T - temperatureC - C - temperature of the conductor
 * @symbol I - currentA - A - load current
 * @symbol L_out - outLengthM - m - wire from the source to the load
 * @symbol L_return - returnLengthM - m - wire back; 0 where a chassis returns the current
 * @symbol V - allowedDropV - V - what the wire may lose
 * @symbol A - result - mm2 - area of the size, with its name and its drop
 * @domain currentA: at least 0
 * @domain outLengthM: at least 0
 * @domain returnLengthM: at least 0
 * @domain allowedDropV: above 0
 * @domain temperatureC: from -60 to 300
 * @throws DomainError outside the domain, and above the metal's melting point
 * @throws UnknownEntryError for a series or a metal that is not known, with those that are
 * @example
 * smallestSizeForDrop({ series: 'AWG', currentA: 4.2, outLengthM: 3, returnLengthM: 3, allowedDropV: 0.36, material: 'annealed-copper', temperatureC: 20 }) // { size: "16", areaMm2: 1.308696, dropV: 0.331989 }
 * @source Ohm's law; sizes of ASTM B258 and of IEC 60228
 */
export function smallestSizeForDrop(i: {
  readonly series: 'AWG' | 'IEC 60228'
  readonly currentA: number
  readonly outLengthM: number
  readonly returnLengthM: number
  readonly allowedDropV: number
  readonly material: MetalName
  readonly temperatureC: number
}): { readonly size: string; readonly areaMm2: number; readonly dropV: number } | null {
  const sizes: readonly Size[] | undefined = Object.hasOwn(sizesOf, i.series) ? sizesOf[i.series] : undefined
  if (sizes === undefined) throw new UnknownEntryError('series', i.series, Object.keys(sizesOf))
  const largestDropV = requirePositive('allowedDropV', i.allowedDropV) * (1 + roundingShare)
  const dropTimesArea = dropTimesAreaVMm2(i)
  for (const { size, areaMm2 } of sizes) {
    const dropV = dropTimesArea / areaMm2
    if (dropV <= largestDropV) return { size, areaMm2, dropV }
  }
  return null
}
