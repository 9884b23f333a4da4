import { DomainError } from '../errors/index.ts'

/** Requires a list of at least so many entries; the entries are checked elsewhere. */
export function requireList(parameter: string, list: readonly unknown[], least: number, allowed: string): void {
  if (!Array.isArray(list)) throw new DomainError(parameter, list, allowed, undefined, list === undefined ? 'missing' : 'wrong-choice')
  if (list.length < least) throw new DomainError(parameter, list, allowed, undefined, 'out-of-range')
}
