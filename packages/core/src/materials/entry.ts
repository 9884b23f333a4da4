import { UnknownEntryError } from '../errors/index.ts'

/** Looks up an entry by key. Comparing the name as well excludes inherited properties (toString), several times faster than hasOwn. */
export function entry<T extends { readonly name: string }>(parameter: string, table: Readonly<Record<string, T>>, name: string): T {
  const found = table[name]
  if (typeof found !== 'object' || found.name !== name) throw new UnknownEntryError(parameter, name, Object.keys(table))
  return found
}
