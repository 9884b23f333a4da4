/** Flattens a result into numbers by path: "edgeC.1.0". */
export function figures(value: unknown, path = '', into: Map<string, number> = new Map()): Map<string, number> {
  if (typeof value === 'number') into.set(path, value)
  else if (typeof value === 'object' && value !== null)
    for (const [key, part] of Object.entries(value)) figures(part, path === '' ? key : `${path}.${key}`, into)
  return into
}
