import type { HeatModel } from '../heatModel.ts'
import { finMatrix } from './finMatrix.ts'
import { type FinMesh, finMesh, type MeshSettings } from './finMesh.ts'
import type { Wire } from './finZones.ts'
import { exchange, limitedBelowK, X } from './heatExchange.ts'
import { emptyTable, fillTable, type StepTable } from './stepTable.ts'
import { type WireModes, wireModes } from './wireModes.ts'

/** A wire on its elements, as modes, with tables for steps of the lengths in use. */
export interface HeatedWire {
  readonly wire: Wire
  readonly mesh: FinMesh
  readonly modes: WireModes
  /** Tables of steps of 2^level seconds, by level modulo their number; the last one is for odd lengths. */
  readonly tables: (StepTable | null)[]
}

const keptTables = 16
/** The removal of the tool is told in times like this share of its stay; and nothing shorter than the other share of the run is told at all. */
const slowestShare = 0.1
const fastestShare = 1e-12
/** The first element is at least this share of the wire's length: its reach has no more than so many scales. */
const shortestElement = 1e-5

/**
 * The time in which the joint could reach the solidus with its full power and no loss but to the wires' first millimetres:
 * nothing of interest happens much faster.
 */
export function shortestTimeS(model: HeatModel): number {
  const { source } = model
  const out = new Float64Array(8)
  // A tip with mass is hot at once; a tube is taken at its hottest and gripping, which it never is so soon.
  if (source.kind === 'tube') exchange(model, { ...source, gripped: true }, false, 0, source.airRiseK, out)
  else exchange(model, source, limitedBelowK(source) > 0, 0, source.kind === 'heavy-iron' ? source.setRiseK : 0, out)
  const power = Math.max(out[X.joint] as number, Number.MIN_VALUE)
  const rise = model.melt.solidusRiseK
  let effusance = 0
  for (const wire of model.wires) effusance += wire.tails * Math.sqrt(wire.conductanceWM * wire.bareStoreJPerMK)
  const lumpS = (model.capacityJPerK * rise) / power
  const wiresS = ((effusance * rise) / power) ** 2 * (Math.PI / 4)
  return Math.max(Math.min(lumpS + wiresS, slowestShare * model.toolOffS), fastestShare * model.observeS)
}

/**
 * Elements fine enough for the accuracy asked, as found against far finer ones on irons and hot air from 0.33 to 6 mm2: the first against how far heat
 * runs in the shortest time of interest, the growth of the others, and where the wire is cut against how far its heat reaches at all.
 */
export function meshSettings(wire: Wire, model: HeatModel, shortestS: number): MeshSettings {
  const { accuracy } = model
  const diffusivity = wire.conductanceWM / wire.bareStoreJPerMK
  const leastLoss = Math.min(wire.insulatedLossWPerMK, wire.swept?.insulatedLossWPerMK ?? Infinity)
  const lengths = 7 - Math.log(accuracy)
  const reach = lengths * Math.min(Math.sqrt(wire.conductanceWM / leastLoss), 0.8 * Math.sqrt(diffusivity * model.observeS))
  const first = 1.2 * accuracy ** 0.2 * Math.sqrt(diffusivity * shortestS)
  const farthest = Math.max(wire.stubM, wire.swept?.toM ?? 0, wire.clip?.atM ?? 0)
  return { firstM: Math.min(Math.max(first, shortestElement * reach), reach), growth: 0.8 * accuracy ** 0.15, degree: 5, lengthM: farthest + reach }
}

/** Meshes a wire and finds its modes with the tool on. */
export function heatedWire(wire: Wire, settings: MeshSettings): HeatedWire {
  const mesh = finMesh(wire, settings)
  return withModes(wire, mesh, wireModes(finMatrix(wire, mesh, true), mesh.stubNode, wire.swept !== null))
}

/** The same wire and elements with the stream gone. */
export function withoutStream(heated: HeatedWire): HeatedWire {
  const { wire, mesh } = heated
  return withModes(wire, mesh, wireModes(finMatrix(wire, mesh, false), mesh.stubNode, true))
}

function withModes(wire: Wire, mesh: FinMesh, modes: WireModes): HeatedWire {
  return { wire, mesh, modes, tables: new Array<StepTable | null>(keptTables + 1).fill(null) }
}

/** The values of the modes in the base of other modes of the same elements. */
export function rebase(values: Float64Array, from: WireModes, to: WireModes): void {
  const n = from.count
  if (from.base === null || to.base === null) return
  const profile = new Float64Array(n)
  for (let i = 0; i < n; i++) {
    const row = from.base[i] as Float64Array
    let sum = 0
    for (let k = 0; k < n; k++) sum += (row[k] as number) * (values[k] as number)
    profile[i] = sum
  }
  values.fill(0)
  for (let i = 0; i < n; i++) {
    const row = to.base[i] as Float64Array
    const u = profile[i] as number
    for (let k = 0; k < n; k++) values[k] = (values[k] as number) + (row[k] as number) * u
  }
}

function place(heated: HeatedWire, at: number): StepTable {
  const table = heated.tables[at] ?? emptyTable(heated.modes.count)
  heated.tables[at] = table
  return table
}

/** The table of a step of 2^level seconds, filled on first use. */
export function levelTable(heated: HeatedWire, level: number): StepTable {
  const table = place(heated, ((level % keptTables) + keptTables) % keptTables)
  const durationS = 2 ** level
  if (table.durationS !== durationS) fillTable(heated.modes, durationS, table)
  return table
}

/** The table of a step of any length. */
export function oddTable(heated: HeatedWire, durationS: number): StepTable {
  const table = place(heated, keptTables)
  fillTable(heated.modes, durationS, table)
  return table
}
