import type { TubeLayer, TubeOverWire, Wire } from '../heatModel.ts'

/** What acts on the wires at the moment. */
export interface WireState {
  readonly toolOn: boolean
  /** A tube over the joint has recovered. */
  readonly recovered: boolean
}

/** A stretch of wire with one store, one loss and one temperature of its surroundings; or under a tube, which has a temperature of its own. */
export interface FinZone {
  readonly fromM: number
  /** Infinity for the last. */
  readonly toM: number
  readonly storeJPerMK: number
  readonly lossWPerMK: number
  readonly surroundingsRiseK: number
  readonly tube: (TubeLayer & { readonly storeJPerMK: number; readonly outerWPerMK: number; readonly airRiseK: number }) | null
}

/** Where something changes along the wire, in order, without 0: the stub's end, the stream's end, the tube's end, the clip. */
export function breaksM(wire: Wire): readonly number[] {
  const all = [wire.stubM, wire.swept?.toM ?? 0, wire.tube?.toM ?? 0, wire.clip?.atM ?? 0].filter((x) => x > 0)
  return [...new Set(all)].sort((a, b) => a - b)
}

/** The layer of the tube over bare or insulated wire. */
export function layerOf(tube: TubeOverWire, bare: boolean, recovered: boolean): TubeLayer {
  const layers = recovered ? tube.recovered : tube.loose
  return bare ? layers.bare : layers.insulated
}

/** The stretches from the joint's edge outwards. */
export function finZones(wire: Wire, state: WireState): readonly FinZone[] {
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

/** The stretch at steady state: a tube over it is a resistance in series, between its air and the wire. */
export function steadyZone(zone: FinZone): { readonly lossWPerMK: number; readonly surroundingsRiseK: number } {
  const { tube } = zone
  if (tube === null) return zone
  const outwards = tube.outerWPerMK + tube.radiationWPerMK
  if (outwards === 0) return { lossWPerMK: 0, surroundingsRiseK: 0 }
  return { lossWPerMK: 1 / (1 / outwards + 1 / tube.innerWPerMK), surroundingsRiseK: (tube.outerWPerMK * tube.airRiseK) / outwards }
}
