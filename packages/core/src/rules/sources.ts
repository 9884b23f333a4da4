import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** The source of a rule that no book prints and every workshop keeps. */
export const tradePractice: Provenance = /* @__PURE__ */ frozen({ status: 'common practice', source: 'Trade practice' })
