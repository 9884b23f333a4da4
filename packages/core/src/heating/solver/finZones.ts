/** A clip at a point of the wire; without resistance it holds the copper at its own temperature. */
export interface WireClip {
  readonly atM: number
  readonly resistanceKPerW: number
  readonly riseK: number
}

/** One tail of a conductor in SI units; rises are above the surroundings. */
export interface Wire {
  /** How many free tails of all conductors are exactly like this one. */
  readonly tails: number
  readonly conductanceWM: number
  readonly stubM: number
  readonly bareStoreJPerMK: number
  readonly insulatedStoreJPerMK: number
  readonly bareLossWPerMK: number
  readonly insulatedLossWPerMK: number
  /** The stream along the wire while the tool is on; null where it sweeps the joint alone. */
  readonly swept: { readonly toM: number; readonly bareLossWPerMK: number; readonly insulatedLossWPerMK: number; readonly riseK: number } | null
  readonly clip: WireClip | null
  /** Above the surroundings. */
  readonly limitRiseK: number
  /** Film over film and wall: what of a difference between copper and surroundings stands across the film. */
  readonly outerShare: number
  readonly sweptOuterShare: number
}

/** A stretch of wire with one store, one loss and one temperature of its surroundings. */
export interface FinZone {
  readonly fromM: number
  /** Infinity for the last. */
  readonly toM: number
  readonly storeJPerMK: number
  readonly lossWPerMK: number
  readonly surroundingsRiseK: number
}

/** Where something changes along the wire, in order, without 0: the stub's end, the stream's end, the clip. The same with the tool on or off. */
export function breaksM(wire: Wire): readonly number[] {
  const all = [wire.stubM, wire.swept?.toM ?? 0, wire.clip?.atM ?? 0].filter((x) => x > 0)
  return [...new Set(all)].sort((a, b) => a - b)
}

/** The stretches from the joint's edge outwards. */
export function finZones(wire: Wire, toolOn: boolean): readonly FinZone[] {
  const edges = [0, ...breaksM(wire), Infinity]
  const zones: FinZone[] = []
  for (let k = 0; k + 1 < edges.length; k++) {
    const fromM = edges[k] as number
    const bare = fromM < wire.stubM
    const swept = toolOn && wire.swept !== null && fromM < wire.swept.toM ? wire.swept : null
    const loss = swept ?? wire
    zones.push({
      fromM,
      toM: edges[k + 1] as number,
      storeJPerMK: bare ? wire.bareStoreJPerMK : wire.insulatedStoreJPerMK,
      lossWPerMK: bare ? loss.bareLossWPerMK : loss.insulatedLossWPerMK,
      surroundingsRiseK: swept?.riseK ?? 0,
    })
  }
  return zones
}
