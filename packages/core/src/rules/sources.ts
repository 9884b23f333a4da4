import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Source of rules that are common workshop practice without a published text. */
export const tradePractice: Provenance = /* @__PURE__ */ frozen({ status: 'common practice', source: 'Trade practice' })
