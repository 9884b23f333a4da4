import { ConvergenceError } from '../../errors/index.ts'
import type { HeatModel, HeatSource } from '../heatModel.ts'
import { finAdmittance } from './finAdmittance.ts'
import type { WireState } from './finZones.ts'
import { exchange, X } from './lumps.ts'

/** Where the joint and the edges end with the tool left on; rises above the surroundings. */
interface SteadyJoint {
  readonly riseK: number
  /** One a wire. */
  readonly edgeRiseK: readonly number[]
}

const mostTrials = 300
/** A root is as good as found where it moves by less than this share. */
const settledShare = 1e-13

/** Root of a balance that falls with the rise, between two rises that enclose it; the function leaves the balance and its slope in `at`. */
function fallingRoot(lowK: number, highK: number, at: Float64Array, balance: (rise: number) => void): number {
  let low = lowK
  let high = highK
  let rise = high
  for (let trial = 0; trial < mostTrials; trial++) {
    balance(rise)
    const excess = at[0] as number
    if (excess > 0) low = rise
    else high = rise
    let next = rise - excess / (at[1] as number)
    if (!(next >= low && next <= high)) next = (low + high) / 2
    if (Math.abs(next - rise) <= settledShare * (Math.abs(rise) + 1)) return next
    rise = next
  }
  throw new ConvergenceError('the steady joint, in K', high - low)
}

/** The balance with the wires as closed fins, a tube over them as it stands in `state`. */
function steadyIn(model: HeatModel, source: HeatSource, state: WireState): SteadyJoint & { readonly bodyRiseK: number } {
  const { wires } = model
  const fins = wires.map((wire) => finAdmittance(wire, state))
  let Y = 0
  let J = 0
  fins.forEach((fin, w) => {
    const tails = wires[w]?.tails ?? 0
    Y += tails * fin.admittanceWPerK
    J += tails * fin.offsetW
  })
  const driving = source.kind === 'iron' || source.kind === 'heavy-iron' ? source.setRiseK : source.kind === 'none' ? 0 : source.airRiseK
  const rises = [0, driving, ...wires.flatMap((wire) => [wire.clip?.riseK ?? 0, wire.swept?.riseK ?? 0, wire.tube?.airRiseK ?? 0])]
  const low = Math.min(...rises)
  const high = Math.max(...rises)
  const out = new Float64Array(8)
  const at = new Float64Array(2)
  const jointFor = (body: number): number =>
    fallingRoot(low, high, at, (rise) => {
      exchange(model, source, rise, body, out)
      at[0] = (out[X.joint] as number) - Y * rise + J
      at[1] = (out[X.jointByJoint] as number) - Y
    })
  const bodyRiseK =
    source.kind !== 'tube'
      ? 0
      : fallingRoot(low, high, at, (body) => {
          exchange(model, source, jointFor(body), body, out)
          // The joint follows the tube; with its wires it takes Y, in series with the link.
          const link = out[X.jointByBody] as number
          const own = Y - (out[X.jointByJoint] as number)
          at[0] = out[X.body] as number
          at[1] = (out[X.bodyByBody] as number) + (own > 0 ? (link * (out[X.bodyByJoint] as number)) / own : 0)
        })
  const riseK = jointFor(bodyRiseK)
  return { riseK, bodyRiseK, edgeRiseK: fins.map((fin) => fin.edgeOffsetK + fin.edgeSlope * riseK) }
}

/** Solves the exact steady balance of joint, wires and tool: it falls steadily with the joint's temperature, so it has one root. */
export function steadyJoint(model: HeatModel): SteadyJoint {
  const { source } = model
  // A tip with mass ends like one without.
  const massless: HeatSource =
    source.kind === 'heavy-iron' ? { ...source, kind: 'iron', resistanceKPerW: source.tipResistanceKPerW + source.contactResistanceKPerW } : source
  const loose = steadyIn(model, massless, { toolOn: true, recovered: false })
  if (source.kind !== 'tube' || loose.bodyRiseK < source.recoveryRiseK) return loose
  return steadyIn(model, { ...source, recovered: true }, { toolOn: true, recovered: true })
}
