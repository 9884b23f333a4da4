import { ConvergenceError } from '../../errors/index.ts'
import { exchange, X } from './heatExchange.ts'
import { onPlateau, slopeJPerK } from './lump.ts'
import { solveLinear } from './solveLinear.ts'
import { stepErrorK } from './stepError.ts'
import type { HeatingStep } from './stepState.ts'
import { A, type StepTable } from './stepTable.ts'
import type { WireModes } from './wireModes.ts'

/** Radau's two-stage weights: of the first balance and of the end's, up to the first stage and up to the end. */
const a11 = 5 / 12
const a12 = -1 / 12
const a21 = 3 / 4
const a22 = 1 / 4
const mostTrials = 12
/** Newton's last change against the rise: a tip or tube close to the joint passes its heat by a difference of rises as small as this. */
const newtonChange = 1e-10

/** Solves the heat balance of one step of these tables' length. Nothing of the run changes yet. */
export function solveStep(step: HeatingStep, durationS: number, tables: readonly StepTable[]): void {
  const { model, source, limited, joint, body, modes, values, matrix: M, right, flows1, flows2 } = step
  const start = joint.riseK
  // Flow into all wires at the two stages: constant + slopes of the two unknown rises.
  let q0 = 0
  let k1 = -step.drivenW
  let k2 = -step.drivenW
  let g11 = step.admittanceWPerK
  let g12 = 0
  let g21 = 0
  let g22 = step.admittanceWPerK
  for (let w = 0; w < modes.length; w++) {
    const { count, coupling } = modes[w] as WireModes
    const table = tables[w] as StepTable
    const y = values[w] as Float64Array
    const tails = model.wires[w]?.tails ?? 0
    const { answers, flow } = table
    let s0 = 0
    let s1 = 0
    let s2 = 0
    for (let k = 0, at = 0; k < count; k++, at += A.width) {
      const yk = y[k] as number
      s0 += (coupling[k] as number) * yk
      s1 += (answers[at + A.left1] as number) * yk
      s2 += (answers[at + A.left2] as number) * yk
    }
    q0 -= tails * s0
    k1 -= tails * (s1 + (flow[0] as number) * start + (flow[3] as number))
    k2 -= tails * (s2 + (flow[4] as number) * start + (flow[7] as number))
    g11 -= tails * (flow[1] as number)
    g12 -= tails * (flow[2] as number)
    g21 -= tails * (flow[5] as number)
    g22 -= tails * (flow[6] as number)
  }
  q0 += step.admittanceWPerK * start - step.drivenW
  const bodyStart = body === null ? 0 : body.riseK
  exchange(model, source, limited, start, bodyStart, flows1)
  const balanceStart = (flows1[X.joint] as number) - q0
  const bodyStartW = flows1[X.body] as number
  const jointFixed = onPlateau(joint)
  const bodyFixed = body !== null && onPlateau(body)
  const C = (jointFixed ? 0 : step.jointStoreJPerK) + slopeJPerK(joint)
  const Cb = body === null ? 0 : slopeJPerK(body)
  const n = body === null ? 2 : 4
  let t1 = start
  let t2 = start
  let b1 = bodyStart
  let b2 = bodyStart
  let f1 = 0
  let f2 = 0
  for (let trial = 0; ; trial++) {
    exchange(model, source, limited, t1, b1, flows1)
    exchange(model, source, limited, t2, b2, flows2)
    f1 = (flows1[X.joint] as number) - k1 - g11 * t1 - g12 * t2
    f2 = (flows2[X.joint] as number) - k2 - g21 * t1 - g22 * t2
    const x1 = (flows1[X.jointByJoint] as number) - g11
    const x2 = (flows2[X.jointByJoint] as number) - g22
    if (jointFixed) {
      M.fill(0)
      M[0] = 1
      M[5] = 1
      right[0] = 0
      right[1] = 0
    } else {
      M[0] = C - durationS * (a11 * x1 - a12 * g21)
      M[1] = -durationS * (a12 * x2 - a11 * g12)
      M[4] = -durationS * (a21 * x1 - a22 * g21)
      M[5] = C - durationS * (a22 * x2 - a21 * g12)
      right[0] = durationS * (a11 * f1 + a12 * f2) - C * (t1 - start)
      right[1] = durationS * (a21 * f1 + a22 * f2) - C * (t2 - start)
    }
    if (body !== null) {
      const fb1 = flows1[X.body] as number
      const fb2 = flows2[X.body] as number
      if (!jointFixed) {
        M[2] = -durationS * a11 * (flows1[X.jointByBody] as number)
        M[3] = -durationS * a12 * (flows2[X.jointByBody] as number)
        M[6] = -durationS * a21 * (flows1[X.jointByBody] as number)
        M[7] = -durationS * a22 * (flows2[X.jointByBody] as number)
      }
      const free = bodyFixed ? 0 : 1
      const own = bodyFixed ? 1 : Cb
      M[8] = -free * durationS * a11 * (flows1[X.bodyByJoint] as number)
      M[9] = -free * durationS * a12 * (flows2[X.bodyByJoint] as number)
      M[10] = own - free * durationS * a11 * (flows1[X.bodyByBody] as number)
      M[11] = -free * durationS * a12 * (flows2[X.bodyByBody] as number)
      M[12] = -free * durationS * a21 * (flows1[X.bodyByJoint] as number)
      M[13] = -free * durationS * a22 * (flows2[X.bodyByJoint] as number)
      M[14] = -free * durationS * a21 * (flows1[X.bodyByBody] as number)
      M[15] = own - free * durationS * a22 * (flows2[X.bodyByBody] as number)
      right[2] = free * (durationS * (a11 * fb1 + a12 * fb2) - Cb * (b1 - bodyStart))
      right[3] = free * (durationS * (a21 * fb1 + a22 * fb2) - Cb * (b2 - bodyStart))
    }
    solveLinear(n, M, right)
    t1 += right[0] as number
    t2 += right[1] as number
    let change = Math.max(Math.abs(right[0] as number), Math.abs(right[1] as number))
    if (body !== null) {
      b1 += right[2] as number
      b2 += right[3] as number
      change = Math.max(change, Math.abs(right[2] as number), Math.abs(right[3] as number))
    }
    if (change <= newtonChange * (1 + Math.abs(t2))) break
    if (trial === mostTrials || !(change < Infinity)) throw new ConvergenceError('a step of the heating curve, in K', change)
  }
  step.joint1 = t1
  step.joint2 = t2
  step.jointMoves1 = jointFixed ? joint.share + (durationS * (a11 * f1 + a12 * f2)) / C : t1
  step.jointMoves2 = jointFixed ? joint.share + (durationS * (a21 * f1 + a22 * f2)) / C : t2
  const fb1 = flows1[X.body] as number
  const fb2 = flows2[X.body] as number
  step.body1 = b1
  step.body2 = b2
  step.bodyMoves1 = bodyFixed && body !== null ? body.share + (durationS * (a11 * fb1 + a12 * fb2)) / Cb : b1
  step.bodyMoves2 = bodyFixed && body !== null ? body.share + (durationS * (a21 * fb1 + a22 * fb2)) / Cb : b2
  step.heatInJ = durationS * (a21 * (flows1[X.heatIn] as number) + a22 * (flows2[X.heatIn] as number))
  step.surfaceJ = durationS * (a21 * (flows1[X.surface] as number) + a22 * (flows2[X.surface] as number))
  step.errorK = stepErrorK(step, durationS, f1, f2, balanceStart, bodyStartW, g22)
}
