import { ConvergenceError } from '../../errors/index.ts'
import type { HeatModel, HeatState, Wire } from '../heatModel.ts'
import { exchange, X } from './lumps.ts'
import { finZones, steadyZone } from './wireMesh.ts'

/** The steady fin as a two-port: flow = admittance rise - offset; rise at the stub's end = edgeOffset + edgeSlope rise. */
interface FinAdmittance {
  readonly admittanceWPerK: number
  readonly offsetW: number
  readonly edgeSlope: number
  readonly edgeOffsetK: number
}

/** tanh(x)/x and x/sinh(x), with their limits at 0. */
const tanhOver = (x: number): number => (x < 1e-8 ? 1 : Math.tanh(x) / x)
const overSinh = (x: number): number => (x < 1e-8 ? 1 : x / Math.sinh(x))

/** Solves the exact steady fin, stretch by stretch from the endless far end to the joint. */
function finAdmittance(wire: Wire, state: HeatState): FinAdmittance {
  const { conductanceWM: kA, clip } = wire
  const zones = finZones(wire, state)
  let Y = 0
  let J = 0
  // Rise at the stub's end per rise at the near end of the part solved so far.
  let edgeSlope = 1
  let edgeOffsetK = 0
  for (let z = zones.length - 1; z >= 0; z--) {
    const zone = zones[z]
    if (zone === undefined) break
    const { lossWPerMK: G, surroundingsRiseK: env } = steadyZone(zone)
    if (zone.toM === Infinity) {
      Y = Math.sqrt(kA) * Math.sqrt(G)
      J = Y * env
      continue
    }
    const length = zone.toM - zone.fromM
    const gl = Math.sqrt(G / kA) * length
    const clipped = clip !== null && clip.atM === zone.toM
    const held = clipped && clip.resistanceKPerW === 0
    if (clipped && !held) {
      Y += 1 / clip.resistanceKPerW
      J += clip.riseK / clip.resistanceKPerW
    }
    const across = (length / kA) * tanhOver(gl)
    const along = Math.sqrt(kA) * Math.sqrt(G) * Math.tanh(gl)
    const den = 1 + Y * across
    const passed = held ? 0 : 1 / (den * Math.cosh(gl))
    const excess = J - Y * env
    const farOffset = held ? clip.riseK : env * (1 - passed) + (excess * across) / den
    if (zone.toM <= wire.stubM) {
      edgeOffsetK += edgeSlope * farOffset
      edgeSlope *= passed
    }
    if (held) {
      Y = 1 / across
      J = env / across + (kA / length) * overSinh(gl) * (clip.riseK - env)
    } else {
      Y = (along + Y) / den
      J = excess * passed + Y * env
    }
  }
  return { admittanceWPerK: Y, offsetW: J, edgeSlope, edgeOffsetK }
}

/** Steady state of the joint and the edges with the tool left on; rises above the surroundings. */
interface SteadyJoint {
  readonly riseK: number
  /** One a wire. */
  readonly edgeRiseK: readonly number[]
}

const mostTrials = 300
/** Relative tolerance of a root. */
const settledShare = 1e-13

/** Root of a balance that falls with the rise, within a bracket; `balance` writes value and slope into `at`. */
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

/** Steady balance with the wires as closed-form fins, the tube in the state given. */
function steadyIn(model: HeatModel, state: HeatState): SteadyJoint & { readonly bodyRiseK: number } {
  const { source, wires } = model
  const fins = wires.map((wire) => finAdmittance(wire, state))
  let Y = 0
  let J = 0
  fins.forEach((fin, w) => {
    const tails = wires[w]?.tails ?? 0
    Y += tails * fin.admittanceWPerK
    J += tails * fin.offsetW
  })
  const driving = source.kind === 'iron' || source.kind === 'heavy-iron' ? source.setRiseK : source.airRiseK
  const rises = [0, driving, ...wires.flatMap((wire) => [wire.clip?.riseK ?? 0, wire.swept?.riseK ?? 0, wire.tube?.airRiseK ?? 0])]
  const low = Math.min(...rises)
  const high = Math.max(...rises)
  const out = new Float64Array(8)
  const at = new Float64Array(2)
  const jointFor = (body: number): number =>
    fallingRoot(low, high, at, (rise) => {
      exchange(model, state, rise, body, out)
      at[0] = (out[X.joint] as number) - Y * rise + J
      at[1] = (out[X.jointByJoint] as number) - Y
    })
  const bodyRiseK =
    source.kind !== 'tube'
      ? 0
      : fallingRoot(low, high, at, (body) => {
          exchange(model, state, jointFor(body), body, out)
          // The joint follows the tube: its admittance with its wires, Y, is in series with the link.
          const link = out[X.jointByBody] as number
          const own = Y - (out[X.jointByJoint] as number)
          at[0] = out[X.body] as number
          at[1] = (out[X.bodyByBody] as number) + (own > 0 ? (link * (out[X.bodyByJoint] as number)) / own : 0)
        })
  const riseK = jointFor(bodyRiseK)
  return { riseK, bodyRiseK, edgeRiseK: fins.map((fin) => fin.edgeOffsetK + fin.edgeSlope * riseK) }
}

/** Solves the exact steady balance of joint, wires and tool: monotonic in the joint's temperature, so it has one root. */
export function steadyJoint(model: HeatModel): SteadyJoint {
  const { source } = model
  // At steady state a tip's heat capacity has no effect.
  const massless: HeatModel =
    source.kind === 'heavy-iron'
      ? { ...model, source: { ...source, kind: 'iron', resistanceKPerW: source.tipResistanceKPerW + source.contactResistanceKPerW } }
      : model
  const loose = steadyIn(massless, { toolOn: true, recovered: false })
  if (source.kind !== 'tube' || loose.bodyRiseK < source.recoveryRiseK) return loose
  return steadyIn(model, { toolOn: true, recovered: true })
}
