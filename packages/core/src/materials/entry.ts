import { UnknownEntryError } from '../errors/index.ts'

/** The name is compared as well, so that nothing of an object's own (toString) passes for an entry: several times faster than asking hasOwn. */
export function entry<T extends { readonly name: string }>(parameter: string, table: Readonly<Record<string, T>>, name: string): T {
  const found = table[name]
  if (typeof found !== 'object' || found.name !== name) throw new UnknownEntryError(parameter, name, Object.keys(table))
  return found
}
