import { limitedBelowK } from './heatExchange.ts'
import type { HeatingRecord } from './heatingRecord.ts'
import { changePhase, type Lump, lowerBound, moveTo, moving, recover, upperBound } from './lump.ts'
import { firstPassing } from './parabola.ts'
import type { HeatingStep } from './stepState.ts'

/** What ends a step early. */
type Passed = 'none' | 'joint-up' | 'joint-down' | 'body-up' | 'body-down' | 'freed' | 'limited' | 'recovered'

/** Which event comes first within the solved step, at `share` of it; 2 where none does. */
export interface Passing {
  kind: Passed
  share: number
  bound: number
}

/** A bound that is not there lies at infinity: never passed. */
function consider(found: Passing, kind: Passed, start: number, first: number, last: number, bound: number, upwards: boolean): void {
  const x = firstPassing(start, first, last, bound, upwards)
  if (x >= found.share) return
  found.kind = kind
  found.share = x
  found.bound = bound
}

/** The lump whose rise tells the heater what to give. */
const governor = (step: HeatingStep): Lump => step.body ?? step.joint

/** Finds the first event of the solved step. */
export function findPassing(step: HeatingStep, found: Passing): void {
  found.kind = 'none'
  found.share = 2
  const { joint, body, source } = step
  // Before the phases: a tube that recovers while its ring stands at its melting point has recovered.
  if (body !== null && source.kind === 'tube' && !source.gripped) {
    consider(found, 'recovered', body.riseK, step.body1, step.body2, source.recoveryRiseK, true)
  }
  const at = moving(joint)
  consider(found, 'joint-up', at, step.jointMoves1, step.jointMoves2, upperBound(joint), true)
  consider(found, 'joint-down', at, step.jointMoves1, step.jointMoves2, lowerBound(joint), false)
  if (body !== null) {
    const bodyAt = moving(body)
    consider(found, 'body-up', bodyAt, step.bodyMoves1, step.bodyMoves2, upperBound(body), true)
    consider(found, 'body-down', bodyAt, step.bodyMoves1, step.bodyMoves2, lowerBound(body), false)
  }
  const first = body === null ? step.joint1 : step.body1
  const last = body === null ? step.joint2 : step.body2
  const limit = limitedBelowK(source)
  if (step.limited) consider(found, 'freed', governor(step).riseK, first, last, limit, true)
  else consider(found, 'limited', governor(step).riseK, first, last, limit, false)
}

/** Where that which passes the bound stands at the step's start. */
export function beginning(step: HeatingStep, kind: Passed): number {
  if (kind === 'joint-up' || kind === 'joint-down') return moving(step.joint)
  if (kind === 'body-up' || kind === 'body-down') return moving(governor(step))
  return governor(step).riseK
}

/** Where it stands at the end of the solved step. */
export function ending(step: HeatingStep, kind: Passed): number {
  if (kind === 'joint-up' || kind === 'joint-down') return step.jointMoves2
  if (kind === 'body-up' || kind === 'body-down') return step.bodyMoves2
  return step.body === null ? step.joint2 : step.body2
}

/** Stands what passed exactly on its bound and changes what the event changes. */
export function happen(step: HeatingStep, record: HeatingRecord, found: Passing, nowS: number): void {
  const { joint, body } = step
  switch (found.kind) {
    case 'joint-up':
      if (joint.phase === 'solid') record.solidusAtS ??= nowS
      changePhase(joint, true)
      if (joint.phase === 'liquid') record.liquidusAtS ??= nowS
      return
    case 'joint-down':
      changePhase(joint, false)
      record.resolidifiedAtS = joint.phase === 'solid' ? nowS : null
      return
    case 'body-up':
    case 'body-down':
      if (body === null) return
      changePhase(body, found.kind === 'body-up')
      if (body.phase === 'liquid') record.ringMeltsAtS ??= nowS
      return
    case 'recovered':
      if (body === null || step.source.kind !== 'tube') return
      moveTo(body, found.bound)
      recover(body, joint, step.jointStoreJPerK)
      step.source = { ...step.source, gripped: true }
      record.recoveredAtS ??= nowS
      if (joint.share > 0) record.solidusAtS ??= nowS
      if (joint.phase === 'liquid') record.liquidusAtS ??= nowS
      return
    case 'freed':
      step.limited = false
      return
    case 'limited':
      step.limited = true
  }
}
