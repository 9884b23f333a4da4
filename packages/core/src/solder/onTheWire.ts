import { requireChoice } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'
import { type Interval, type Provenance, type SolderName, solder } from '../materials/index.ts'

/** Existing coating of the strands: the maker's tin, old solder, or unknown, which may contain lead. */
export type WireCoating = 'bare' | 'tin' | 'tin-lead' | 'bismuth' | 'indium' | 'unknown'
const coatings = ['bare', 'tin', 'tin-lead', 'bismuth', 'indium', 'unknown'] as const satisfies readonly WireCoating[]

/** The alloy that bismuth forms with lead. */
export const bismuthLead = /* @__PURE__ */ frozen({
  /** The tin-lead-bismuth eutectic. */
  meltsC: 96,
  provenance: { status: 'published', source: 'glossary of a maker of soldering machines; agrees with the alloy of Sn, Pb and Bi of trade tables' },
} as const satisfies { readonly meltsC: number; readonly provenance: Provenance })

interface Elements {
  readonly lead: boolean
  readonly bismuth: boolean
}

/** Elements from an alloy's name. */
function elementsOf(alloy: SolderName): Elements {
  return { lead: alloy.includes('Pb'), bismuth: alloy.includes('Bi') }
}

const leaded: Readonly<Record<WireCoating, boolean | null>> = { bare: false, tin: false, 'tin-lead': true, bismuth: false, indium: false, unknown: null }

/**
 * Tells whether a solder may go onto what is already on the wire: lead and bismuth make an alloy that melts at 96 C.
 *
 * Otherwise tin on the strands joins the new alloy and does no harm. Old tinned wire and old joints often contain lead, so `unknown` is not cleared.
 *
 * @equation row of bismuthLead
 * @symbol alloy - alloy - 1 - the solder to be used
 * @symbol coating - coating - 1 - what the strands carry
 * @symbol result - result - 1 - verdict, and the temperature at which the mixture melts where there is one
 * @throws DomainError for a coating that is not listed
 * @throws UnknownEntryError for an alloy that is not listed
 * @example
 * solderOverCoating({ alloy: 'Sn42Bi58', coating: 'tin-lead' }) // { verdict: 'forbidden', mixtureMeltsC: 96 }
 * @source soldering glossary, tin-lead-bismuth eutectic
 */
export function solderOverCoating(i: { readonly alloy: SolderName; readonly coating: WireCoating }): {
  readonly verdict: 'compatible' | 'forbidden' | 'cannot tell'
  /** If lead meets bismuth, or may; else null. */
  readonly mixtureMeltsC: number | null
} {
  const { lead, bismuth } = elementsOf(solder(i.alloy).name)
  const coating = requireChoice<WireCoating>('coating', i.coating, coatings)
  const onWireLead = leaded[coating]
  // An unknown coating may contain either partner.
  const unsure = onWireLead === null && (bismuth || lead)
  const meets = (bismuth && onWireLead === true) || (lead && coating === 'bismuth')
  if (meets) return { verdict: 'forbidden', mixtureMeltsC: bismuthLead.meltsC }
  return unsure ? { verdict: 'cannot tell', mixtureMeltsC: bismuthLead.meltsC } : { verdict: 'compatible', mixtureMeltsC: null }
}

/** Appearance of the strands. */
export type StrandSurface = 'bright' | 'light-tarnish' | 'oxidised' | 'green-salts'

const tarnish = {
  status: 'common practice',
  source: 'rosin flux removes a light tarnish, not black oxide or green salts: cut or scrape to bright metal first',
} as const satisfies Provenance
const oxide = {
  status: 'published',
  source: 'US Navy NEETS, module 4, answer 21: solder does not take on dirty, greasy or oxidised surfaces',
} as const satisfies Provenance

/** Whether rosin flux cleans strands of this appearance: a limit on what to try, not a promise that solder wets. */
export const strandSurfaces = /* @__PURE__ */ frozen({
  bright: { mayWet: true, provenance: oxide },
  'light-tarnish': { mayWet: true, provenance: tarnish },
  oxidised: { mayWet: false, provenance: oxide },
  'green-salts': { mayWet: false, provenance: tarnish },
} as const satisfies Readonly<Record<StrandSurface, { readonly mayWet: boolean; readonly provenance: Provenance }>>)

/** Working temperatures of rosin flux; it is inert below and chars above. */
export const rosinFluxWindow = /* @__PURE__ */ frozen({
  activeFromC: 110,
  bestC: { low: 150, high: 300 },
  charsAboveC: 350,
  provenance: { status: 'common practice', source: 'trade figures; that it is inert cold and active hot: US Army STP 11-25R13-SM-TG, A-7' },
} as const satisfies { readonly activeFromC: number; readonly bestC: Interval; readonly charsAboveC: number; readonly provenance: Provenance })

/**
 * Tells whether the strands of a wire, bright, dull or black, may wet with rosin flux; false means cut back to bright metal.
 *
 * @equation row of strandSurfaces
 * @symbol surface - surface - 1 - how the strands look
 * @symbol result - result - 1 - false where rosin flux does not clear it
 * @throws DomainError for a surface that is not listed
 * @example
 * strandsMayWet('oxidised') // false
 * @source US Navy NEETS, module 4; trade practice on rosin flux
 */
export function strandsMayWet(surface: StrandSurface): boolean {
  return strandSurfaces[requireChoice<StrandSurface>('surface', surface, Object.keys(strandSurfaces) as StrandSurface[])].mayWet
}
