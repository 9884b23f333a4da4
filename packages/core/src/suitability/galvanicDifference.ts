import { UnknownEntryError } from '../errors/index.ts'
import type { MetalName } from '../materials/index.ts'
import { anodicIndex } from './anodicIndex.ts'

/** The index is kept in hundredths of a volt. */
const hundredthsPerVolt = 100

function hundredthsV(parameter: string, metal: MetalName): number {
  const row = Object.hasOwn(anodicIndex, metal) ? anodicIndex[metal] : undefined
  if (row === undefined) throw new UnknownEntryError(parameter, metal, Object.keys(anodicIndex))
  return row.hundredthsV
}

/**
 * Difference of two touching metals on the anodic index: the larger, the faster the less noble one corrodes where it is wet.
 *
 * @equation dV = |V1 - V2|
 * @symbol V1 - metal1 - V - anodic index of the one metal, a plating before the metal below it
 * @symbol V2 - metal2 - V - anodic index of the other
 * @symbol dV - result - V - difference, without sign
 * @throws UnknownEntryError for a metal that the index does not hold
 * @example
 * galvanicDifferenceV('annealed-copper', 'tinned-copper') // 0.25
 * @source Anodic index table of dissimilar metals, as used with MIL-STD-889; steel and aluminium from memory
 */
export function galvanicDifferenceV(metal1: MetalName, metal2: MetalName): number {
  return Math.abs(hundredthsV('metal1', metal1) - hundredthsV('metal2', metal2)) / hundredthsPerVolt
}
