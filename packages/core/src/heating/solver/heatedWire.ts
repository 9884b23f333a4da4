import type { HeatState, Wire } from '../heatModel.ts'
import { finZones, type WireMesh } from './wireMesh.ts'

/** Stands in for a clip without thermal resistance. */
const leastClipKPerW = 1e-6
/** Simpson's weights. */
const weights = [1 / 6, 4 / 6, 1 / 6] as const

/** Node of a place under the tube. Places are counted from the joint, three an element; the last node of an element is the first of the next. */
const nodeAt = (place: number): number => place - Math.trunc(place / 3)

/** Temperatures that a wire keeps in the joint's state: its nodes, then the places of the tube. */
export const unknownsOf = ({ endsM, tubeElements }: WireMesh): number => 2 * endsM.length - 1 + 3 * tubeElements

/**
 * One wire on its elements, as a heat balance of its nodes: store u' + (loss + stiffness) u = drive. Under a tube each of an element's three nodes also has a tube temperature, which is eliminated into the node's loss and drive. Assembled again when the tool leaves or the tube shrinks.
 */
type HeatedWire = ReturnType<typeof heatedWire>

/** Lays a wire over the joint's states, beginning at index `from` of each. */
export function heatedWire(wire: Wire, mesh: WireMesh, state: HeatState, states: readonly Float64Array[], from: number) {
  const elements = mesh.endsM.length - 1
  const nodes = 2 * elements + 1
  const places = 3 * mesh.tubeElements
  const list = (length: number): Float64Array => new Float64Array(length)
  const heated = {
    wire,
    mesh,
    elements,
    /** kA/(3 h) of each element. */
    stiffness: list(elements),
    store: list(nodes),
    loss: list(nodes),
    drive: list(nodes),
    places,
    tubeStore: list(places),
    tubeOut: list(places),
    tubeDrive: list(places),
    tubeIn: list(places),
    /** Temperature rises of wire nodes and tube, in each of the states. */
    u: states.map((values) => values.subarray(from, from + nodes)),
    tubeU: states.map((values) => values.subarray(from + nodes, from + nodes + places)),
    /** Factored system of the present step: one over each diagonal, the share of a middle in its ends, couplings of neighbouring ends, the tube's. */
    inverse: list(nodes),
    carry: list(elements),
    coupling: list(elements),
    tubeInverse: list(places),
    right: list(nodes),
    stepNuS: 0,
    /** p of p T - r, the heat flow from the joint into this wire at a stage. */
    taken: 0,
  }
  assemble(heated, state)
  const { clip } = wire
  if (clip !== null && clip.resistanceKPerW === 0) (heated.u[0] as Float64Array)[mesh.clipNode] = clip.riseK
  return heated
}

/** Assembles store, loss and drive of every node for the present source; temperatures stay. */
export function assemble(heated: HeatedWire, state: HeatState): void {
  const { wire, mesh, elements, stiffness, store, loss, drive, tubeStore, tubeOut, tubeDrive, tubeIn } = heated
  const zones = finZones(wire, state)
  store.fill(0)
  loss.fill(0)
  drive.fill(0)
  let place = 0
  let z = 0
  for (let e = 0; e < elements; e++) {
    const from = mesh.endsM[e] as number
    const h = (mesh.endsM[e + 1] as number) - from
    while (z + 1 < zones.length && from >= (zones[z]?.toM ?? Infinity)) z++
    const zone = zones[z]
    if (zone === undefined) break
    stiffness[e] = wire.conductanceWM / (3 * h)
    for (let p = 0; p < 3; p++) {
      const share = (weights[p] as number) * h
      const node = 2 * e + p
      store[node] = (store[node] as number) + share * zone.storeJPerMK
      loss[node] = (loss[node] as number) + share * zone.lossWPerMK
      drive[node] = (drive[node] as number) + share * zone.lossWPerMK * zone.surroundingsRiseK
      if (zone.tube === null) continue
      tubeStore[place] = share * zone.tube.storeJPerMK
      tubeOut[place] = share * (zone.tube.outerWPerMK + zone.tube.radiationWPerMK)
      tubeDrive[place] = share * zone.tube.outerWPerMK * zone.tube.airRiseK
      tubeIn[place] = share * zone.tube.innerWPerMK
      place++
    }
  }
  const last = 2 * elements
  loss[last] = (loss[last] as number) + Math.sqrt(wire.conductanceWM * wire.insulatedLossWPerMK)
  const { clip } = wire
  if (clip !== null) {
    const at = mesh.clipNode
    const clipKPerW = Math.max(clip.resistanceKPerW, leastClipKPerW)
    loss[at] = (loss[at] as number) + 1 / clipKPerW
    drive[at] = (drive[at] as number) + clip.riseK / clipKPerW
  }
  heated.stepNuS = 0
}

/** Factors (store + nu (loss + stiffness)): eliminates mid-nodes into element ends, then the ends from the far one inwards. */
export function factor(heated: HeatedWire, nuS: number): void {
  if (heated.stepNuS === nuS) return
  heated.stepNuS = nuS
  const { elements, stiffness, store, loss, inverse, carry, coupling, places, tubeStore, tubeOut, tubeIn, tubeInverse } = heated
  for (let i = 0; i <= 2 * elements; i++) inverse[i] = (store[i] as number) + nuS * (loss[i] as number)
  for (let p = 0; p < places; p++) {
    const node = nodeAt(p)
    const inner = nuS * (tubeIn[p] as number)
    const own = 1 / ((tubeStore[p] as number) + nuS * (tubeOut[p] as number) + inner)
    tubeInverse[p] = own
    inverse[node] = (inverse[node] as number) + inner * (1 - inner * own)
  }
  for (let e = elements - 1; e >= 0; e--) {
    const s = nuS * (stiffness[e] as number)
    const a = 2 * e
    const middle = 1 / ((inverse[a + 1] as number) + 16 * s)
    const eliminated = 64 * s * s * middle
    const c = s - eliminated
    // By now everything farther out is eliminated into the far end.
    const far = 1 / ((inverse[a + 2] as number) + 7 * s - eliminated)
    inverse[a + 1] = middle
    inverse[a + 2] = far
    carry[e] = 8 * s * middle
    coupling[e] = c
    inverse[a] = (inverse[a] as number) + 7 * s - eliminated - c * c * far
  }
  heated.taken = inverse[0] as number
}

/** Forward sweep towards the joint, from the z held in the stage's own lists: returns r of p T - r. */
export function sweepIn(heated: HeatedWire, stage: number): number {
  const { elements, store, drive, inverse, carry, coupling, right, places, tubeStore, tubeDrive, tubeIn, tubeInverse, stepNuS: nuS } = heated
  const z = heated.u[stage] as Float64Array
  const tubeZ = heated.tubeU[stage] as Float64Array
  const last = 2 * elements
  for (let i = 0; i <= last; i++) right[i] = (store[i] as number) * (z[i] as number) + nuS * (drive[i] as number)
  for (let p = 0; p < places; p++) {
    const node = nodeAt(p)
    const free = ((tubeStore[p] as number) * (tubeZ[p] as number) + nuS * (tubeDrive[p] as number)) * (tubeInverse[p] as number)
    tubeZ[p] = free
    right[node] = (right[node] as number) + nuS * (tubeIn[p] as number) * free
  }
  let far = right[last] as number
  for (let e = elements - 1; e >= 0; e--) {
    const a = 2 * e
    const carried = (carry[e] as number) * (right[a + 1] as number)
    far += carried
    right[a + 2] = far
    far = (right[a] as number) + carried - (coupling[e] as number) * far * (inverse[a + 2] as number)
  }
  return far
}

/** Back substitution outwards from the joint's rise, into the stage's own lists. */
export function sweepOut(heated: HeatedWire, stage: number, jointRiseK: number): void {
  const { elements, inverse, carry, coupling, right, places, tubeIn, tubeInverse, stepNuS: nuS } = heated
  const u = heated.u[stage] as Float64Array
  const tubeU = heated.tubeU[stage] as Float64Array
  let near = jointRiseK
  u[0] = near
  for (let e = 0; e < elements; e++) {
    const a = 2 * e
    const far = ((right[a + 2] as number) - (coupling[e] as number) * near) * (inverse[a + 2] as number)
    u[a + 1] = (right[a + 1] as number) * (inverse[a + 1] as number) + (carry[e] as number) * (near + far)
    u[a + 2] = far
    near = far
  }
  for (let p = 0; p < places; p++) {
    tubeU[p] = (tubeU[p] as number) + nuS * (tubeIn[p] as number) * (tubeInverse[p] as number) * (u[nodeAt(p)] as number)
  }
}

/** Heat flow in W from the wire to its surroundings, net of the tube's gain from the stream, at a stage. */
export function lossW(heated: HeatedWire, stage: number): number {
  const { elements, loss, drive, places, tubeOut, tubeDrive } = heated
  const u = heated.u[stage] as Float64Array
  const tubeU = heated.tubeU[stage] as Float64Array
  let sum = 0
  for (let i = 0; i <= 2 * elements; i++) sum += (loss[i] as number) * (u[i] as number) - (drive[i] as number)
  for (let p = 0; p < places; p++) sum += (tubeOut[p] as number) * (tubeU[p] as number) - (tubeDrive[p] as number)
  return sum
}

/** Heat in the wire and in the tube over it, above the surroundings. */
export function storedJ(heated: HeatedWire): number {
  const { elements, store, places, tubeStore } = heated
  const u = heated.u[0] as Float64Array
  const tubeU = heated.tubeU[0] as Float64Array
  let sum = 0
  for (let i = 0; i <= 2 * elements; i++) sum += (store[i] as number) * (u[i] as number)
  for (let p = 0; p < places; p++) sum += (tubeStore[p] as number) * (tubeU[p] as number)
  return sum
}
