import { minimumBendRadiusMm } from '@strandwise/core'
import { wireText } from '../decision/inner.ts'
import { clampedKinds, type PlanStep, planValue, rule, studKinds } from '../facts/inner.ts'
import { assumed } from '../job/inner.ts'
import { jointShape } from '../ways/inner.ts'
import { aluminiumClamp, aluminiumCrimp, isAluminium, sampleStep } from './joining.ts'
import { step } from './step.ts'
import { torqueWords } from './torque.ts'
import type { Mending } from './worked.ts'

/** Steps of a new run: both ends released, wire drawn in, a sample pulled, both ends crimped and seated. */
export function newRun(work: Mending): readonly PlanStep[] {
  const { to, decision } = work
  const { units } = to
  const { kind } = to.terminal
  const strip = planValue('strip', jointShape('new-crimped-terminal', to).stripMm, 'mm', assumed.strip.source)
  const radius = planValue('least bend radius', minimumBendRadiusMm({ outsideDiameterMm: to.outsideMm, rule: 'unsupported' }), 'mm', rule('sr-bend-10d').source)
  const length = planValue('new run', decision.wire?.lengthM ?? to.outLengthM, 'm')
  const clamped = clampedKinds.includes(kind)
  return [
    step(units, 'release-both'),
    step(units, 'draw-in', { values: { length, radius }, names: { wire: wireText(to) } }),
    ...(clamped ? [] : [sampleStep(work)]),
    isAluminium(work)
      ? clamped
        ? aluminiumClamp(work, strip)
        : aluminiumCrimp(work, strip, 'the new terminals at both ends')
      : step(units, clamped ? 'clamp-both' : 'crimp-both', { values: { strip } }),
    step(units, 'seat-both', { names: { torque: studKinds.includes(kind) ? `, the nuts tightened${torqueWords(to)}` : '' } }),
  ]
}
