import { DomainError, requireFiniteResult, requireNotNegative } from '../errors/index.ts'
import type { Provenance } from '../materials/index.ts'

/** One factor of a derating chain, with its source. */
export interface DeratingLink {
  readonly name: string
  readonly factor: number
  readonly source: Provenance
}

/**
 * Gives the current left after a chain of derating factors, and the current after each link.
 *
 * @equation I = I_b f1 f2 ...
 * @symbol I_b - baseA - A - current of the table
 * @symbol f - links - 1 - factors in order, each with its name and source
 * @symbol I - result - A - current left, at the end and after each link
 * @domain baseA: at least 0
 * @domain links.0.factor: at least 0
 * @throws DomainError outside the domain, and for a factor below 0
 * @example
 * deratedCurrentA({
 *   baseA: 47,
 *   links: [
 *     { name: 'altitude', factor: 0.91, source: { status: 'published', source: 'FAA AC 43.13-1B' } },
 *     { name: 'bundle', factor: 0.6, source: { status: 'published', source: 'FAA AC 43.13-1B' } },
 *   ],
 * }) // { currentA: 25.66 }
 * @source product of independent factors, as the wiring codes and FAA AC 43.13-1B chapter 11 chain them
 */
export function deratedCurrentA(i: { readonly baseA: number; readonly links: readonly DeratingLink[] }): {
  readonly currentA: number
  readonly links: readonly (DeratingLink & { readonly currentA: number })[]
} {
  let currentA = requireNotNegative('baseA', i.baseA)
  if (!Array.isArray(i.links)) throw new DomainError('links', i.links, 'a list of factors', undefined, i.links === undefined ? 'missing' : 'wrong-choice')
  const links = i.links.map((link: DeratingLink, index) => {
    const factor = requireNotNegative(`links.${index}.factor`, link?.factor)
    currentA = requireFiniteResult(`links.${index}.factor`, factor, currentA * factor)
    return { name: link.name, factor, currentA, source: link.source }
  })
  return { currentA, links }
}
