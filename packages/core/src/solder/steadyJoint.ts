import { ConvergenceError } from '../errors/index.ts'
import { finAdmittance } from './finAdmittance.ts'
import { exchange, isLimited, X } from './heatExchange.ts'
import type { HeatModel } from './heatModel.ts'

/** Where the joint and the edges would end with the tool on for ever; rises above the surroundings. */
export interface SteadyJoint {
  readonly riseK: number
  /** One a wire. */
  readonly edgeRiseK: readonly number[]
}

const mostTrials = 200

/** Solves the exact steady balance: it falls steadily with the joint's temperature, so it has one root. */
export function steadyJoint(model: HeatModel): SteadyJoint {
  const { source, wires } = model
  const fins = wires.map((wire) => finAdmittance(wire, true))
  let Y = 0
  let J = 0
  fins.forEach((fin, w) => {
    const tails = wires[w]?.tails ?? 0
    Y += tails * fin.admittanceWPerK
    J += tails * fin.offsetW
  })
  const out = new Float64Array(8)
  // A tip with mass ends like one without.
  const steady =
    source.kind === 'heavy-iron' ? ({ ...source, kind: 'iron', resistanceKPerW: source.tipResistanceKPerW + source.contactResistanceKPerW } as const) : source
  const driving = steady.kind === 'iron' ? steady.setRiseK : steady.kind === 'air' ? steady.airRiseK : 0
  const rises = [0, driving, ...wires.flatMap((wire) => [wire.clip?.riseK ?? 0, wire.swept?.riseK ?? 0])]
  let low = Math.min(...rises)
  let high = Math.max(...rises)
  let rise = high
  for (let trial = 0; trial < mostTrials; trial++) {
    exchange(model, steady, isLimited(steady, rise, 0), rise, 0, out)
    const excess = (out[X.joint] as number) - Y * rise + J
    if (excess > 0) low = rise
    else high = rise
    const slope = Y - (out[X.jointByJoint] as number)
    let next = rise + excess / slope
    if (!(next >= low && next <= high)) next = (low + high) / 2
    const settled = Math.abs(next - rise) <= 1e-13 * (Math.abs(rise) + 1) || next === low || next === high
    rise = next
    if (settled && trial > 0) return { riseK: rise, edgeRiseK: fins.map((fin) => fin.edgeOffsetK + fin.edgeSlope * rise) }
  }
  throw new ConvergenceError('the steady joint, in K', high - low)
}
