import { requireBetween } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'
import { airProperties } from '../heat/index.ts'
import { metals, type Provenance, solders } from '../materials/index.ts'

/** Bounds on the contact of an iron's tip; no published measurement of a soldering contact was found. */
export const tipContactDefaults = /* @__PURE__ */ frozen({
  /** Width of the tip's flat along the joint. */
  tipWidthMm: { value: 2, low: 1, high: 5, provenance: { status: 'common practice', source: 'tips for hook-up wire are some 2 mm wide' } },
  /** Mean thickness of the solder bridge between tip and joint. */
  bridgeMm: { value: 0.2, low: 0.1, high: 0.5, provenance: { status: 'from memory', source: 'a bead that wets both, a few tenths of a millimetre' } },
  forceN: { value: 1, low: 0.3, high: 3, provenance: { status: 'from memory', source: 'a tip that rests on the joint by hand; no measurement found' } },
  /** Factor on the force when pressing harder. */
  pressFactor: { value: 2, provenance: { status: 'from memory', source: 'twice the force is about what a hand adds without bending the wire' } },
  solderWPerMK: { value: solders.Sn63Pb37.conductivityWPerMK.nominal, provenance: solders.Sn63Pb37.conductivityWPerMK.provenance },
  jointWPerMK: { value: metals['annealed-copper'].conductivityWPerMK.nominal, provenance: metals['annealed-copper'].conductivityWPerMK.provenance },
  /** Conductivity of the tip's iron plating at soldering temperature. */
  tipWPerMK: { value: 50, provenance: { status: 'from memory', source: 'iron near 300 C' } },
  /** Hardness of the softer face, worn copper. */
  hardnessPa: { value: 1e9, provenance: { status: 'from memory', source: 'cold-worked copper, about 100 HV' } },
  roughnessM: { value: 2e-6, provenance: { status: 'from memory', source: 'worn tip on drawn wire, root mean square of both faces' } },
  slope: { value: 0.15, provenance: { status: 'from memory', source: 'mean slope of such faces in the contact literature, 0.1 to 0.2' } },
  /** Oxide thickness on both faces; flux removes it. */
  oxideM: { value: 5e-8, provenance: { status: 'from memory', source: 'a visible tarnish of copper, tens of nanometres' } },
  oxideWPerMK: { value: 4, provenance: { status: 'from memory', source: 'cuprous oxide, order of magnitude' } },
  gapAirC: { value: 200, provenance: { status: 'derived', source: 'between a tip at 350 C and a cold joint' } },
} as const satisfies Readonly<Record<string, { readonly value: number; readonly low?: number; readonly high?: number; readonly provenance: Provenance }>>)

/** Contact resistance of a tip on a joint, in K/W: as found and after each improvement. */
export interface TipContact {
  /** A bead of solder bridges the whole flat. */
  readonly wettedKPerW: number
  /** No solder: metal spots under pressure through their oxide, and the air beside them. */
  readonly dryKPerW: number
  /** Dry, with the oxide removed by flux. */
  readonly fluxedKPerW: number
  /** Dry, with more force. */
  readonly pressedKPerW: number
}

/** Conductance in W/K of the metal spots formed by a force over an area, oxide included. */
function spotsWPerK(forceN: number, areaM2: number, oxideM: number): number {
  const { tipWPerMK, jointWPerMK, slope, roughnessM, hardnessPa, oxideWPerMK } = tipContactDefaults
  const k = (2 * tipWPerMK.value * jointWPerMK.value) / (tipWPerMK.value + jointWPerMK.value)
  const pressed = forceN / hardnessPa.value
  const spots = 1.25 * k * (slope.value / roughnessM.value) * (pressed / areaM2) ** 0.95 * areaM2
  return 1 / (1 / spots + oxideM / (oxideWPerMK.value * pressed))
}

/**
 * Bounds the contact resistance of an iron's tip on a joint: bridged by solder, and dry.
 *
 * A real contact lies between: part of the flat is bridged. Chars, dirt and flux residue are left out, so a dry contact may be worse still.
 *
 * @equation R_wet = t/(k_s w^2) + 1/(4 k_j sqrt(w^2/pi)); 1/R_dry = 1/(1/(1.25 k m/sigma (F/(H A))^0.95 A) + x/(k_x F/H)) + pi k_air w sqrt(d/(3 sigma))
 * @symbol R_wet - result.wettedKPerW - K/W - solder over the whole flat, and the heat's spreading into the joint
 * @symbol R_dry - result.dryKPerW - K/W - metal spots, their oxide, and the air beside them
 * @symbol t - bridgeMm - mm - thickness of the bridge
 * @symbol w - tipWidthMm - mm - flat of the tip along the joint; the bridge is as long as it is wide
 * @symbol d - diameterMm - mm - across the joint, round
 * @symbol k_s - solderWPerMK - W/(m K) - conductivity of the solder
 * @symbol k_j - result - W/(m K) - of the joint's copper
 * @symbol F - forceN - N - force of the tip on the joint
 * @symbol k - result - W/(m K) - harmonic mean of tip and joint
 * @symbol m - result - 1 - mean slope of the faces
 * @symbol sigma - result - m - their roughness
 * @symbol H - result - Pa - hardness of the softer face
 * @symbol A - result - m2 - w^2, in which the spots lie
 * @symbol x - result - m - oxide on the faces
 * @symbol k_x - result - W/(m K) - its conductivity
 * @domain diameterMm: from 0.1 to 100
 * @domain optional tipWidthMm: from 0.1 to 50
 * @domain optional bridgeMm: from 0.01 to 5
 * @domain optional forceN: from 0.01 to 100
 * @domain optional solderWPerMK: from 1 to 1000
 * @throws DomainError outside the domain
 * @example
 * tipContactKPerW({ diameterMm: 2.4, tipWidthMm: 2, bridgeMm: 0.2, forceN: 1, solderWPerMK: 50 }) // { wettedKPerW: 1.5666, dryKPerW: 64 }
 * @source Cooper, Mikic and Yovanovich, Int. J. Heat Mass Transfer 12 (1969), 279, in Yovanovich's form with 0.95; spreading from a disc into a half-space; parameters from memory
 */
export function tipContactKPerW(i: {
  readonly diameterMm: number
  readonly tipWidthMm?: number
  readonly bridgeMm?: number
  readonly forceN?: number
  readonly solderWPerMK?: number
}): TipContact {
  const defaults = tipContactDefaults
  const d = requireBetween('diameterMm', i.diameterMm, 0.1, 100) / 1000
  const w = requireBetween('tipWidthMm', i.tipWidthMm ?? defaults.tipWidthMm.value, 0.1, 50) / 1000
  const t = requireBetween('bridgeMm', i.bridgeMm ?? defaults.bridgeMm.value, 0.01, 5) / 1000
  const F = requireBetween('forceN', i.forceN ?? defaults.forceN.value, 0.01, 100)
  const solderK = requireBetween('solderWPerMK', i.solderWPerMK ?? defaults.solderWPerMK.value, 1, 1000)
  const A = w * w
  const wettedKPerW = t / (solderK * A) + 1 / (4 * defaults.jointWPerMK.value * Math.sqrt(A / Math.PI))
  const gap = Math.PI * airProperties(defaults.gapAirC.value).conductivityWPerMK * w * Math.sqrt(d / (3 * defaults.roughnessM.value))
  const dry = (forceN: number, oxideM: number): number => 1 / (spotsWPerK(forceN, A, oxideM) + gap)
  return {
    wettedKPerW,
    dryKPerW: dry(F, defaults.oxideM.value),
    fluxedKPerW: dry(F, 0),
    pressedKPerW: dry(F * defaults.pressFactor.value, defaults.oxideM.value),
  }
}
