import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** What a pressed contact is taken to be where the caller says nothing. */
export const contactDefaults = /* @__PURE__ */ frozen({
  /** One spot: the unfavourable end, since the same area in several spots resists less. */
  spots: 1,
  /** Touching area over force over hardness: 1 (hardness bears the whole load) is usual in engineering; part of the area bears less than hardness, so up to 5 occurs. */
  realAreaFactor: 1,
  /** No tarnish on the touching area, in ohm m2. */
  filmOhmM2: 0,
  provenance: { status: 'from memory', source: 'contact theory after Holm: hardness bears the load, clean metal touches' },
} as const satisfies { readonly spots: number; readonly realAreaFactor: number; readonly filmOhmM2: number; readonly provenance: Provenance })
