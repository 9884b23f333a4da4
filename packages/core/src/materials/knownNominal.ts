import { requireFinite, UnknownEntryError } from '../errors/index.ts'

/**
 * The nominal value of a property that a model needs; an unknown one is refused, never guessed.
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
