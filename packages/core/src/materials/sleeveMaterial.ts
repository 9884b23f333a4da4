import { entry } from './entry.ts'
import type { SleeveMaterialName } from './names.ts'
import type { SleeveMaterial } from './properties.ts'
import { sleeveMaterials } from './sleeveMaterials.ts'

/**
 * The properties of a heat-shrink material, each with low, nominal, high and provenance; null is not known.
 *
 * @equation row of sleeveMaterials
 * @symbol sleeveMaterial - result - 1 - recovery ratio and temperatures, continuous use, change in length
 * @throws UnknownEntryError for a name that the table does not hold, with the known names
 * @example
 * sleeveMaterial('polyolefin') // { name: 'polyolefin', recoveryRatio: { low: 2, high: 4 } }
 * @source each property names its own
 */
export function sleeveMaterial(name: SleeveMaterialName): SleeveMaterial {
  return entry<SleeveMaterial>('material', sleeveMaterials, name)
}
