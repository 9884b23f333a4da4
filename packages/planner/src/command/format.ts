import { Unusable } from './unusable.ts'

/** How a command prints, by the name given with --format; the first where none is given. */
export function formatOf<T>(formats: Readonly<Record<string, T>>, name: string | undefined): T {
  const [usual] = Object.keys(formats)
  const wanted = name ?? usual ?? ''
  const found = Object.hasOwn(formats, wanted) ? formats[wanted] : undefined
  if (found === undefined) throw new Unusable(`--format: is "${wanted.slice(0, 60)}"; allowed: ${Object.keys(formats).join(', ')}`)
  return found
}
