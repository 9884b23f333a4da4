import { DomainError, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { filletConductanceSPerM } from './filletConductance.ts'
import { type LapPair, requireConductors } from './lapPair.ts'

/** What a wrapped and a twisted joint have in common; ohm per metre are those of the straight conductors. */
export interface WoundJoint {
  readonly turns: number
  readonly pitchMm: number
  readonly filletWidthMm: number
  readonly layerMm: number
  readonly layerOhmM: number
  /** Resistivity across the wires. */
  readonly resistivityOhmM: number
  readonly filmOhmM2?: number
  readonly conductorsOhmPerM: readonly [number, number]
}

const ownNames: Readonly<Record<string, string>> = { gapMm: 'layerMm', bondWidthMm: 'filletWidthMm', solderOhmM: 'layerOhmM' }

/** The fillet names its fields in its own way. */
function named<T>(run: () => T): T {
  try {
    return run()
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    const { parameter, value, allowed, source, code } = error
    throw new DomainError(ownNames[parameter] ?? parameter, value, allowed, source, code)
  }
}

/** A wound joint unrolled: the straight overlap that does the same. */
export type UnrolledJoint = LapPair & { readonly bondWidthMm: number }

/**
 * The straight overlap with this bond width and with conductors longer by these factors.
 * The fillet is that of two wires as thick as the thinner one; a metre of joint has bondWidthMm/filletWidthMm metres of it.
 */
export function unrolled(i: WoundJoint, thinnerMm: number, bondWidthMm: number, longer: readonly [number, number]): UnrolledJoint {
  const [r1, r2] = requireConductors(i.conductorsOhmPerM)
  const { filletWidthMm, layerMm, layerOhmM, resistivityOhmM, filmOhmM2 } = i
  const filletSPerM = named(() =>
    filletConductanceSPerM({
      diameterMm: thinnerMm,
      resistivityOhmM,
      gapMm: layerMm,
      bondWidthMm: filletWidthMm,
      solderOhmM: layerOhmM,
      ...(filmOhmM2 === undefined ? {} : { filmOhmM2 }),
    }),
  )
  return {
    overlapMm: requireFiniteResult('turns', i.turns, requirePositive('turns', i.turns) * i.pitchMm),
    conductorsOhmPerM: [requireFiniteResult('conductorsOhmPerM.0', r1, r1 * longer[0]), requireFiniteResult('conductorsOhmPerM.1', r2, r2 * longer[1])],
    interfaceSPerM: requireFiniteResult('filletWidthMm', filletWidthMm, (filletSPerM * bondWidthMm) / filletWidthMm),
    bondWidthMm,
  }
}
