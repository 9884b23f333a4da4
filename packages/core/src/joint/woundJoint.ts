import { DomainError, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { filletConductanceSPerM } from './filletConductance.ts'
import { type LapPair, requireConductors } from './lapPair.ts'

/** Common input of a wrapped and a twisted joint; ohm per metre are those of the straight conductors. */
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

/** Renames the fillet's parameters in errors to those of the wound joint. */
function named<T>(run: () => T): T {
  try {
    return run()
  } catch (error) {
    if (!(error instanceof DomainError)) throw error
    const { parameter, value, allowed, source, code } = error
    throw new DomainError(ownNames[parameter] ?? parameter, value, allowed, source, code)
  }
}

/** A wound joint unrolled into the equivalent straight overlap. */
export type UnrolledJoint = LapPair & { readonly bondWidthMm: number }

/** The equivalent straight overlap with this bond width and these length factors of the conductors. The fillet is that of two wires of the thinner diameter; a metre of joint has bondWidthMm/filletWidthMm metres of it. */
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
