import type { FinMesh } from './finMesh.ts'
import { type FinZone, finZones, type Wire } from './finZones.ts'
import { lobattoRule } from './lobatto.ts'

/** A wire as linked nodes: stored heat at each, conductances between them, and what the surroundings and the clip drive in. Node 0 is the joint. */
export interface FinMatrix {
  readonly nodes: number
  readonly storeJPerK: Float64Array
  /** Row-major; diagonals hold the losses too. */
  readonly conductanceWPerK: Float64Array
  readonly drivenW: Float64Array
  /** The node that a clip without resistance holds, or -1, and its rise. */
  readonly heldNode: number
  readonly heldRiseK: number
}

function zoneAt(zones: readonly FinZone[], x: number): FinZone {
  let found = zones[0] as FinZone
  for (const zone of zones) if (x > zone.fromM) found = zone
  return found
}

/** Assembles the elements of a wire with the tool on or off. */
export function finMatrix(wire: Wire, mesh: FinMesh, toolOn: boolean): FinMatrix {
  const n = mesh.atM.length
  const kA = wire.conductanceWM
  const storeJPerK = new Float64Array(n)
  const conductanceWPerK = new Float64Array(n * n)
  const drivenW = new Float64Array(n)
  const add = (i: number, j: number, value: number): void => {
    conductanceWPerK[i * n + j] = (conductanceWPerK[i * n + j] ?? 0) + value
  }
  const zones = finZones(wire, toolOn)
  for (let e = 0; e < mesh.firstNode.length; e++) {
    const first = mesh.firstNode[e] ?? 0
    const rule = lobattoRule(mesh.degree[e] ?? 1)
    const left = mesh.atM[first] ?? 0
    const length = (mesh.atM[first + rule.degree] ?? 0) - left
    const zone = zoneAt(zones, left + length / 2)
    for (let a = 0; a <= rule.degree; a++) {
      const i = first + a
      const share = length * (rule.weights[a] ?? 0)
      storeJPerK[i] = (storeJPerK[i] ?? 0) + share * zone.storeJPerMK
      add(i, i, share * zone.lossWPerMK)
      drivenW[i] = (drivenW[i] ?? 0) + share * zone.lossWPerMK * zone.surroundingsRiseK
      for (let b = 0; b <= rule.degree; b++) add(i, first + b, (kA / length) * (rule.stiffness[a * (rule.degree + 1) + b] ?? 0))
    }
  }
  // Beyond the cut the wire goes on: its steady admittance, and a little more so that a wire without losses keeps a way out.
  const last = zones[zones.length - 1] as FinZone
  add(n - 1, n - 1, Math.sqrt(kA * last.lossWPerMK) + kA / (mesh.atM[n - 1] as number))
  const held = wire.clip !== null && wire.clip.resistanceKPerW === 0
  if (wire.clip !== null && !held) {
    add(mesh.clipNode, mesh.clipNode, 1 / wire.clip.resistanceKPerW)
    drivenW[mesh.clipNode] = (drivenW[mesh.clipNode] ?? 0) + wire.clip.riseK / wire.clip.resistanceKPerW
  }
  return {
    nodes: n,
    storeJPerK,
    conductanceWPerK,
    drivenW,
    heldNode: held ? mesh.clipNode : -1,
    heldRiseK: held && wire.clip !== null ? wire.clip.riseK : 0,
  }
}
