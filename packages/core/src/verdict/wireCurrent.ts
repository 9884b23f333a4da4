import {
  bundleCurrentA,
  bundleTemperatureC,
  conductorTemperatureC,
  effectiveAmbientC,
  steadyCurrentA,
  temperatureOverStepsC,
  type WireHeat,
} from '../ampacity/index.ts'
import { DomainError, NoSteadyStateError } from '../errors/index.ts'
import { correlations } from '../heat/index.ts'
import type { Interval } from '../materials/index.ts'
import { roundingShare, verdictDefaults } from './verdictDefaults.ts'
import type { WireFinding, WireJob } from './wireJob.ts'

/** The wire in the hottest air, one for each still-air correlation, with its bundle. */
function wiresOf(job: WireJob) {
  const { bundleOutsideMm, loadedWires = verdictDefaults.loadedWires } = job
  const bundle = bundleOutsideMm === undefined ? { loadedWires } : { loadedWires, bundleOutsideMm }
  return correlations.map((correlation) => ({ ...job.wire, ambientC: job.hottestC, correlation, ...bundle }))
}

const span = (values: readonly number[]): Interval => ({ low: Math.min(...values), high: Math.max(...values) })

/** Continuous current at the limit by both correlations; null if none is allowed. */
export function continuousA(job: WireJob): Interval | null {
  const found: number[] = []
  for (const wire of wiresOf(job)) {
    const currentA =
      wire.loadedWires === 1 && job.bundleOutsideMm === undefined
        ? steadyCurrentA({ ...wire, limitC: job.limitC })
        : bundleCurrentA({ ...wire, limitC: job.limitC })
    if (currentA === null) return null
    found.push(currentA)
  }
  return span(found)
}

/** The continuous current with the same heat as the duty. */
export function equivalentA({ currentA, duty }: WireJob): number {
  return duty === undefined ? currentA : currentA * Math.sqrt(duty.onS / (duty.onS + duty.offS))
}

/** The wire alone in the effective ambient of its bundle at a current, where it is as hot as in the bundle. */
export function aloneInBundleAir(job: WireJob, currentA: number, correlation: WireHeat['correlation'] = 'churchill-chu'): WireHeat {
  const wire = { ...job.wire, ambientC: job.hottestC, correlation }
  if ((job.loadedWires ?? verdictDefaults.loadedWires) === 1 && job.bundleOutsideMm === undefined) return wire
  const found = wiresOf(job).find((one) => one.correlation === correlation)
  return found === undefined ? wire : { ...wire, ambientC: effectiveAmbientC({ ...found, currentA }) }
}

/** Steady conductor temperature at the load by both correlations, or its peak over a repeated duty. */
function conductorBandC(job: WireJob): Interval {
  const { currentA, duty } = job
  return span(
    wiresOf(job).map((wire) => {
      if (duty === undefined || duty.offS === 0) {
        if (wire.loadedWires === 1 && job.bundleOutsideMm === undefined) return conductorTemperatureC({ ...wire, currentA })
        return bundleTemperatureC({ ...wire, currentA }).centreC
      }
      const inAir = aloneInBundleAir(job, equivalentA(job), wire.correlation)
      const steps = [
        { currentA, timeS: duty.onS },
        { currentA: 0, timeS: duty.offS },
      ]
      return temperatureOverStepsC({ ...inAir, steps, repeated: true }).peakC
    }),
  )
}

/** Conductor temperature at the load, with its finding; null without a steady state below the melting point. */
export function judgeCurrent(job: WireJob, allowed: Interval | null): { readonly conductorC: Interval | null; readonly finding: WireFinding } {
  const { currentA, hottestC, limitC } = job
  const found = (code: WireFinding['code'], verdict: WireFinding['verdict'], values: WireFinding['values']): WireFinding => ({
    code,
    topic: 'current',
    verdict,
    values,
    sources: [],
  })
  let conductorC: Interval
  try {
    conductorC = conductorBandC(job)
  } catch (error) {
    if (error instanceof NoSteadyStateError) {
      const { largestCurrentA: largestA, ceilingC } = error
      return { conductorC: null, finding: found('no-steady-state', 'unsound', { currentA, largestA, ceilingC }) }
    }
    if (!(error instanceof DomainError) || job.duty === undefined || !error.parameter.startsWith('steps')) throw error
    // A step of the duty passes the melting point.
    return { conductorC: null, finding: found('no-steady-state', 'unsound', { currentA, largestA: allowed?.high ?? 0, ceilingC: limitC }) }
  }
  if (hottestC >= limitC) return { conductorC, finding: found('air-at-limit', 'unsound', { hottestC, limitC }) }
  const roomK = limitC - conductorC.high
  const values = { conductorLowC: conductorC.low, conductorHighC: conductorC.high, limitC, roomK }
  const { nearLimitK } = verdictDefaults
  if (roomK < -roundingShare * limitC) return { conductorC, finding: found('current-over-limit', 'unsound', values) }
  if (roomK < nearLimitK) return { conductorC, finding: found('current-near-limit', 'caution', values) }
  return { conductorC, finding: found('current-within-limit', 'sound', values) }
}
