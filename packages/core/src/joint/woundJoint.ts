import { requireFiniteResult, requirePositive } from '../errors/index.ts'
import { interfaceConductanceSPerM } from './interfaceConductance.ts'
import { type LapPair, requireConductors } from './lapPair.ts'

/** What a wrapped and a twisted joint have in common; ohm per metre are those of the straight conductors. */
export interface WoundJoint {
  readonly turns: number
  readonly pitchMm: number
  readonly filletWidthMm: number
  readonly layerMm: number
  readonly layerOhmM: number
  readonly filmOhmM2?: number
  readonly conductorsOhmPerM: readonly [number, number]
}

/** A wound joint unrolled: the straight overlap that does the same. */
export type UnrolledJoint = LapPair & { readonly bondWidthMm: number }

/** The straight overlap with this bond width and with conductors longer by these factors. */
export function unrolled(i: WoundJoint, bondWidthMm: number, longer: readonly [number, number]): UnrolledJoint {
  const [r1, r2] = requireConductors(i.conductorsOhmPerM)
  const { layerMm, layerOhmM, filmOhmM2 } = i
  return {
    overlapMm: requireFiniteResult('turns', i.turns, requirePositive('turns', i.turns) * i.pitchMm),
    conductorsOhmPerM: [requireFiniteResult('conductorsOhmPerM.0', r1, r1 * longer[0]), requireFiniteResult('conductorsOhmPerM.1', r2, r2 * longer[1])],
    interfaceSPerM: interfaceConductanceSPerM({ bondWidthMm, layerMm, layerOhmM, ...(filmOhmM2 === undefined ? {} : { filmOhmM2 }) }),
    bondWidthMm,
  }
}
