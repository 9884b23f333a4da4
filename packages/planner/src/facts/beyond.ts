import { type InsulationName, insulation, knownNominal, type MetalName } from '@strandwise/core'
import type { RepairJob } from '../job/index.ts'
import { type Assume, quietly, wireShape, wireSize } from '../job/inner.ts'

/** The wire on the other side of the joint. */
export interface BeyondFacts {
  readonly areaMm2: number
  readonly sizeText: string
  readonly material: MetalName
  readonly conductorDiameterMm: number
  readonly insulationName: InsulationName
  readonly insulationThicknessMm: number
  readonly insulationConductivityWPerMK: number
  readonly outsideMm: number
}

/** The wire beyond as the fields of a wire, of the same standard and run. */
function asWire(beyond: NonNullable<RepairJob['wireBeyond']>, { insulation: name, outLengthM, standard }: RepairJob['wire']): RepairJob['wire'] {
  const { material: _metal, ...given } = beyond
  return { insulation: name, outLengthM, ...(standard === undefined ? {} : { standard }), ...given }
}

/** The wire beyond the joint if it differs; missing fields are assumed as on this side. */
export function beyondFacts({ wire, wireBeyond }: RepairJob, assume: Assume): BeyondFacts | null {
  if (wireBeyond === undefined) return null
  const sized = wireBeyond.areaMm2 !== undefined || wireBeyond.size !== undefined
  const material = wireBeyond.material ?? wire.material ?? 'annealed-copper'
  const insulationName = assume('wireBeyond.insulation', wireBeyond.insulation, wire.insulation, 'as on this side')
  const size = wireSize(sized ? asWire(wireBeyond, wire) : wire)
  if (!sized) assume('wireBeyond.size', undefined, size.text, 'as on this side')
  const shape = wireShape({ ...asWire(wireBeyond, wire), insulation: insulationName }, size, quietly)
  const family = insulation(insulationName)
  return {
    areaMm2: size.areaMm2,
    sizeText: size.text,
    material,
    conductorDiameterMm: shape.conductorDiameterMm,
    insulationName,
    insulationThicknessMm: shape.insulationThicknessMm,
    insulationConductivityWPerMK: knownNominal(family, 'conductivityWPerMK', family.conductivityWPerMK),
    // An outside below the conductor's diameter is a measuring error.
    outsideMm: Math.max(shape.outsideMm, shape.conductorDiameterMm),
  }
}
