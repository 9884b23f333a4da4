function freeze(value: unknown): void {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return
  Object.freeze(value)
  for (const inner of Object.values(value)) freeze(inner)
}

/** The same value, frozen through and through: a shipped record is the same for every caller. */
export function frozen<const T>(value: T): T {
  freeze(value)
  return value
}
