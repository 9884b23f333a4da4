import { conductorTemperatureBandC, NoSteadyStateError } from '@strandwise/core'
import { bundleBand } from '../facts/inner.ts'
import type { WorkedOut } from '../report/inner.ts'

/** Conductor temperature against current in the hottest air, by both still-air correlations. */
export interface CurrentPicture {
  readonly currentA: readonly number[]
  readonly lowC: readonly number[]
  readonly highC: readonly number[]
  readonly workingA: number
  readonly limitC: number
  readonly ambientC: number
  /** null if no current is allowed. */
  readonly limitA: number | null
}

const points = 24

/** Steady temperature of the wire after the repair, over a range of currents that includes working current and limit. */
export function decidedCurrents({ deciding, wire, facts: found }: WorkedOut): CurrentPicture {
  const newRun = deciding.decided.way?.method === 'replace-the-run'
  const facts = newRun ? wire.facts : found
  const limitA = (newRun ? wire.judged : wire.found).verdict.continuousA?.low ?? null
  const lastA = 1.25 * Math.max(facts.currentA, limitA ?? 0)
  const currentA: number[] = []
  const lowC: number[] = []
  const highC: number[] = []
  for (let index = 0; index <= points; index++) {
    const current = (lastA * index) / points
    try {
      const band =
        facts.loadedInBundle > 1 ? bundleBand(facts, current) : conductorTemperatureBandC({ ...facts.wire, ambientC: facts.hottestC, currentA: current })
      currentA.push(current)
      lowC.push(band.low)
      highC.push(band.high)
    } catch (error) {
      // The curve ends at the last current with a steady temperature.
      if (error instanceof NoSteadyStateError) break
      throw error
    }
  }
  return { currentA, lowC, highC, workingA: facts.currentA, limitC: facts.limitC, ambientC: facts.hottestC, limitA }
}
