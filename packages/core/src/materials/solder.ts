import { entry } from './entry.ts'
import type { SolderName } from './names.ts'
import type { Solder } from './properties.ts'
import { solders } from './solders.ts'

/**
 * The properties of a solder alloy, each with low, nominal, high and provenance; null is not known.
 *
 * @equation row of solders
 * @symbol solder - result - 1 - solidus, liquidus, density, resistivity, conductivity, strengths, heats
 * @throws UnknownEntryError for a name that the table does not hold, with the known names
 * @example
 * solder('Sn63Pb37') // { name: 'Sn63Pb37', solidusC: { nominal: 183 } }
 * @source each property names its own
 */
export function solder(name: SolderName): Solder {
  return entry<Solder>('alloy', solders, name)
}
