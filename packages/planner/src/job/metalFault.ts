import { type MetalName, ruleFigure, wireAndProtectionRules } from '@strandwise/core'

const thinAluminium = wireAndProtectionRules.find(({ id }) => id === 'me-al-size')

/** Least area of an aluminium wire that the rule takes. */
function leastAluminiumMm2(): number {
  if (thinAluminium === undefined) throw new Error('"me-al-size" is not among core\'s rules')
  return ruleFigure(thinAluminium, 'minMm2')
}

/** What is wrong with the metal itself, whatever it carries; null if nothing. */
export function metalFault(
  material: MetalName,
  areaMm2: number,
): { readonly code: 'cca' } | { readonly code: 'small-aluminium'; readonly leastMm2: number } | null {
  if (material === 'copper-clad-aluminium') return { code: 'cca' }
  if (material !== 'aluminium-1350') return null
  const leastMm2 = leastAluminiumMm2()
  return areaMm2 < leastMm2 ? { code: 'small-aluminium', leastMm2 } : null
}
