import { breaksM, type Wire } from './finZones.ts'
import { lobattoRule } from './lobatto.ts'

/** Fineness of the elements along a wire. */
export interface MeshSettings {
  /** Length of the first element. */
  readonly firstM: number
  /** How much longer an element is for each length of distance from the joint. */
  readonly growth: number
  /** Degree of the polynomial on an element. */
  readonly degree: number
  /** Where the wire is cut. */
  readonly lengthM: number
}

export interface FinMesh {
  /** Distance of each node from the joint's edge, ends of elements and the points within. */
  readonly atM: Float64Array
  /** First node and degree of each element. */
  readonly firstNode: readonly number[]
  readonly degree: readonly number[]
  readonly stubNode: number
  /** -1 without a clip. */
  readonly clipNode: number
}

/** Breaks nearer to each other than this share of the first element count as one: no heat is lost between them, and the rates stay in reach of double precision. */
const snapShare = 1e-3

/** A short element needs fewer points: lengths in first elements below which degrees 1, 2 and 3 do. */
const degreeBelow = [0.03, 0.12, 0.35] as const

function degreeFor(lengthM: number, settings: MeshSettings): number {
  const share = lengthM / settings.firstM
  for (let k = 0; k < degreeBelow.length; k++) if (share < (degreeBelow[k] ?? 0)) return Math.min(k + 1, settings.degree)
  return settings.degree
}

/** Elements from the joint outwards, their lengths growing with distance, with an end on every break. */
export function finMesh(wire: Wire, settings: MeshSettings): FinMesh {
  const { firstM, growth } = settings
  const snapM = firstM * snapShare
  const ends = [0]
  for (const at of breaksM(wire)) if (at - (ends[ends.length - 1] ?? 0) > snapM && at < settings.lengthM) ends.push(at)
  ends.push(settings.lengthM)
  // Equal steps of the integral of dx/(first + growth x) give lengths that follow first + growth x.
  const stretched = (x: number): number => Math.log1p((growth * x) / firstM) / growth
  const placed = (s: number): number => (firstM * Math.expm1(growth * s)) / growth
  const nodes = [0]
  const firstNode: number[] = []
  const degree: number[] = []
  for (let k = 0; k + 1 < ends.length; k++) {
    const a = ends[k] ?? 0
    const b = ends[k + 1] ?? 0
    const from = stretched(a)
    const span = stretched(b) - from
    const count = Math.max(1, Math.round(span))
    for (let j = 0; j < count; j++) {
      const left = nodes[nodes.length - 1] ?? 0
      const right = j === count - 1 ? b : placed(from + (span * (j + 1)) / count)
      const rule = lobattoRule(degreeFor(right - left, settings))
      firstNode.push(nodes.length - 1)
      degree.push(rule.degree)
      for (let i = 1; i <= rule.degree; i++) nodes.push(i === rule.degree ? right : left + (right - left) * (rule.points[i] ?? 0))
    }
  }
  const nearest = (x: number): number => {
    let best = 0
    for (let i = 1; i < nodes.length; i++) if (Math.abs((nodes[i] ?? 0) - x) < Math.abs((nodes[best] ?? 0) - x)) best = i
    return best
  }
  return {
    atM: Float64Array.from(nodes),
    firstNode,
    degree,
    stubNode: nearest(wire.stubM),
    clipNode: wire.clip === null ? -1 : nearest(wire.clip.atM),
  }
}
