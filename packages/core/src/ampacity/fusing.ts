import { mm2ToCircularMils } from '../conductor/index.ts'
import { DomainError, requireBetween, requireFinite, requireFiniteResult, requirePositive, UnknownEntryError } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'
import type { ProvenanceStatus } from '../materials/index.ts'

const mmPerInch = 25.4
/** Above the highest printed melting point of copper, 1084.62 °C. */
const hottestC = 1100
const coldestC = -60

/** Constants of the two fusing formulas. */
export const fusingConstants = /* @__PURE__ */ frozen({
  /** A per inch^1.5. */
  preece: {
    copper: { aPerInch15: 10244, status: 'published' },
    aluminium: { aPerInch15: 7585, status: 'from memory' },
    iron: { aPerInch15: 3148, status: 'from memory' },
    tin: { aPerInch15: 1642, status: 'from memory' },
    'tin-lead': { aPerInch15: 1318, status: 'from memory' },
    lead: { aPerInch15: 1379, status: 'from memory' },
  },
  onderdonk: { perCircularMil2S: 33, offsetC: 234, meltingC: 1083, status: 'published' },
} as const satisfies {
  readonly preece: Readonly<Record<string, { readonly aPerInch15: number; readonly status: ProvenanceStatus }>>
  readonly onderdonk: { readonly perCircularMil2S: number; readonly offsetC: number; readonly meltingC: number; readonly status: ProvenanceStatus }
})

/**
 * Gives the current that melts a long bare wire in open air after a while.
 *
 * This is the point of destruction, not a rating; short or insulated wires differ widely.
 *
 * @equation I = C d^1.5, d in inches
 * @symbol C - material - A/in^1.5 - constant of the metal
 * @symbol d - diameterMm - mm - diameter of the wire
 * @symbol I - result - A - melting current
 * @domain diameterMm: above 0
 * @throws DomainError outside the domain
 * @throws UnknownEntryError for a metal without a constant
 * @example
 * fusingCurrentPreeceA({ diameterMm: 1, material: 'copper' }) // 80.02
 * @source Preece, On the heating effects of electric currents, Proc. Royal Society, 1880s, as quoted by Brooks and Adam
 */
export function fusingCurrentPreeceA(i: {
  readonly diameterMm: number
  readonly material: 'copper' | 'aluminium' | 'iron' | 'tin' | 'tin-lead' | 'lead'
}): number {
  const C = fusingConstants.preece[i.material]?.aPerInch15
  if (typeof C !== 'number') throw new UnknownEntryError('material', i.material, Object.keys(fusingConstants.preece))
  const d = requirePositive('diameterMm', i.diameterMm) / mmPerInch
  return requireFiniteResult('diameterMm', i.diameterMm, C * d * Math.sqrt(d))
}

/**
 * Gives the time in which a copper wire reaches its melting point, all heat kept in it.
 *
 * This is the point of destruction, not a rating; beyond about 10 s too much heat escapes to the air.
 *
 * @equation t = (A/I)^2 log10(1 + (Tm - Ti)/(234 + Ti))/33, A in circular mils
 * @symbol A - areaMm2 - mm2 - area of the wire
 * @symbol I - currentA - A - current
 * @symbol Ti - initialC - C - temperature at the start
 * @symbol Tm - meltingC - C - temperature at which it melts
 * @symbol t - result - s - time
 * @domain areaMm2: above 0
 * @domain currentA: above 0
 * @domain initialC: at least -60
 * @domain optional meltingC: from -60 to 1100
 * @throws DomainError outside the domain, and for a start above the melting point
 * @example
 * fusingTimeOnderdonkS({ areaMm2: 1.3078, currentA: 168.9, initialC: 25, meltingC: 1083 }) // 4.998
 * @source Onderdonk's equation, quoted in 1928, with the offset 234 added to the start
 */
export function fusingTimeOnderdonkS(i: {
  readonly areaMm2: number
  readonly currentA: number
  readonly initialC: number
  readonly meltingC?: number
}): number {
  const { perCircularMil2S, offsetC, meltingC } = fusingConstants.onderdonk
  const A = mm2ToCircularMils(requirePositive('areaMm2', i.areaMm2))
  const I = requirePositive('currentA', i.currentA)
  const Tm = requireBetween('meltingC', i.meltingC ?? meltingC, coldestC, hottestC, 'copper melts at 1083 to 1085 °C')
  const Ti = requireFinite('initialC', i.initialC)
  if (!(Ti >= coldestC && Ti <= Tm)) throw new DomainError('initialC', Ti, `from ${coldestC} to meltingC, ${Tm}`)
  return requireFiniteResult('currentA', I, ((A / I) ** 2 * Math.log10(1 + (Tm - Ti) / (offsetC + Ti))) / perCircularMil2S)
}
