import { UnknownEntryError } from '../errors/index.ts'
import { insulations } from './insulations.ts'
import { metals } from './metals.ts'
import type { InsulationName, MetalName, SleeveMaterialName, SolderName } from './names.ts'
import type { Insulation, Metal, SleeveMaterial, Solder } from './properties.ts'
import type { MaterialValue } from './provenance.ts'
import { sleeveMaterials } from './sleeveMaterials.ts'
import { solders } from './solders.ts'

function entry<T>(parameter: string, table: Readonly<Record<string, T>>, name: string): T {
  const found = Object.hasOwn(table, name) ? table[name] : undefined
  if (found === undefined) throw new UnknownEntryError(parameter, name, Object.keys(table))
  return found
}

/** The properties of a conductor or terminal metal. @throws UnknownEntryError with the known names */
export function metal(name: MetalName): Metal {
  return entry<Metal>('metal', metals, name)
}

/** The properties of a solder alloy. @throws UnknownEntryError with the known names */
export function solder(name: SolderName): Solder {
  return entry<Solder>('solder', solders, name)
}

/** The properties of a wire insulation. @throws UnknownEntryError with the known names */
export function insulation(name: InsulationName): Insulation {
  return entry<Insulation>('insulation', insulations, name)
}

/** The properties of a heat-shrink material. @throws UnknownEntryError with the known names */
export function sleeveMaterial(name: SleeveMaterialName): SleeveMaterial {
  return entry<SleeveMaterial>('sleeveMaterial', sleeveMaterials, name)
}

/** The nominal of a property that a model needs. @throws UnknownEntryError where it is not known: nothing is guessed */
export function knownNominal(owner: { readonly name: string }, property: string, value: MaterialValue | null): number {
  if (value === null) throw new UnknownEntryError(property, owner.name, [])
  return value.nominal
}
