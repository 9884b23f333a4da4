import { frozen } from '../errors/inner.ts'
import type { MetalName, Provenance } from '../materials/index.ts'

const handbook: Provenance = {
  status: 'published',
  source: 'Anodic index table of dissimilar metals, as design handbooks carry it (one page read)',
}
const recalled: Provenance = { status: 'from memory', source: 'Anodic index table of dissimilar metals: row recalled, not read' }

/** Potential of a metal below gold on the anodic index, in hundredths of a volt (whole numbers, so that differences are exact). */
export interface AnodicIndexRow {
  readonly hundredthsV: number
  readonly provenance: Provenance
}

/**
 * The anodic index of metals that touch at a joint; of a plated part the plating counts. Copper-clad aluminium is absent: its cut end shows two metals.
 *
 * @source Anodic index table of dissimilar metals; the rows of steel and aluminium are from memory, brass of 37 % zinc counted as high brass
 */
export const anodicIndex: Readonly<Partial<Record<MetalName, AnodicIndexRow>>> = /* @__PURE__ */ frozen({
  silver: { hundredthsV: 15, provenance: handbook },
  nickel: { hundredthsV: 30, provenance: handbook },
  'annealed-copper': { hundredthsV: 35, provenance: handbook },
  'hard-drawn-copper': { hundredthsV: 35, provenance: handbook },
  'brass-cuzn30': { hundredthsV: 40, provenance: handbook },
  'phosphor-bronze-cusn5': { hundredthsV: 40, provenance: handbook },
  'brass-cuzn37': { hundredthsV: 45, provenance: handbook },
  'tinned-copper': { hundredthsV: 60, provenance: handbook },
  tin: { hundredthsV: 60, provenance: handbook },
  'low-carbon-steel': { hundredthsV: 85, provenance: recalled },
  'aluminium-1350': { hundredthsV: 90, provenance: recalled },
})
