import { entry } from './entry.ts'
import { insulations } from './insulations.ts'
import type { InsulationName } from './names.ts'
import type { Insulation } from './properties.ts'

/**
 * The properties of a wire insulation, each with low, nominal, high and provenance; null is not known.
 *
 * @equation row of insulations
 * @symbol insulation - result - 1 - continuous and short-exposure temperatures, conductivity, density, specific heat
 * @throws UnknownEntryError for a name that the table does not hold, with the known names
 * @example
 * insulation('PVC') // { name: 'PVC', continuousC: { low: 70, high: 105 } }
 * @source each property names its own
 */
export function insulation(name: InsulationName): Insulation {
  return entry<Insulation>('insulation', insulations, name)
}
