import { frozen } from '../../errors/inner.ts'
import { firstStage, fourNumbers, moments } from './moments.ts'
import type { WireModes } from './wireModes.ts'

// Over one step the joint's rise is a parabola through its values at the start, a third and the end. Each mode answers it exactly;
// a table holds those answers for one length of step, so that a step costs a few products a mode.

/** Answers of one wire's modes to a step of one length. */
export interface StepTable {
  durationS: number
  /** Seven numbers a mode, at the places of `A`. */
  readonly answers: Float64Array
  /** Sums of coupling times answer: to start, first stage, last and drive, for the first stage and then for the end. */
  readonly flow: Float64Array
}

/** Places of a mode's answers: what is left of it in the flow at the first stage and at the end; its decay, and what the rise at start, first stage and end and the surroundings add at the end. */
export const A = /* @__PURE__ */ frozen({ left1: 0, left2: 1, decay: 2, toStart: 3, toFirst: 4, toLast: 5, toDrive: 6, width: 7 } as const)

export function emptyTable(count: number): StepTable {
  return { durationS: 0, answers: new Float64Array(A.width * count), flow: new Float64Array(8) }
}

const scratch = /* @__PURE__ */ fourNumbers()

/** Fills the table for a step of this length. */
export function fillTable(modes: WireModes, durationS: number, table: StepTable): void {
  const { count, ratesPerS, coupling, drive } = modes
  const { answers, flow } = table
  const m = scratch
  let f0 = 0
  let f1 = 0
  let f2 = 0
  let f3 = 0
  let l0 = 0
  let l1 = 0
  let l2 = 0
  let l3 = 0
  for (let k = 0, at = 0; k < count; k++, at += A.width) {
    const z = (ratesPerS[k] as number) * durationS
    const beta = coupling[k] as number
    const scaled = beta * durationS
    const sigma = (drive[k] as number) * durationS
    moments(z, firstStage, m)
    let i0 = m[0] as number
    let i1 = m[1] as number
    let i2 = m[2] as number
    answers[at + A.left1] = beta * (m[3] as number)
    f0 += beta * scaled * (3 * i2 - 4 * i1 + i0)
    f1 += beta * scaled * 4.5 * (i1 - i2)
    f2 += beta * scaled * (1.5 * i2 - 0.5 * i1)
    f3 += beta * sigma * i0
    moments(z, 1, m)
    i0 = m[0] as number
    i1 = m[1] as number
    i2 = m[2] as number
    const decay = m[3] as number
    const start = scaled * (3 * i2 - 4 * i1 + i0)
    const first = scaled * 4.5 * (i1 - i2)
    const last = scaled * (1.5 * i2 - 0.5 * i1)
    answers[at + A.left2] = beta * decay
    answers[at + A.decay] = decay
    answers[at + A.toStart] = start
    answers[at + A.toFirst] = first
    answers[at + A.toLast] = last
    answers[at + A.toDrive] = sigma * i0
    l0 += beta * start
    l1 += beta * first
    l2 += beta * last
    l3 += beta * sigma * i0
  }
  flow[0] = f0
  flow[1] = f1
  flow[2] = f2
  flow[3] = f3
  flow[4] = l0
  flow[5] = l1
  flow[6] = l2
  flow[7] = l3
  table.durationS = durationS
}
