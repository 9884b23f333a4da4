import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'
import { fuseBands } from '../tables/index.ts'

/** Defaults of the protection formulas. */
export const protectionDefaults = /* @__PURE__ */ frozen({
  /** Fraction of a terminal's current by the law that may be used; 1 is no reserve. */
  reserveFactor: 1,
  /** A fuse at its reference temperature carries its rating. */
  ambientFactor: 1,
  /** Fraction of a fuse's rating for a continuous load. */
  loadFraction: fuseBands['ISO 8820-3'].continuousLoadShare.nominal,
  /** Share of the rating lost per kelvin above the reference; makers' figures reach up to the high end in the table of fuse bands. */
  ambientLossPerK: fuseBands['ISO 8820-3'].ambientFactorPerK.low,
  /** The insulation stores no heat in a fault: the fault is too short, and this is the safe side. */
  insulationShare: 0,
  provenance: {
    status: 'common practice',
    source: 'three quarters of a fuse rating for a lasting load; the loss per kelvin is the recalled figure of blade fuses; the safe side elsewhere',
  },
} as const satisfies Readonly<Record<string, unknown>> & { readonly provenance: Provenance })
