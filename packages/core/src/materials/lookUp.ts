import { requireFinite, UnknownEntryError } from '../errors/index.ts'
import { insulations } from './insulations.ts'
import { metals } from './metals.ts'
import type { InsulationName, MetalName, SleeveMaterialName, SolderName } from './names.ts'
import type { Insulation, Metal, SleeveMaterial, Solder } from './properties.ts'
import { sleeveMaterials } from './sleeveMaterials.ts'
import { solders } from './solders.ts'

/** The name is compared as well, so that nothing of an object's own (toString) passes for an entry: several times faster than asking hasOwn. */
function entry<T extends { readonly name: string }>(parameter: string, table: Readonly<Record<string, T>>, name: string): T {
  const found = table[name]
  if (typeof found !== 'object' || found.name !== name) throw new UnknownEntryError(parameter, name, Object.keys(table))
  return found
}

/**
 * The properties of a conductor or terminal metal, each with low, nominal, high and provenance.
 *
 * @equation row of metals
 * @symbol metal - result - 1 - resistivity, temperature coefficient, density, specific heat, conductivity, strength, melting point
 * @throws UnknownEntryError for a name that the table does not hold, with the known names
 * @example
 * metal('annealed-copper') // { name: 'annealed-copper', temperatureCoefficient20PerK: { nominal: 0.00393 } }
 * @source each property names its own
 */
export function metal(name: MetalName): Metal {
  // Every closed form with a metal in it begins here: a switch is twice as quick as a look-up by key, and costs nothing for a name that stands in the code.
  switch (name) {
    case 'annealed-copper':
      return metals['annealed-copper']
    case 'hard-drawn-copper':
      return metals['hard-drawn-copper']
    case 'tinned-copper':
      return metals['tinned-copper']
    case 'copper-clad-aluminium':
      return metals['copper-clad-aluminium']
    case 'aluminium-1350':
      return metals['aluminium-1350']
    case 'tin':
      return metals.tin
    case 'brass-cuzn30':
      return metals['brass-cuzn30']
    case 'brass-cuzn37':
      return metals['brass-cuzn37']
    case 'phosphor-bronze-cusn5':
      return metals['phosphor-bronze-cusn5']
    case 'low-carbon-steel':
      return metals['low-carbon-steel']
    case 'nickel':
      return metals.nickel
    case 'silver':
      return metals.silver
    default:
      throw new UnknownEntryError('metal', name, Object.keys(metals))
  }
}

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
  return entry<Solder>('solder', solders, name)
}

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
  return entry<SleeveMaterial>('sleeveMaterial', sleeveMaterials, name)
}

/**
 * The nominal value of a property that a model cannot do without; one that isn't known is refused, never guessed.
 *
 * @equation nominal of the property's row
 * @symbol nominal - result - 1 - in the unit of the property
 * @domain value.nominal: finite
 * @throws UnknownEntryError where the property is null
 * @throws DomainError where it is no finite number
 * @example
 * knownNominal({ name: 'PVC' }, 'conductivityWPerMK', { nominal: 0.17 }) // 0.17
 * @source the property's own
 */
export function knownNominal(owner: { readonly name: string }, property: string, value: { readonly nominal: number } | null): number {
  if (value === null) throw new UnknownEntryError(property, owner.name, [])
  return requireFinite('value.nominal', value.nominal)
}
