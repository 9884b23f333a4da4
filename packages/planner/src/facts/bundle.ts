import { bundleCurrentA, bundleDiameterMm, bundleTemperatureC, steadyCurrentBandA } from '@strandwise/core'
import type { JobFacts } from './jobFacts.ts'

interface Band {
  readonly low: number
  readonly high: number
}

/** The bundle's outside: as given, or as so many wires like this one lie together. */
function bundleOutsideMm(facts: JobFacts): number {
  return facts.job.wire.bundleOutsideMm ?? bundleDiameterMm(Array.from({ length: facts.loadedInBundle }, () => facts.outsideMm))
}

function bundleInputs(facts: JobFacts, correlation: 'churchill-chu' | 'morgan') {
  return { ...facts.wire, ambientC: facts.hottestC, loadedWires: facts.loadedInBundle, bundleOutsideMm: bundleOutsideMm(facts), correlation }
}

/** Temperature at the bundle's centre by both correlations. */
export function bundleBand(facts: JobFacts, currentA: number): Band {
  const found = (['churchill-chu', 'morgan'] as const).map((correlation) => bundleTemperatureC({ ...bundleInputs(facts, correlation), currentA }).centreC)
  return { low: Math.min(...found), high: Math.max(...found) }
}

/** The current that the wire carries for ever at its limit in the hottest air: the unfavourable end of the band. null where none is allowed. */
export function wireCurrent(facts: JobFacts): number | null {
  if (facts.hottestC >= facts.limitC) return null
  if (facts.loadedInBundle === 1) return steadyCurrentBandA({ ...facts.wire, ambientC: facts.hottestC, limitC: facts.limitC })?.low ?? null
  const found = (['churchill-chu', 'morgan'] as const).map((correlation) => bundleCurrentA({ ...bundleInputs(facts, correlation), limitC: facts.limitC }))
  return found.reduce<number | null>((least, current) => (current === null || least === null ? null : Math.min(least, current)), Number.POSITIVE_INFINITY)
}
