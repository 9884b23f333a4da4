import { DomainError, requireBetween, requirePositive, requireWhole } from '../errors/index.ts'
import { type Interval, type MetalName, metal } from '../materials/index.ts'
import { conductorDefaults } from './conductorDefaults.ts'
import { layFactors } from './layFactor.ts'
import { resistivityOhmM } from './resistivity.ts'
import { strandedAreaMm2, strandedDiameterMm } from './stranding.ts'

/** Bench measurements of a bare conductor. */
export interface WireReadings {
  readonly conductorDiameterMm?: Interval
  readonly strandCount?: number
  /** Needs strandCount. */
  readonly strandDiameterMm?: Interval
  readonly massKgPerM?: Interval
  readonly resistanceOhmPerM?: Interval
  readonly temperatureC?: number
}

/** An interval with its most likely value. */
export interface Likely extends Interval {
  readonly likely: number
}

/** The area of metal that one reading implies, for a given metal. */
export interface Evidence {
  readonly input: 'conductorDiameterMm' | 'strandDiameterMm' | 'massKgPerM' | 'resistanceOhmPerM'
  readonly areaMm2: (material: MetalName) => Likely
}

/** Fill factor of the circle round a conductor: 1 when solid or compacted hard, 0.68 when bunched loosely (from memory). */
const anyFill: Likely = { low: 0.68, likely: 0.77, high: 1 }
/** Tolerance of the circle when the strands are counted, about 5 % of its diameter; two to six strands pack by no one rule. */
const countedFill: Interval = { low: 0.9, high: 1.12 }
const fewStrandsFill: Likely = { low: 0.5, likely: 0.65, high: 0.85 }
const fewStrands = 6
const mm2PerM2 = 1e6
const coldestC = -60
const hottestC = 300

/** Checks the measurements and turns each into an interval of area. */
export function wireEvidence(i: WireReadings): readonly Evidence[] {
  const temperatureC = requireBetween('temperatureC', i.temperatureC ?? conductorDefaults.temperatureC, coldestC, hottestC)
  if (i.strandCount !== undefined) requireWhole('strandCount', i.strandCount, 1)
  const { strandCount, conductorDiameterMm, strandDiameterMm, massKgPerM, resistanceOhmPerM } = i
  const lay: Likely = strandCount === 1 ? { low: 1, likely: 1, high: 1 } : { low: layFactors[1].low, likely: layFactors[2].nominal, high: layFactors[5].high }
  const found: Evidence[] = []
  if (conductorDiameterMm !== undefined) {
    const { low, high } = requireInterval('conductorDiameterMm', conductorDiameterMm)
    const fill = fillOf(strandCount)
    const area = { low: circle(low) * fill.low, likely: circle(low) ** 0.5 * circle(high) ** 0.5 * fill.likely, high: circle(high) * fill.high }
    found.push({ input: 'conductorDiameterMm', areaMm2: () => area })
  }
  if (strandDiameterMm !== undefined) {
    const { low, high } = requireInterval('strandDiameterMm', strandDiameterMm)
    if (strandCount !== undefined) {
      const area = { low: strandCount * circle(low), likely: strandCount * circle(low) ** 0.5 * circle(high) ** 0.5, high: strandCount * circle(high) }
      found.push({ input: 'strandDiameterMm', areaMm2: () => area })
    }
  }
  if (massKgPerM !== undefined) {
    const { low, high } = requireInterval('massKgPerM', massKgPerM)
    found.push({
      input: 'massKgPerM',
      areaMm2: (material) => {
        const { densityKgPerM3 } = metal(material)
        return {
          low: (low * mm2PerM2) / (densityKgPerM3.high * lay.high),
          likely: (low ** 0.5 * high ** 0.5 * mm2PerM2) / (densityKgPerM3.nominal * lay.likely),
          high: (high * mm2PerM2) / (densityKgPerM3.low * lay.low),
        }
      },
    })
  }
  if (resistanceOhmPerM !== undefined) {
    const { low, high } = requireInterval('resistanceOhmPerM', resistanceOhmPerM)
    found.push({
      input: 'resistanceOhmPerM',
      areaMm2: (material) => {
        const { resistivity20OhmM } = metal(material)
        const warm = (resistivityOhmM(material, temperatureC) * mm2PerM2) / resistivity20OhmM.nominal
        return {
          low: (warm * resistivity20OhmM.low * lay.low) / high,
          likely: (warm * resistivity20OhmM.nominal * lay.likely) / low ** 0.5 / high ** 0.5,
          high: (warm * resistivity20OhmM.high * lay.high) / low,
        }
      },
    })
  }
  if (found.length === 0)
    throw new DomainError(
      'conductorDiameterMm',
      conductorDiameterMm,
      'at least one of "conductorDiameterMm", "massKgPerM", "resistanceOhmPerM", or "strandCount" with "strandDiameterMm"',
      undefined,
      'missing',
    )
  return found
}

function circle(diameterMm: number): number {
  return (Math.PI / 4) * diameterMm ** 2
}

function fillOf(strandCount: number | undefined): Likely {
  if (strandCount === undefined) return anyFill
  if (strandCount === 1) return { low: 1, likely: 1, high: 1 }
  if (strandCount <= fewStrands) return fewStrandsFill
  const strand = { strandCount, strandDiameterMm: 1 }
  const fill = strandedAreaMm2(strand) / ((Math.PI / 4) * strandedDiameterMm(strand) ** 2)
  return { low: fill * countedFill.low, likely: fill, high: Math.min(1, fill * countedFill.high) }
}

function requireInterval(parameter: string, interval: Interval): Interval {
  if (typeof interval !== 'object' || interval === null) throw new DomainError(parameter, interval, 'an interval with low and high', undefined, 'wrong-choice')
  requirePositive(`${parameter}.low`, interval.low)
  requirePositive(`${parameter}.high`, interval.high)
  if (interval.high < interval.low) throw new DomainError(`${parameter}.high`, interval.high, `at least "${parameter}.low"`, undefined, 'contradiction')
  return interval
}
