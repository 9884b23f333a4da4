import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** What a reading is taken to be where nothing is said of its test leads: they are not subtracted, so a resistance comes out too high, never too low. */
export const readingDefaults = /* @__PURE__ */ frozen({
  leadOhm: 0,
  leadUncertaintyOhm: 0,
  provenance: { status: 'common practice', source: 'a reading whose leads were not nulled is taken as it stands' },
} as const satisfies { readonly leadOhm: number; readonly leadUncertaintyOhm: number; readonly provenance: Provenance })
