import type { Interval } from '@strandwise/core'
import type { Chain, PlacedReading, TakenReading } from '../../circuit/inner.ts'
import type { CauseId, Probe } from '../diagnosisShapes.ts'
import { usable } from '../systems.ts'
import { candidatesFor } from './candidates.ts'
import { type Fit, Fitter } from './fit.ts'
import { bestProbe } from './nextProbe.ts'
import { askOf, observations } from './observed.ts'
import { intervalOf, type Predicted, predictAll } from './predict.ts'
import { unknownCount } from './unknowns.ts'

/** A cause, how well it fits the readings, and its predictions for them. */
export interface RankedCause {
  readonly id: CauseId
  /** Maximum log-likelihood of the readings under the cause; only differences between causes matter. */
  readonly logLikelihood: number
  readonly tiedWith: readonly CauseId[]
  /** 95 % interval predicted for each reading of the job. */
  readonly predicted: readonly PlacedReading[]
}

/** Causes ranked by fit, the leading set, and the reading that best separates it. */
export interface CauseRanking {
  readonly causes: readonly RankedCause[]
  readonly leading: readonly CauseId[]
  readonly next: { readonly probe: Probe; readonly expected: Readonly<Partial<Record<CauseId, Interval>>> } | null
}

/** Causes closer than this in log-likelihood are equal. */
const tie = 0.25
/** The best place of each cause, best cause first. */
function fitted(fitter: Fitter, chain: Chain, readings: readonly TakenReading[]): readonly Fit[] {
  const mostReadA = Math.max(0, ...readings.flatMap(({ currentA }) => currentA?.low ?? 0))
  const seed = new Float64Array(unknownCount)
  const starts = candidatesFor(chain, mostReadA).map((candidate) => fitter.start(candidate, seed))
  const fits = new Map(starts.toSorted((one, other) => one.cost - other.cost).map((start) => [start.candidate, fitter.fit(start)]))
  const best = new Map<CauseId, Fit>()
  for (const { candidate } of starts) {
    const found = fits.get(candidate) as Fit
    const kept = best.get(candidate.id)
    if (kept === undefined || found.cost < kept.cost) best.set(candidate.id, found)
  }
  return [...best.values()].toSorted((one, other) => one.cost - other.cost)
}

/** The smallest set of causes whose probability reaches the coverage; ties are kept together. */
function leadingOf(fits: readonly Fit[], coverage: number): readonly Fit[] {
  const least = fits[0]?.cost ?? 0
  const weights = fits.map(({ cost }) => Math.exp(least - cost))
  const whole = weights.reduce((sum, weight) => sum + weight, 0)
  let share = 0
  let count = 0
  while (count < fits.length && share < coverage * whole) {
    share += weights[count] as number
    count += 1
  }
  const last = fits[count - 1]
  if (last === undefined) return []
  return fits.filter(({ cost }, index) => index < count || cost - last.cost < tie)
}

/** The leading causes and the reading that best separates them. */
interface LeadingCauses extends Pick<CauseRanking, 'leading' | 'next'> {
  readonly fitter: Fitter
  readonly fits: readonly Fit[]
  /** Readings on the chain and within the supply. */
  readonly good: readonly TakenReading[]
}

/** Fits all causes to the readings; if not thorough, those that cannot lead only until that shows. What each predicts for the readings is left out. */
export function leadingFrom(chain: Chain, readings: readonly TakenReading[], coverage: number, thorough = false): LeadingCauses {
  const good = readings.filter((reading) => usable(chain, reading))
  const fitter = new Fitter(chain, observations(chain, good), thorough)
  const fits = fitted(fitter, chain, good)
  const leading = leadingOf(fits, coverage)
  return { fitter, fits, good, leading: leading.map(({ candidate }) => candidate.id), next: bestProbe(chain, fitter, leading, good) }
}

/** Ranks causes from readings placed on the chain, with the predictions of each. */
export function rankFrom(chain: Chain, readings: readonly TakenReading[], placed: readonly PlacedReading[], coverage: number): CauseRanking {
  const { fitter, fits, good, leading, next } = leadingFrom(chain, readings, coverage, true)
  const asks = good.map((reading) => askOf(chain, reading))
  const causes = fits.map((fit): RankedCause => {
    const shown = predictAll(fitter, fit, asks)
    return {
      id: fit.candidate.id,
      logLikelihood: -fit.cost,
      tiedWith: fits.filter((other) => other !== fit && Math.abs(other.cost - fit.cost) < tie).map(({ candidate }) => candidate.id),
      predicted: good.map(({ index }, n) => {
        const { low: _low, high: _high, ...probe } = placed[index] as PlacedReading
        return { ...probe, ...intervalOf(shown[n] as Predicted) }
      }),
    }
  })
  return { causes, leading, next }
}

export const defaultCoverage = 0.95
