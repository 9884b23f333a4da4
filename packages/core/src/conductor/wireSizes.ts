import type { MetalName } from '../materials/index.ts'
import { type Iec60228Row, iec60228, iso6722, saeJ1128 } from '../tables/index.ts'
import { awgToAreaMm2 } from './awg.ts'
import { formatAwg } from './awgText.ts'
import { resistivityOhmM } from './resistivity.ts'

/** A standard size and the metal area that its wires may have. */
export interface WireSize {
  readonly standard: 'AWG' | 'SAE J1128' | 'ISO 6722-1' | 'IEC 60228'
  readonly size: string
  /** Area by the standard: exact for AWG, minimum for SAE, nominal for ISO and IEC. */
  readonly areaMm2: number
  /** Metal area that a maker likely uses, and its least and most. */
  readonly likelyMm2: number
  readonly lowMm2: number
  readonly highMm2: number
  readonly materials: readonly MetalName[]
}

const finestGauge = 40
const thickestGauge = -5
/** Gauges are 26 % of area apart, and real strandings differ by -10 to +18 % (FAA AC 43.13-1B table 11-9): the range of half a gauge either way counts. */
const halfGauge = 0.5
/** Makers exceed a minimum area by 3 %, at most 8 % (from memory). */
const likelyOverMinimum = 1.03
const mostOverMinimum = 1.08
/** Most that makers exceed a nominal area by, 5 % (from memory). */
const mostOverNominal = 1.05
/** Least area from the largest resistance in ohm/km: A = rho20/R, in mm2. */
const ohmMm2PerKm = 1e9
const referenceC = 20

const copperOnly: readonly MetalName[] = ['annealed-copper', 'tinned-copper', 'copper-clad-aluminium']
const copperOrAluminium: readonly MetalName[] = [...copperOnly, 'aluminium-1350']

/**
 * Lists every size of the four standards with its range of metal area, copper first among its metals.
 *
 * @equation rows of AWG, SAE J1128, ISO 6722-1 and IEC 60228
 * @symbol sizes - result - 1 - standard, size as it is called, area that the standard states, likely area and its least and most
 * @throws nothing
 * @example
 * wireSizes() // [{ standard: 'AWG', size: '40' }]
 * @source ASTM B258, SAE J1128, ISO 6722-1, IEC 60228
 */
export function wireSizes(): readonly WireSize[] {
  const sizes: WireSize[] = []
  for (let gauge = finestGauge; gauge >= thickestGauge; gauge -= 1) {
    const areaMm2 = awgToAreaMm2(gauge)
    const band = { lowMm2: awgToAreaMm2(gauge + halfGauge), highMm2: awgToAreaMm2(gauge - halfGauge) }
    sizes.push({ standard: 'AWG', size: formatAwg(gauge), areaMm2, likelyMm2: areaMm2, ...band, materials: copperOrAluminium })
  }
  for (const { size, minimumAreaMm2: areaMm2 } of saeJ1128.rows) {
    const band = { likelyMm2: areaMm2 * likelyOverMinimum, lowMm2: areaMm2, highMm2: areaMm2 * mostOverMinimum }
    sizes.push({ standard: 'SAE J1128', size, areaMm2, ...band, materials: copperOnly })
  }
  for (const { areaMm2, plainOhmPerKm } of iso6722.rows) sizes.push(byResistance('ISO 6722-1', areaMm2, plainOhmPerKm, copperOnly))
  for (const [areaMm2, ohmPerKm] of largestByArea(iec60228.rows)) sizes.push(byResistance('IEC 60228', areaMm2, ohmPerKm, copperOrAluminium))
  return sizes
}

function byResistance(standard: WireSize['standard'], areaMm2: number, ohmPerKm: number, materials: readonly MetalName[]): WireSize {
  const lowMm2 = (resistivityOhmM('annealed-copper', referenceC) * ohmMm2PerKm) / ohmPerKm
  return { standard, size: String(areaMm2), areaMm2, likelyMm2: areaMm2, lowMm2, highMm2: areaMm2 * mostOverNominal, materials }
}

/** Without a class, the class of largest resistance gives the least area. */
function largestByArea(rows: readonly Iec60228Row[]): ReadonlyMap<number, number> {
  const largest = new Map<number, number>()
  for (const { areaMm2, plainOhmPerKm } of rows) largest.set(areaMm2, Math.max(plainOhmPerKm, largest.get(areaMm2) ?? 0))
  return largest
}
