import { X } from './heatExchange.ts'
import { firstStage } from './moments.ts'
import type { HeatingStep } from './stepState.ts'

/** A slope amiss by 1 at the start, falling as (x - 1/3)(x - 1) does, shifts the value by 4/27 of it at the first stage and by nothing at the end. */
const errorShare = 4 / 27

/**
 * The parabola keeps the balance at its two stages, not at the start: what is amiss there tells its error, largest at the first stage. A lump gives back
 * at once part of what it has too much, and joint and body share it as an implicit step of that length would.
 */
export function stepErrorK(step: HeatingStep, durationS: number, f1: number, f2: number, balanceStart: number, bodyStartW: number, ownWPerK: number): number {
  const { joint, body, flows1, flows2 } = step
  const spanS = errorShare * durationS
  const amiss = spanS * ((f1 - firstStage * f2) / (1 - firstStage) - balanceStart)
  const a = step.jointStoreJPerK + joint.capacityJPerK - spanS * ((flows2[X.jointByJoint] as number) - ownWPerK)
  if (body === null) return Math.abs(amiss / a)
  const bodyAmiss = spanS * (((flows1[X.body] as number) - firstStage * (flows2[X.body] as number)) / (1 - firstStage) - bodyStartW)
  const d = body.capacityJPerK - spanS * (flows2[X.bodyByBody] as number)
  const b = -spanS * (flows2[X.jointByBody] as number)
  const c = -spanS * (flows2[X.bodyByJoint] as number)
  const determinant = a * d - b * c
  return Math.max(Math.abs(amiss * d - bodyAmiss * b), Math.abs(bodyAmiss * a - amiss * c)) / Math.abs(determinant)
}
