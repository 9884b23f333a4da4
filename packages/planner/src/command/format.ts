import { Unusable } from './unusable.ts'

/** The output format named by --format; the first by default. */
export function formatOf<T>(formats: Readonly<Record<string, T>>, name: string | undefined): T {
  const [usual] = Object.keys(formats)
  const wanted = name ?? usual ?? ''
  const found = Object.hasOwn(formats, wanted) ? formats[wanted] : undefined
  if (found === undefined) throw new Unusable(`--format: is "${wanted.slice(0, 60)}"; allowed: ${Object.keys(formats).join(', ')}`)
  return found
}
