import { bundleCurrentA, bundleTemperatureC, effectiveAmbientC, NoSteadyStateError, steadyCurrentBandA } from '@strandwise/core'
import type { JobFacts } from './jobFacts.ts'

interface Band {
  readonly low: number
  readonly high: number
}

const correlations = ['churchill-chu', 'morgan'] as const

function bundleInputs(facts: JobFacts, correlation: (typeof correlations)[number]) {
  const { bundleOutsideMm } = facts.job.wire
  const outside = bundleOutsideMm === undefined ? {} : { bundleOutsideMm }
  return { ...facts.wire, ambientC: facts.hottestC, loadedWires: facts.loadedInBundle, ...outside, correlation }
}

/** Temperature at the bundle's centre by both correlations. */
export function bundleBand(facts: JobFacts, currentA: number): Band {
  const found = correlations.map((correlation) => bundleTemperatureC({ ...bundleInputs(facts, correlation), currentA }).centreC)
  return { low: Math.min(...found), high: Math.max(...found) }
}

/** The continuous current of the wire at its limit in the hottest air: the unfavourable end of the band. null where none is allowed. */
export function wireCurrent(facts: JobFacts): number | null {
  if (facts.hottestC >= facts.limitC) return null
  if (facts.loadedInBundle === 1) return steadyCurrentBandA({ ...facts.wire, ambientC: facts.hottestC, limitC: facts.limitC })?.low ?? null
  const found = correlations.map((correlation) => bundleCurrentA({ ...bundleInputs(facts, correlation), limitC: facts.limitC }))
  return found.reduce<number | null>((least, current) => (current === null || least === null ? null : Math.min(least, current)), Number.POSITIVE_INFINITY)
}

/** Effective ambient of a joint in the hottest air: in a bundle, the air in which this wire alone would be as hot as the bundle's centre. */
export function airAroundJointC(facts: JobFacts): number {
  if (facts.loadedInBundle === 1) return facts.hottestC
  try {
    return Math.max(...correlations.map((correlation) => effectiveAmbientC({ ...bundleInputs(facts, correlation), currentA: facts.currentA })))
  } catch (error) {
    // The wire section reports a bundle without a steady state.
    if (!(error instanceof NoSteadyStateError)) throw error
    return facts.hottestC
  }
}
