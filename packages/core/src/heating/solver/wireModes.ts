import type { FinMatrix } from './finMatrix.ts'
import { symmetricModes } from './symmetricModes.ts'

/**
 * A wire as modes that decay each at its own rate and are driven by the joint's rise and by the surroundings:
 * y' = -rate y + coupling rise + drive. Everything asked of the wire is a weighted sum of its modes.
 */
export interface WireModes {
  readonly count: number
  readonly ratesPerS: Float64Array
  readonly coupling: Float64Array
  readonly drive: Float64Array
  /** Flow from the joint into the wire = admittance rise - driven - sum(coupling y), beside what its own end stores. */
  readonly admittanceWPerK: number
  readonly drivenW: number
  /** Half an element's store sits on the joint itself. */
  readonly jointStoreJPerK: number
  /** Rise at the stub's end = edgeOffset + edgeJoint rise + sum(edge y). */
  readonly edge: Float64Array
  readonly edgeJoint: number
  readonly edgeOffsetK: number
  /** Flow out to surroundings and clip = lossOffset + lossJoint rise + sum(loss y). */
  readonly loss: Float64Array
  readonly lossJointWPerK: number
  readonly lossOffsetW: number
  /** Heat in the wire = sum(store y), beside the joint's end. */
  readonly store: Float64Array
  /** From a profile of the free nodes to the modes, row by row; only where asked for. */
  readonly base: readonly Float64Array[] | null
}

/** Turns the linked nodes into modes; withBase also keeps the whole base, which a change of the surroundings needs. */
export function wireModes(matrix: FinMatrix, stubNode: number, withBase: boolean): WireModes {
  const { nodes, conductanceWPerK: K, storeJPerK, drivenW, heldNode, heldRiseK } = matrix
  const free: number[] = []
  for (let i = 1; i < nodes; i++) if (i !== heldNode) free.push(i)
  const n = free.length
  const at = (i: number, j: number): number => K[i * nodes + j] as number
  const rootStore = Float64Array.from(free, (i) => Math.sqrt(storeJPerK[i] as number))
  const scaled = new Float64Array(n * n)
  const coupling = new Float64Array(n)
  const drive = new Float64Array(n)
  const edge = new Float64Array(n)
  const loss = new Float64Array(n)
  const store = Float64Array.from(rootStore)
  let lossJointWPerK = 0
  let lossOffsetW = 0
  const heldTerm = (i: number): number => (heldNode < 0 ? 0 : at(i, heldNode) * heldRiseK)
  for (let a = -1; a < n; a++) {
    const i = a < 0 ? 0 : (free[a] as number)
    lossJointWPerK += at(i, 0)
    lossOffsetW += heldTerm(i) - (drivenW[i] as number)
    const row = i * nodes
    for (let b = 0; b < n; b++) loss[b] = (loss[b] as number) + (K[row + (free[b] as number)] as number)
    if (a < 0) continue
    const root = rootStore[a] as number
    coupling[a] = -at(i, 0) / root
    drive[a] = ((drivenW[i] as number) - heldTerm(i)) / root
    if (i === stubNode) edge[a] = 1 / root
    for (let b = 0; b < n; b++) scaled[a * n + b] = (K[row + (free[b] as number)] as number) / (root * (rootStore[b] as number))
  }
  for (let b = 0; b < n; b++) loss[b] = (loss[b] as number) / (rootStore[b] as number)
  const rows = [coupling, drive, edge, loss, store]
  const base: Float64Array[] = []
  if (withBase) {
    for (let i = 0; i < n; i++) {
      const unit = new Float64Array(n)
      unit[i] = 1
      base.push(unit)
    }
  }
  const ratesPerS = symmetricModes(n, scaled, [...rows, ...base])
  return {
    count: n,
    ratesPerS,
    coupling,
    drive,
    admittanceWPerK: at(0, 0),
    drivenW: (drivenW[0] as number) - heldTerm(0),
    jointStoreJPerK: storeJPerK[0] as number,
    edge,
    edgeJoint: stubNode === 0 ? 1 : 0,
    edgeOffsetK: stubNode === heldNode ? heldRiseK : 0,
    loss,
    lossJointWPerK,
    lossOffsetW,
    store,
    base: withBase ? base : null,
  }
}
