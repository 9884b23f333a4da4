import type { Wire } from '../heatModel.ts'
import { breaksM } from './finZones.ts'

/** Three-node elements from the joint outwards: their ends, two nodes an element apart. */
export interface WireMesh {
  readonly endsM: Float64Array
  /** Nodes at the stub's end and at the clip; -1 without a clip. */
  readonly edgeNode: number
  readonly clipNode: number
}

/** How much longer an element is for each length of distance from the joint, at accuracy 1. */
const growthAtOne = 0.2
/** First element against how far heat runs in the shortest time of interest, or how far it reaches along the wire. */
const firstAtOne = 0.35
/** The first element is at least this share of the reach. */
const shortestElement = 1e-5

/** Elements whose lengths follow h0 + g x, with an end on every break, so that no parabola crosses one. */
export function wireMesh(wire: Wire, accuracy: number, shortestS: number, observeS: number): WireMesh {
  const kA = wire.conductanceWM
  const { tube, swept } = wire
  const losses = [wire.bareLossWPerMK, wire.insulatedLossWPerMK, swept?.bareLossWPerMK ?? 0, swept?.insulatedLossWPerMK ?? 0]
  for (const layers of tube === null ? [] : [tube.loose, tube.recovered]) losses.push(layers.bare.innerWPerMK, layers.insulated.innerWPerMK)
  const leastLoss = Math.min(wire.insulatedLossWPerMK, swept?.insulatedLossWPerMK ?? Infinity)
  const lengths = 7 - Math.log(accuracy)
  const reach = lengths * Math.min(Math.sqrt(kA / leastLoss), 0.8 * Math.sqrt((kA * observeS) / wire.bareStoreJPerMK))
  const scale = Math.sqrt(kA * Math.min(shortestS / wire.insulatedStoreJPerMK, 1 / Math.max(...losses)))
  const first = Math.min(Math.max(firstAtOne * accuracy ** 0.2 * scale, shortestElement * reach), reach)
  const growth = growthAtOne * accuracy ** 0.2
  const breaks = [0, ...breaksM(wire)]
  breaks.push((breaks[breaks.length - 1] as number) + reach)
  const ends = [0]
  let edge = 0
  let clip = -1
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
  }
  return { endsM: Float64Array.from(ends), edgeNode: 2 * edge, clipNode: clip < 0 ? -1 : 2 * clip }
}
