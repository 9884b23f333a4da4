const wide = 64

/** A value as source code: bare keys, single quotes, broken into lines if long. */
export function literal(value: unknown, indent = ''): string {
  if (typeof value === 'string') return `'${value}'`
  if (typeof value !== 'object' || value === null) return String(value)
  const list = Array.isArray(value)
  const [open, close] = list ? ['[', ']'] : ['{ ', ' }']
  const parts = list ? value.map((item) => [item] as const) : Object.entries(value).map(([key, item]) => [item, key] as const)
  const print = (deeper: string): readonly string[] => parts.map(([item, key]) => `${key === undefined ? '' : `${key}: `}${literal(item, deeper)}`)
  const short = `${open}${print(indent).join(', ')}${close}`
  if (short.length + indent.length <= wide && !short.includes('\n')) return short
  const deeper = `${indent}  `
  return `${open.trim()}\n${print(deeper)
    .map((part) => `${deeper}${part},\n`)
    .join('')}${indent}${close.trim()}`
}
