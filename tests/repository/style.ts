import ts from 'typescript'
import { exportsOf, isPackageSource, isTest, lineOf, parse, walk } from './source.ts'
import type { Finding, TreeFile } from './tree.ts'

/** Tools and pages that require a default export. */
const defaultAllowed = /(^|\/)(vitest|astro|stryker)[^/]*\.config\.(ts|mjs)$|^site\/src\/pages\//

const typescript = (files: readonly TreeFile[]): readonly TreeFile[] => files.filter(({ path }) => path.endsWith('.ts') || path.endsWith('.mjs'))

/** Libraries are silent: only the command writes, to the streams passed to it. */
export function consoles(files: readonly TreeFile[]): readonly Finding[] {
  return files
    .filter(({ path }) => isPackageSource(path))
    .flatMap((file) => {
      const source = parse(file)
      return walk(source)
        .filter((node) => ts.isIdentifier(node) && node.text === 'console' && !(ts.isPropertyAccessExpression(node.parent) && node.parent.name === node))
        .map((node) => ({
          path: file.path,
          line: lineOf(source, node),
          found: 'uses console',
          instead: 'return the text, or throw one of the errors; the command writes to process.stdout and process.stderr',
        }))
    })
}

/** Default exports are forbidden, so that a name is the same everywhere. */
export function defaultExports(files: readonly TreeFile[]): readonly Finding[] {
  return typescript(files)
    .filter(({ path }) => !defaultAllowed.test(path))
    .flatMap((file) =>
      exportsOf(file)
        .filter(({ name }) => name === 'default')
        .map(({ line }) => ({ path: file.path, line, found: 'a default export', instead: 'export it by its name' })),
    )
}

/** `any` disables type checking. */
export function anys(files: readonly TreeFile[]): readonly Finding[] {
  return typescript(files).flatMap((file) => {
    const source = parse(file)
    return walk(source)
      .filter((node) => node.kind === ts.SyntaxKind.AnyKeyword)
      .map((node) => ({ path: file.path, line: lineOf(source, node), found: '"any"', instead: 'name the type, or take "unknown" and narrow it' }))
  })
}

/** A room's index only re-exports. */
export function busyIndexes(files: readonly TreeFile[]): readonly Finding[] {
  return files
    .filter(({ path }) => isPackageSource(path) && /\/(index|inner)\.ts$/.test(path) && !isTest(path))
    .flatMap((file) => {
      const source = parse(file)
      return source.statements
        .filter((statement) => !ts.isExportDeclaration(statement))
        .map((statement) => ({
          path: file.path,
          line: lineOf(source, statement),
          found: 'an index that does something',
          instead: 'move it to a file of its own and re-export it here',
        }))
    })
}
