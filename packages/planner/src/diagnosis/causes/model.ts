import type { Chain } from '../../circuit/inner.ts'
import type { ReadingKind } from '../../job/index.ts'
import type { Filled } from './unknowns.ts'

/** Effect of a fault on the circuit, set by each candidate. */
export interface Fault {
  /** Gap with the fault; -1 for none. */
  gap: number
  stillOhm: number
  movedOhm: number
  /** Not loose: moving the lead changes it only by chance. */
  stirs: boolean
  /** Supply: factor on its voltage, and added resistance. */
  supplyScale: number
  supplyOhm: number
  /** Factor on the load's current; a stalled load is a constant resistance. */
  loadScale: number
  loadOhm: number
  /** Factor on the load's resistance at rest. */
  idleScale: number
  fuseOpen: boolean
  /** Resistance between feed and return; Infinity for none. */
  leakOhm: number
}

export function clearFault(fault: Fault): void {
  fault.gap = -1
  fault.stillOhm = 0
  fault.movedOhm = 0
  fault.stirs = false
  fault.supplyScale = 1
  fault.supplyOhm = 0
  fault.loadScale = 1
  fault.loadOhm = 0
  fault.idleScale = 1
  fault.fuseOpen = false
  fault.leakOhm = Number.POSITIVE_INFINITY
}

export const noFault = (): Fault => {
  const fault = {} as Fault
  clearFault(fault)
  return fault
}

/** A probe to predict, with places by index. */
export interface Ask {
  readonly kind: ReadingKind
  readonly state: 'on' | 'off' | 'dead'
  readonly when: 'still' | 'moved'
  readonly from: number
  readonly to: number
  /** Current during the reading, if measured. */
  readonly currentA: number | null
  readonly airC: number
}

/** Resistance of a hand meter's volts range. */
const meterOhm = 1e7
/** Resistance of an open fuse. */
const openOhm = 1e9
/** Below this share of its nominal voltage every load acts as a resistor. */
const resistorBelow = 0.3

/** Current of a load whose current grows as a power of its voltage; as a resistor at low voltage. */
function takenAtV(volt: number, nominalV: number, scaleA: number, law: number): number {
  const share = volt / nominalV
  return share >= resistorBelow ? scaleA * share ** law : scaleA * resistorBelow ** law * (share / resistorBelow)
}

/** The circuit under load in one state: current and load voltage. */
interface Loaded {
  currentA: number
  loadV: number
}

/** Model of the whole circuit: from its unknowns and a fault it predicts probes. */
export class CircuitModel {
  readonly #chain: Chain
  readonly #filled: Filled
  readonly #fault: Fault
  readonly #fuseAt: number
  /** Resistance from the first place to each other one, without the load, warm and cold. */
  readonly #warm: Record<'still' | 'moved', Float64Array>
  readonly #cold: Record<'still' | 'moved', Float64Array>
  readonly #loaded: Record<'still' | 'moved', Loaded> = { still: { currentA: 0, loadV: 0 }, moved: { currentA: 0, loadV: 0 } }

  constructor(chain: Chain, filled: Filled, fault: Fault) {
    this.#chain = chain
    this.#filled = filled
    this.#fault = fault
    this.#fuseAt = chain.gaps.findIndex(({ fuseOhm }) => fuseOhm !== null)
    const empty = () => ({ still: new Float64Array(chain.places.length), moved: new Float64Array(chain.places.length) })
    this.#warm = empty()
    this.#cold = empty()
  }

  /** Solves the circuit at rest, and moved if asked; call it after changing the unknowns or the fault. */
  solve(moved: boolean): void {
    this.#solveState('still', this.#fault.stillOhm)
    if (moved) this.#solveState('moved', this.#fault.movedOhm * (this.#fault.stirs ? this.#filled.stir : 1))
  }

  /** Prefix sums of the gaps, so that any span is one subtraction. */
  #addUp(when: 'still' | 'moved', faultOhm: number): void {
    const { loadAt } = this.#chain
    const { warmOhm, coldOhm } = this.#filled
    const { gap: faultGap, fuseOpen } = this.#fault
    const warm = this.#warm[when]
    const cold = this.#cold[when]
    let warmSum = 0
    let coldSum = 0
    for (let gap = 0; gap < warmOhm.length; gap += 1) {
      if (gap !== loadAt) {
        const extra = (gap === faultGap ? faultOhm : 0) + (fuseOpen && gap === this.#fuseAt ? openOhm : 0)
        warmSum += (warmOhm[gap] as number) + extra
        coldSum += (coldOhm[gap] as number) + extra
      }
      warm[gap + 1] = warmSum
      cold[gap + 1] = coldSum
    }
  }

  currentA(when: 'still' | 'moved'): number {
    return this.#loaded[when].currentA
  }

  #solveState(when: 'still' | 'moved', faultOhm: number): void {
    const filled = this.#filled
    const fault = this.#fault
    const loaded = this.#loaded[when]
    const openV = filled.supplyV * fault.supplyScale
    this.#addUp(when, faultOhm)
    if (fault.fuseOpen) {
      loaded.currentA = 0
      loaded.loadV = 0
      return
    }
    const seriesOhm = filled.sourceOhm + fault.supplyOhm + (this.#warm[when].at(-1) as number)
    const nominalV = this.#chain.input.supplyV
    if (fault.loadOhm > 0) {
      loaded.currentA = openV / (seriesOhm + fault.loadOhm)
      loaded.loadV = loaded.currentA * fault.loadOhm
      return
    }
    const scaleA = filled.loadA * fault.loadScale
    const law = filled.loadLaw
    if (Math.abs(law - 1) < 1e-9) {
      loaded.loadV = openV / (1 + (seriesOhm * scaleA) / nominalV)
      loaded.currentA = (scaleA * loaded.loadV) / nominalV
      return
    }
    // The highest load voltage at which the lead delivers what the load takes: secant steps kept inside a bracket.
    let high = openV
    let low = 0
    let volt = openV / (1 + (seriesOhm * scaleA) / nominalV)
    for (let n = 0; n < 60; n += 1) {
      const takenA = takenAtV(volt, nominalV, scaleA, law)
      const excess = volt + seriesOhm * takenA - openV
      if (excess > 0) high = volt
      else low = volt
      if (Math.abs(excess) <= 1e-10 * openV) break
      const slope = 1 + (seriesOhm * takenA * (volt / nominalV >= resistorBelow ? law : 1)) / Math.max(volt, 1e-9)
      const next = volt - excess / slope
      volt = next > low && next < high ? next : (low + high) / 2
    }
    loaded.loadV = volt
    loaded.currentA = takenAtV(volt, nominalV, scaleA, law)
  }

  /** Resistance between two places, without the load between them. */
  #seriesOhm(from: number, to: number, cold: boolean, when: 'still' | 'moved'): number {
    const sums = (cold ? this.#cold : this.#warm)[when]
    return (sums[to] as number) - (sums[from] as number)
  }

  /** Predicted reading of the probe, in its own unit. */
  show(ask: Ask): number {
    if (ask.kind === 'current') return this.#showCurrent(ask)
    if (ask.kind === 'temperature') return this.#showTemperature(ask)
    if (ask.state === 'dead') return this.#showOhms(ask)
    return ask.state === 'on' ? this.#showLoaded(ask) : this.#showIdle(ask)
  }

  #showCurrent({ state, when }: Ask): number {
    if (state === 'on') return this.#loaded[when].currentA
    return this.#fault.fuseOpen ? 0 : this.#filled.supplyV / (this.#fault.leakOhm + this.#filled.sourceOhm)
  }

  #showTemperature({ state, when, from, to, airC, currentA }: Ask): number {
    if (state !== 'on') return airC
    const flowing = currentA ?? this.#loaded[when].currentA
    const share = flowing / this.#chain.input.currentA
    const inside = this.#fault.gap >= from && this.#fault.gap < to
    const ohm = inside ? (when === 'still' ? this.#fault.stillOhm : this.#fault.movedOhm) : 0
    return airC + Math.min(400, this.#filled.riseK * share * share + flowing * flowing * ohm * this.#filled.hotKPerW)
  }

  #showLoaded({ when, from, to, currentA }: Ask): number {
    const fault = this.#fault
    const filled = this.#filled
    const { loadAt, places } = this.#chain
    const openV = filled.supplyV * fault.supplyScale
    const crosses = from <= loadAt && to > loadAt
    if (fault.fuseOpen) {
      return from <= this.#fuseAt && to > this.#fuseAt ? openV : 0
    }
    const flowing = currentA ?? this.#loaded[when].currentA
    const along = flowing * this.#seriesOhm(from, to, false, when)
    if (!crosses) return along
    // Between feed and return: the supply less the losses outside the two places.
    const last = places.length - 1
    const outside = this.#seriesOhm(0, from, false, when) + this.#seriesOhm(to, last, false, when)
    return openV - flowing * (filled.sourceOhm + fault.supplyOhm + outside)
  }

  #showIdle({ when, from, to }: Ask): number {
    const fault = this.#fault
    const { loadAt, places } = this.#chain
    const fuseAt = this.#fuseAt
    const openV = this.#filled.supplyV * fault.supplyScale
    if (from > loadAt || to <= loadAt) return fault.fuseOpen && from <= fuseAt && to > fuseAt ? openV : 0
    // The meter is the only load.
    const lead = this.#seriesOhm(0, from, false, when) + this.#seriesOhm(to, places.length - 1, false, when)
    const short = fault.fuseOpen && from > fuseAt ? 0 : 1
    return (short * openV * meterOhm) / (meterOhm + lead)
  }

  #showOhms({ kind, when, from, to }: Ask): number {
    const { loadAt } = this.#chain
    const lead = this.#seriesOhm(from, to, true, when)
    if (from > loadAt || to <= loadAt) return kind === 'insulation' ? this.#filled.insulationOhm : lead
    if (kind !== 'insulation' && from === loadAt && to === loadAt + 1) return Math.min(1e12, this.#filled.idleLoadOhm * this.#fault.idleScale)
    return 1 / (1 / this.#filled.insulationOhm + 1 / this.#fault.leakOhm)
  }
}
