function freeze(value: unknown): void {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return
  Object.freeze(value)
  for (const inner of Object.values(value)) freeze(inner)
}

/** Freezes a value deeply: callers cannot change a shipped record. */
export function frozen<const T>(value: T): T {
  freeze(value)
  return value
}
