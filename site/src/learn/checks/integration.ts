import type { AstroIntegration } from 'astro'
import { readReferences } from '../../../../references/count/readReferences.ts'

/** A printed figure of the references, with the library's value. */
export interface PublishedFigure {
  readonly source: string
  readonly edition?: string
  readonly clause: string
  readonly title: string
  readonly printed: string
  readonly unit: string
  readonly got: number
}

const doorName = 'virtual:published-figures'

/** Every figure with status published. */
async function publishedFigures(): Promise<readonly PublishedFigure[]> {
  const sources = await readReferences()
  return sources.flatMap(({ reference: { source, edition, clause, status, cases } }) =>
    cases
      .filter((item) => (item.status ?? status) === 'published')
      .map(({ title, printed, unit, got }) => ({ source, ...(edition === undefined ? {} : { edition }), clause, title, printed, unit, got: got() })),
  )
}

/** Runs the published figures in plain Node when the first lesson asks for one. */
export function publishedFiguresIntegration(): AstroIntegration {
  return {
    name: 'published-figures',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        let figures: Promise<readonly PublishedFigure[]> | undefined
        updateConfig({
          vite: {
            plugins: [
              {
                name: 'published-figures',
                resolveId: (id: string) => (id === doorName ? `\0${doorName}` : undefined),
                async load(id: string) {
                  if (id !== `\0${doorName}`) return undefined
                  figures ??= publishedFigures()
                  return `export const figures = ${JSON.stringify(await figures)}`
                },
              },
            ],
          },
        })
      },
    },
  }
}
