import {
  bundleTemperatureC,
  type Correlation,
  conductorTemperatureC,
  effectiveAmbientC,
  resistanceOhm,
  steadyCurrentA,
  temperatureOverStepsC,
  type WireHeat,
  type WireVerdict,
} from '@strandwise/core'
import type { JobFacts, SectionDraft } from '../facts/inner.ts'
import type { wireWords } from './wireWords.ts'

type Draft = SectionDraft<typeof wireWords>

const conductorName = 'conductor, in the hottest air'

/** Of the inputs with either still-air correlation those for which the figure is larger. */
function larger<T>(inputs: (correlation: Correlation) => T, figure: (inputs: T) => number): T {
  const [one, other] = [inputs('churchill-chu'), inputs('morgan')]
  return figure(one) >= figure(other) ? one : other
}

/** Notes how drop, conductor temperature and continuous current of a wire are computed, by the unfavourable correlation. */
export function noteWireWorkings(draft: Draft, facts: JobFacts, verdict: WireVerdict): void {
  const { wire, hottestC: ambientC, currentA, limitC } = facts
  if (verdict.dropV !== null) noteDrop(draft, facts)
  const alone = (correlation: Correlation): WireHeat => ({ ...wire, ambientC, correlation })
  const { bundleOutsideMm } = facts.job.wire
  const outside = bundleOutsideMm === undefined ? {} : { bundleOutsideMm }
  const bundled = (correlation: Correlation) => ({ ...alone(correlation), loadedWires: facts.loadedInBundle, ...outside })
  const { conductorC, continuousA } = verdict
  const single = facts.loadedInBundle === 1
  if (conductorC !== null && facts.duty !== null && facts.duty.offS > 0) {
    const inAir = (correlation: Correlation): WireHeat =>
      single ? alone(correlation) : { ...alone(correlation), ambientC: effectiveAmbientC({ ...bundled(correlation), currentA: verdict.equivalentA }) }
    notePeak(draft, facts, inAir, facts.duty)
  } else if (conductorC !== null && single)
    draft.working(
      'conductorTemperatureC',
      larger((correlation) => ({ ...alone(correlation), currentA }), conductorTemperatureC),
      conductorName,
    )
  else if (conductorC !== null) noteCentre(draft, (correlation) => ({ ...bundled(correlation), currentA }), conductorName)
  if (continuousA === null) return
  if (!single) noteCentre(draft, (correlation) => ({ ...bundled(correlation), currentA: continuousA.low }), 'limit')
  else
    draft.working(
      'steadyCurrentA',
      larger(
        (correlation) => ({ ...alone(correlation), limitC }),
        (inputs) => -(steadyCurrentA(inputs) ?? 0),
      ),
      'wire at steady state, in the hottest air',
    )
}

function noteDrop(draft: Draft, { wire, material, layFactor, currentA, hottestC: temperatureC, outLengthM, returnLengthM }: JobFacts): void {
  const ohm = (lengthM: number) => resistanceOhm({ areaMm2: wire.areaMm2, lengthM, material, temperatureC, layFactor: layFactor })
  const inputs = { currentA, outResistanceOhm: ohm(outLengthM), returnResistanceOhm: ohm(returnLengthM) }
  draft.working('voltageDropV', inputs, 'drop over the wire, out and back')
}

function noteCentre(draft: Draft, inputs: (correlation: Correlation) => Parameters<typeof bundleTemperatureC>[0], name: string): void {
  draft.working(
    'bundleTemperatureC',
    larger(inputs, (one) => bundleTemperatureC(one).centreC),
    name,
  )
}

/** The peak of a repeated duty: where the on-time ends that begins at the temperature in which the off-time ends. */
function notePeak(
  draft: Draft,
  { currentA }: JobFacts,
  inAir: (correlation: Correlation) => WireHeat,
  { onS, offS }: { readonly onS: number; readonly offS: number },
): void {
  const steps = [
    { currentA, timeS: onS },
    { currentA: 0, timeS: offS },
  ]
  const cycle = (correlation: Correlation) => {
    const wire = inAir(correlation)
    return { wire, ...temperatureOverStepsC({ ...wire, steps, repeated: true }) }
  }
  const { wire, endsC } = larger(cycle, ({ peakC }) => peakC)
  draft.working('temperatureAfterC', { ...wire, currentA, timeS: onS, initialC: endsC[1] ?? wire.ambientC }, conductorName)
}
