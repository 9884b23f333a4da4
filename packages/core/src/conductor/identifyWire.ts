import type { MetalName } from '../materials/index.ts'
import { type Evidence, type Likely, type WireReadings, wireEvidence } from './wireEvidence.ts'
import { type WireSize, wireSizes } from './wireSizes.ts'

/** A possible size and metal; conflicts names the readings that contradict it. */
export interface WireCandidate {
  readonly standard: WireSize['standard']
  readonly size: string
  readonly areaMm2: number
  readonly material: MetalName
  readonly conflicts: readonly string[]
}

/** Spread of makers about the likely area, either way (from memory). */
const makersHalfWidth = 0.05
/** Distance given to readings whose areas overflow. */
const outOfReach = 1e300
/** Prior in favour of copper, the commonest metal: a rarer metal must be nearer by two widths to rank first, tin by less (a judgement). */
const handicaps: Readonly<Partial<Record<MetalName, number>>> = { 'tinned-copper': 0.1, 'copper-clad-aluminium': 4, 'aluminium-1350': 4 }

interface Scored {
  readonly candidate: WireCandidate
  readonly distance: number
}

/**
 * Candidates for an unknown wire, from measurements of its bare conductor: those that fit, nearest first, then those that some reading contradicts.
 * Mass and resistance together identify the metal, whatever the size: copper-clad aluminium weighs 0.37 and resists 1.54 times copper.
 * Copper ranks before metals that fit equally well. The strand diameter counts together with the strand count.
 *
 * @equation A = n pi/4 d^2 by strands; A = pi/4 D^2 fill by diameter; A = m'/(D K) by mass; A = rho K/R' by resistance; a size fits where all intervals of A meet its own
 * @symbol A - result - mm2 - metal area according to each reading
 * @symbol D - conductorDiameterMm - mm - across the bare conductor
 * @symbol n - strandCount - 1 - strands
 * @symbol d - strandDiameterMm - mm - across one strand
 * @symbol m' - massKgPerM - kg/m - mass of the bare conductor
 * @symbol R' - resistanceOhmPerM - ohm/m - measured at temperatureC
 * @symbol K - result - 1 - lay factor, 1 to 1.05, 1 for a solid wire
 * @domain optional conductorDiameterMm.low: above 0
 * @domain optional conductorDiameterMm.high: above 0
 * @domain optional strandCount: whole at least 1
 * @domain optional strandDiameterMm.low: above 0
 * @domain optional strandDiameterMm.high: above 0
 * @domain optional massKgPerM.low: above 0
 * @domain optional massKgPerM.high: above 0
 * @domain optional resistanceOhmPerM.low: above 0
 * @domain optional resistanceOhmPerM.high: above 0
 * @domain optional temperatureC: from -60 to 300
 * @throws DomainError outside the domain, for an interval whose high is below its low, and where nothing tells the size
 * @example
 * identifyWire({
 *   conductorDiameterMm: { low: 1.15, high: 1.2 }, strandCount: 16, strandDiameterMm: { low: 0.25, high: 0.26 },
 *   massKgPerM: { low: 0.0027, high: 0.0029 }, resistanceOhmPerM: { low: 0.0325, high: 0.0335 }, temperatureC: 20,
 * }) // [{ standard: 'AWG', size: '18', material: 'copper-clad-aluminium', conflicts: [] }]
 * @source ASTM B258, SAE J1128, ISO 6722-1 (from memory), IEC 60228 for the sizes; geometry, densities and resistivities of the table of metals
 */
export function identifyWire(i: WireReadings): readonly WireCandidate[] {
  const evidence = wireEvidence(i)
  const found: Scored[] = []
  for (const size of wireSizes()) {
    for (const material of size.materials) {
      const scored = judge(size, material, evidence)
      // A candidate that every reading contradicts is left out.
      if (scored.candidate.conflicts.length < evidence.length) found.push(scored)
    }
  }
  // The sort is stable: equal fits keep the order of standards and metals.
  return found.sort((a, b) => a.candidate.conflicts.length - b.candidate.conflicts.length || a.distance - b.distance || 0).map((scored) => scored.candidate)
}

function judge(size: WireSize, material: MetalName, evidence: readonly Evidence[]): Scored {
  const conflicts: string[] = []
  let low = size.lowMm2
  let high = size.highMm2
  let distance = handicaps[material] ?? 0
  // The nearest reading first, so that of two contradictory readings the farther one is named.
  const readings = evidence.map(({ input, areaMm2 }) => weigh(input, areaMm2(material), size.likelyMm2)).sort((a, b) => a.distance - b.distance || 0)
  for (const reading of readings) {
    distance += reading.distance
    if (reading.area.low > high || reading.area.high < low) conflicts.push(reading.input)
    else {
      low = Math.max(low, reading.area.low)
      high = Math.min(high, reading.area.high)
    }
  }
  return { candidate: { standard: size.standard, size: size.size, areaMm2: size.areaMm2, material, conflicts }, distance }
}

/** Squared distance in ln(area) from the maker's likely area, over the sum of squares of the reading's and the maker's half widths. */
function weigh(input: string, area: Likely, likelyMm2: number) {
  const apart = Math.log(area.likely / likelyMm2)
  const halfWidth = Math.log(area.high / area.low) / 2
  const distance = apart ** 2 / (halfWidth ** 2 + makersHalfWidth ** 2)
  return { input, area, distance: Number.isFinite(distance) ? distance : outOfReach }
}
