import type { HeatState, TubeLayer, TubeOverWire, Wire } from '../heatModel.ts'

/** A stretch of wire with uniform heat capacity, loss and surroundings; or a stretch under a tube with a temperature of its own. */
interface FinZone {
  readonly fromM: number
  /** Infinity for the last zone. */
  readonly toM: number
  readonly storeJPerMK: number
  readonly lossWPerMK: number
  readonly surroundingsRiseK: number
  readonly tube: (TubeLayer & { readonly storeJPerMK: number; readonly outerWPerMK: number; readonly airRiseK: number }) | null
}

/** Positions of discontinuities along the wire, ascending, without 0: the stub's end, the stream's end, the tube's end, the clip. */
function breaksM(wire: Wire): readonly number[] {
  const all = [wire.stubM, wire.swept?.toM ?? 0, wire.tube?.toM ?? 0, wire.clip?.atM ?? 0].filter((x) => x > 0)
  return [...new Set(all)].sort((a, b) => a - b)
}

/** The layer of the tube over bare or insulated wire. */
export function layerOf(tube: TubeOverWire, bare: boolean, recovered: boolean): TubeLayer {
  const layers = recovered ? tube.recovered : tube.loose
  return bare ? layers.bare : layers.insulated
}

/** Zones from the joint's edge outwards. */
export function finZones(wire: Wire, state: HeatState): readonly FinZone[] {
  const edges = [0, ...breaksM(wire), Infinity]
  const zones: FinZone[] = []
  for (let k = 0; k + 1 < edges.length; k++) {
    const fromM = edges[k] as number
    const bare = fromM < wire.stubM
    const storeJPerMK = bare ? wire.bareStoreJPerMK : wire.insulatedStoreJPerMK
    const toM = edges[k + 1] as number
    if (wire.tube !== null && fromM < wire.tube.toM) {
      const layer = layerOf(wire.tube, bare, state.recovered)
      const outerWPerMK = state.toolOn ? layer.streamWPerMK : layer.stillWPerMK
      const airRiseK = state.toolOn ? wire.tube.airRiseK : 0
      zones.push({
        fromM,
        toM,
        storeJPerMK,
        lossWPerMK: 0,
        surroundingsRiseK: 0,
        tube: { ...layer, storeJPerMK: wire.tube.storeJPerMK, outerWPerMK, airRiseK },
      })
      continue
    }
    const swept = state.toolOn && wire.swept !== null && fromM < wire.swept.toM ? wire.swept : null
    const loss = swept ?? wire
    const lossWPerMK = bare ? loss.bareLossWPerMK : loss.insulatedLossWPerMK
    zones.push({ fromM, toM, storeJPerMK, lossWPerMK, surroundingsRiseK: swept?.riseK ?? 0, tube: null })
  }
  return zones
}

/** The zone at steady state: a tube over it is a resistance in series between its air and the wire. */
export function steadyZone(zone: FinZone): { readonly lossWPerMK: number; readonly surroundingsRiseK: number } {
  const { tube } = zone
  if (tube === null) return zone
  const outwards = tube.outerWPerMK + tube.radiationWPerMK
  if (outwards === 0) return { lossWPerMK: 0, surroundingsRiseK: 0 }
  return { lossWPerMK: 1 / (1 / outwards + 1 / tube.innerWPerMK), surroundingsRiseK: (tube.outerWPerMK * tube.airRiseK) / outwards }
}

/** Three-node elements from the joint outwards: their ends, two nodes an element apart. */
export interface WireMesh {
  readonly endsM: Float64Array
  /** Nodes at the stub's end and at the clip; -1 without a clip. */
  readonly edgeNode: number
  readonly clipNode: number
  /** Elements under a tube: the first ones. Each has three temperatures of the tube, beside its three nodes. */
  readonly tubeElements: number
}

/** Growth of element length per length of distance from the joint, at accuracy 1. */
const growthAtOne = 0.2
/** First element over the thermal diffusion length in the shortest time scale, or over the fin's characteristic length. */
const firstAtOne = 0.35
/** Least first element, as a fraction of the reach. */
const shortestElement = 1e-5

/** Elements of length h0 + g x with a node on every discontinuity, so that no parabola crosses one. */
export function wireMesh(wire: Wire, accuracy: number, shortestS: number, observeS: number): WireMesh {
  const kA = wire.conductanceWM
  const { tube, swept } = wire
  const losses = [wire.bareLossWPerMK, wire.insulatedLossWPerMK, swept?.bareLossWPerMK ?? 0, swept?.insulatedLossWPerMK ?? 0]
  for (const layers of tube === null ? [] : [tube.loose, tube.recovered]) losses.push(layers.bare.innerWPerMK, layers.insulated.innerWPerMK)
  const leastLoss = Math.min(wire.insulatedLossWPerMK, swept?.insulatedLossWPerMK ?? Infinity)
  const lengths = 7 - Math.log(accuracy)
  const reach = lengths * Math.min(leastLoss > 0 ? Math.sqrt(kA / leastLoss) : Infinity, 0.8 * Math.sqrt((kA * observeS) / wire.bareStoreJPerMK))
  const scale = Math.sqrt(kA * Math.min(shortestS / wire.insulatedStoreJPerMK, 1 / Math.max(...losses)))
  const first = Math.min(Math.max(firstAtOne * accuracy ** 0.2 * scale, shortestElement * reach), reach)
  const growth = growthAtOne * accuracy ** 0.2
  const breaks = [0, ...breaksM(wire)]
  breaks.push((breaks[breaks.length - 1] as number) + reach)
  const ends = [0]
  let edge = 0
  let clip = -1
  let covered = 0
  for (let k = 0; k + 1 < breaks.length; k++) {
    const a = breaks[k] as number
    const b = breaks[k + 1] as number
    const from = Math.log1p((growth * a) / first)
    const span = Math.log1p((growth * b) / first) - from
    const count = Math.max(1, Math.round(span / growth))
    for (let j = 1; j < count; j++) ends.push((first * Math.expm1(from + (span * j) / count)) / growth)
    ends.push(b)
    if (b === wire.stubM) edge = ends.length - 1
    if (b === wire.clip?.atM) clip = ends.length - 1
    if (b === tube?.toM) covered = ends.length - 1
  }
  return { endsM: Float64Array.from(ends), edgeNode: 2 * edge, clipNode: clip < 0 ? -1 : 2 * clip, tubeElements: covered }
}
