import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Defaults of a reading: test leads are not subtracted, so a resistance errs high. */
export const readingDefaults = /* @__PURE__ */ frozen({
  leadOhm: 0,
  leadUncertaintyOhm: 0,
  provenance: { status: 'common practice', source: 'a reading whose leads were not nulled is taken as it stands' },
} as const satisfies { readonly leadOhm: number; readonly leadUncertaintyOhm: number; readonly provenance: Provenance })
