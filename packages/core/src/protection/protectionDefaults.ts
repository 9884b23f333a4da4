import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'
import { fuseBands } from '../tables/index.ts'

/** What the protection formulas take where the caller says nothing. */
export const protectionDefaults = /* @__PURE__ */ frozen({
  /** Share of a terminal's law that may be used; 1 is the law itself. */
  reserveFactor: 1,
  /** A fuse at its reference temperature carries its rating. */
  ambientFactor: 1,
  /** Share of a fuse's rating that a lasting load may use. */
  loadFraction: fuseBands['ISO 8820-3'].continuousLoadShare.nominal,
  /** Share of the rating lost per kelvin above the reference; makers' figures reach up to the high end in the table of fuse bands. */
  ambientLossPerK: fuseBands['ISO 8820-3'].ambientFactorPerK.low,
  /** A fault outruns the insulation: it stores nothing, which is the safe side. */
  insulationShare: 0,
  provenance: {
    status: 'common practice',
    source: 'three quarters of a fuse rating for a lasting load; the loss per kelvin is the recalled figure of blade fuses; the safe side elsewhere',
  },
} as const satisfies Readonly<Record<string, unknown>> & { readonly provenance: Provenance })
