import { steadyCurrentA } from '@strandwise/core'

/** A wire, its current, and the conductor temperature from which the current was computed. */
export interface Point {
  readonly areaMm2: number
  readonly insulationThicknessMm: number
  readonly ambientC: number
  readonly correlation: 'churchill-chu' | 'morgan'
  readonly currentA: number
  readonly conductorC: number
}

export const insulationConductivityWPerMK = 0.17

const areas = [0.05, 0.14, 0.35, 0.75, 1.5, 4, 10, 25, 50, 95]
const walls = [0, 0.25, 0.5, 1, 1.5, 2]
const airs = [-40, 0, 23, 60, 85, 125]
const rises = [1, 3, 10, 30, 60, 100, 150]

/** Areas 0.05 to 95 mm2, walls 0 to 2 mm, air -40 to 125 C, rises 1 to 150 K, both correlations: every combination. */
export function grid(): readonly Point[] {
  return areas.flatMap((areaMm2) =>
    walls.flatMap((insulationThicknessMm) =>
      airs.flatMap((ambientC) =>
        rises.flatMap((riseK) =>
          (['churchill-chu', 'morgan'] as const).flatMap((correlation) => {
            const conductorC = ambientC + riseK
            const wire = { areaMm2, insulationThicknessMm, insulationConductivityWPerMK, ambientC, correlation }
            const currentA = steadyCurrentA({ ...wire, limitC: conductorC })
            return currentA === null ? [] : [{ areaMm2, insulationThicknessMm, ambientC, correlation, currentA, conductorC }]
          }),
        ),
      ),
    ),
  )
}
