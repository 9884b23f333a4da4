import type { Wire } from '../heatModel.ts'
import { finZones, steadyZone, type WireState } from './finZones.ts'

/** The steady fin as its ends see it: flow = admittance rise - offset; the rise at the stub's end = edgeOffset + edgeSlope rise. */
interface FinAdmittance {
  readonly admittanceWPerK: number
  readonly offsetW: number
  readonly edgeSlope: number
  readonly edgeOffsetK: number
}

/** tanh(x)/x and x/sinh(x), right at 0 too. */
const tanhOver = (x: number): number => (x < 1e-8 ? 1 : Math.tanh(x) / x)
const overSinh = (x: number): number => (x < 1e-8 ? 1 : x / Math.sinh(x))

/** Marches the exact steady fin from its endless far stretch to the joint, stretch by stretch. */
export function finAdmittance(wire: Wire, state: WireState): FinAdmittance {
  const { conductanceWM: kA, clip } = wire
  const zones = finZones(wire, state)
  let Y = 0
  let J = 0
  // Rise at the stub's end against the rise at the near end of what is marched so far.
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
