import { DomainError } from '../errors/index.ts'

/** A list of at least so many entries; what they hold is checked one by one. */
export function requireList(parameter: string, list: readonly unknown[], least: number, allowed: string): void {
  if (!Array.isArray(list)) throw new DomainError(parameter, list, allowed, undefined, list === undefined ? 'missing' : 'wrong-choice')
  if (list.length < least) throw new DomainError(parameter, list, allowed, undefined, 'out-of-range')
}
