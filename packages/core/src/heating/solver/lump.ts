import type { Melt } from '../heatModel.ts'

/** solid, melting and liquid share one heat content: below solidus, between, above liquidus. */
type Phase = 'solid' | 'melting' | 'liquid'

/** A body at one temperature that may hold melting solder; it changes as the run goes on. */
export interface Lump {
  /** Without the solder's latent heat. */
  capacityJPerK: number
  melt: Melt | null
  riseK: number
  phase: Phase
  /** Share of the solder that is liquid. */
  share: number
}

export function newLump(capacityJPerK: number, melt: Melt | null, riseK: number): Lump {
  return { capacityJPerK, melt, riseK, phase: 'solid', share: 0 }
}

/** True where the lump takes latent heat at one temperature: its share moves, its temperature stands. */
export function onPlateau(lump: Lump): boolean {
  return lump.phase === 'melting' && lump.melt !== null && lump.melt.liquidusRiseK === lump.melt.solidusRiseK
}

/** Heat for each kelvin in its present phase; on a plateau, for the whole melt. */
export function slopeJPerK(lump: Lump): number {
  if (lump.phase !== 'melting' || lump.melt === null) return lump.capacityJPerK
  if (onPlateau(lump)) return lump.melt.latentJ
  return lump.capacityJPerK + lump.melt.latentJ / (lump.melt.liquidusRiseK - lump.melt.solidusRiseK)
}

/** Heat above the surroundings. */
export function heatJ(lump: Lump): number {
  return lump.capacityJPerK * lump.riseK + (lump.melt === null ? 0 : lump.melt.latentJ * lump.share)
}

/** What moves in the present phase: the share on a plateau, else the rise. */
export function moving(lump: Lump): number {
  return onPlateau(lump) ? lump.share : lump.riseK
}

/** Upper end of the present phase in what moves. */
export function upperBound(lump: Lump): number {
  if (lump.melt === null || lump.phase === 'liquid') return Infinity
  if (lump.phase === 'solid') return lump.melt.solidusRiseK
  return onPlateau(lump) ? 1 : lump.melt.liquidusRiseK
}

/** Lower end of the present phase in what moves. */
export function lowerBound(lump: Lump): number {
  if (lump.melt === null || lump.phase === 'solid') return -Infinity
  if (lump.phase === 'liquid') return lump.melt.liquidusRiseK
  return onPlateau(lump) ? 0 : lump.melt.solidusRiseK
}

/** Sets what moves, and with it the share of the melt. */
export function moveTo(lump: Lump, value: number): void {
  if (onPlateau(lump)) {
    lump.share = value
    return
  }
  lump.riseK = value
  if (lump.melt === null) return
  const { solidusRiseK, liquidusRiseK } = lump.melt
  if (lump.phase === 'melting') lump.share = Math.min(1, Math.max(0, (value - solidusRiseK) / (liquidusRiseK - solidusRiseK)))
}

/** Passes into the next phase up or down, standing on the bound between them. A melt without latent heat at one temperature is passed at once. */
export function changePhase(lump: Lump, upwards: boolean): void {
  const melt = lump.melt
  if (melt === null) return
  const passing = melt.latentJ === 0 && melt.liquidusRiseK === melt.solidusRiseK
  if (lump.phase === 'melting' || passing) {
    lump.phase = upwards ? 'liquid' : 'solid'
    lump.share = upwards ? 1 : 0
    lump.riseK = upwards ? melt.liquidusRiseK : melt.solidusRiseK
    return
  }
  lump.phase = 'melting'
  lump.riseK = upwards ? melt.solidusRiseK : melt.liquidusRiseK
}

/**
 * A tube that recovers lays its ring on the joint: what is still to melt is from now on the joint's to melt, and heat that already melted some goes with
 * it. extraJPerK is the wires' share of the joint's store.
 */
export function recover(tube: Lump, joint: Lump, extraJPerK: number): void {
  const melt = tube.melt
  if (melt === null) return
  const capacity = joint.capacityJPerK + extraJPerK
  const heat = capacity * joint.riseK + melt.latentJ * tube.share
  const solid = capacity * melt.solidusRiseK
  const liquid = capacity * melt.liquidusRiseK + melt.latentJ
  joint.melt = melt
  tube.melt = null
  tube.phase = 'solid'
  tube.share = 0
  if (heat < solid) {
    joint.phase = 'solid'
    joint.share = 0
    joint.riseK = heat / capacity
  } else if (heat >= liquid) {
    joint.phase = 'liquid'
    joint.share = 1
    joint.riseK = (heat - melt.latentJ) / capacity
  } else {
    joint.phase = 'melting'
    joint.share = (heat - solid) / (liquid - solid)
    joint.riseK = melt.solidusRiseK + joint.share * (melt.liquidusRiseK - melt.solidusRiseK)
  }
}
