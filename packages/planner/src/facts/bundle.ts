import { bundleCurrentA, bundleDiameterMm, bundleTemperatureC, conductorTemperatureC, NoSteadyStateError, steadyCurrentBandA } from '@strandwise/core'
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

/** Rounds in which the air that warms a lone wire as the bundle does is found; each takes off most of what is left. */
const rounds = 6

/** The air that a joint feels: in a bundle the warmth of the other wires, as the air in which this wire alone would come to the bundle's centre. */
export function airAroundJointC(facts: JobFacts): number {
  if (facts.loadedInBundle === 1) return facts.hottestC
  try {
    const centreC = bundleBand(facts, facts.currentA).high
    let airC = facts.hottestC
    for (let n = 0; n < rounds; n += 1) airC += centreC - conductorTemperatureC({ ...facts.wire, ambientC: airC, currentA: facts.currentA })
    return airC
  } catch (error) {
    // The wire section tells of a bundle that settles nowhere.
    if (!(error instanceof NoSteadyStateError)) throw error
    return facts.hottestC
  }
}
