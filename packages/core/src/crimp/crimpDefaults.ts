import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Defaults of the crimp formulas. */
export const crimpDefaults = /* @__PURE__ */ frozen({
  /** Area of the crimped section over width times height; 1 is a full rectangle and gives the smallest crimp height. */
  shapeFactor: 1,
  provenance: { status: 'derived', source: 'geometry: no section is larger than its width times its height' },
} as const satisfies { readonly shapeFactor: number; readonly provenance: Provenance })
