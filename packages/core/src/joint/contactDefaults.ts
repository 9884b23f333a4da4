import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Defaults of a pressed contact. */
export const contactDefaults = /* @__PURE__ */ frozen({
  /** A single spot is the unfavourable end: the same area in several spots has less resistance. */
  spots: 1,
  /** Real contact area over force/hardness: 1 is usual in engineering (plastic contact over the whole area); partly elastic contact reaches up to 5. */
  realAreaFactor: 1,
  /** No tarnish on the contact area, in ohm m2. */
  filmOhmM2: 0,
  provenance: { status: 'from memory', source: 'contact theory after Holm: hardness bears the load, clean metal touches' },
} as const satisfies { readonly spots: number; readonly realAreaFactor: number; readonly filmOhmM2: number; readonly provenance: Provenance })
