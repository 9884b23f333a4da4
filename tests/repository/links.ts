import { posix } from 'node:path'
import { topLevel } from './topLevel.ts'
import type { Finding, TreeFile } from './tree.ts'

/** A heading's anchor, as the usual renderers make it. */
export function anchorOf(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/[`*_]|\[|\]\([^)]*\)/g, '')
    .replace(/[^\p{L}\p{N}\s-]/gu, '')
    .trim()
    .replace(/\s/g, '-')
}

const withoutBlocks = (text: string): string => text.replace(/^```[\s\S]*?^```/gm, (block) => block.replace(/[^\n]/g, ''))
const anchorsIn = (text: string): ReadonlySet<string> =>
  new Set([...withoutBlocks(text).matchAll(/^#{1,6}\s+(.+)$/gm)].map((match) => anchorOf(match[1] as string)))

/** Relative links of the documents, anchors, and paths in code marks that do not exist. */
export function brokenLinks(files: readonly TreeFile[]): readonly Finding[] {
  const paths = new Set(files.map(({ path }) => path))
  const isThere = (path: string): boolean => paths.has(path) || [...paths].some((known) => known.startsWith(`${path.replace(/\/$/, '')}/`))
  const isOurs = new RegExp(`^(${topLevel.join('|').replaceAll('.', '\\.')})(/|$)`)
  return files
    .filter(({ path }) => /^[^/]+\.md$/.test(path))
    .flatMap(({ path, text }) =>
      withoutBlocks(text)
        .split('\n')
        .flatMap((line, index) => {
          const broken = (found: string) => ({ path, line: index + 1, found, instead: 'mend the path, or drop the link' })
          const links = [...line.matchAll(/\]\(([^)\s]+)\)/g)].map((match) => match[1] as string).filter((link) => !/^[a-z]+:/.test(link))
          const marks = [...line.matchAll(/`([\w./@-]+\/[\w./@-]*)`/g)]
            .map((match) => match[1] as string)
            .filter((mark) => isOurs.test(mark) && !/\/(dist|node_modules)(\/|$)/.test(mark))
          return [
            ...links.flatMap((link) => {
              const [target = '', anchor] = link.split('#')
              const file = target === '' ? path : posix.normalize(target)
              if (!isThere(file)) return [broken(`the link "${link}" leads nowhere`)]
              const document = files.find((other) => other.path === file)
              return anchor !== undefined && document !== undefined && !anchorsIn(document.text).has(anchor)
                ? [broken(`${file} has no heading "#${anchor}"`)]
                : []
            }),
            ...marks.filter((mark) => !isThere(mark)).map((mark) => broken(`\`${mark}\` is not in the tree`)),
          ]
        }),
    )
}
