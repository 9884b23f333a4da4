import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'
import { packageAlias, root } from './vitest.config.ts'

/** The one file that is mutated, where a room goes file by file. */
const mutated = process.env.STRANDWISE_FILE
const quick = process.env.STRANDWISE_QUICK !== undefined
const docs = ['tests/docs/domains.test.ts', 'tests/docs/examples.test.ts']
/** Searches that a changed inner step would hold up for minutes, and a hundred thousand texts: they judge a file of their own name alone. */
const slowest = ['packBundle', 'randomTexts']
/** Whole runs against other methods, and searches of many starts: a file that has tests of its own meets them last. */
const slow = ['heatJoint.ladder', 'heatJoint.golden', 'heatJointAdvice', 'heatJointBand', 'heatSolderSleeve', 'jointVolumes', ...slowest]

/** heatingStep.wires.test.ts is of heatingStep.ts too. */
const nameOf = (path: string): string => basename(path).replace(/\..*$/, '')

/** The docstrings of the room are those of its formulas; what lies beneath them has tests by itself. */
function leftOut(file: string): readonly string[] {
  const isFormula = readFileSync(root + file, 'utf8').includes('@domain')
  const ownName = nameOf(file)
  const aim = ownName.startsWith('advice') ? 'heatJointAdvice' : ownName
  return [...(isFormula ? [] : docs), ...testsOf(slow, aim)]
}

/** The tests of these names but one. */
function testsOf(names: readonly string[], butOf: string): readonly string[] {
  return names.filter((name) => name !== butOf).map((name) => `**/${name}.test.ts`)
}

/** The mutated file's own test first, then the quickest of the last run: most mutants die at once, and a dead one meets no further test. */
class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const isOwn = ({ moduleId }: TestSpecification): boolean => mutated !== undefined && nameOf(moduleId) === nameOf(mutated)
    const timeOf = (file: TestSpecification): number => (isOwn(file) ? -1 : (this.ctx.cache.getTestSpecificationResult(file)?.duration ?? 0))
    return files
      .map((file) => ({ file, time: timeOf(file) }))
      .sort((a, b) => a.time - b.time)
      .map(({ file }) => file)
  }
}

/** The tests that judge the mutants of one room: its own, and the generated ones of its docstrings. */
export default defineConfig({
  root,
  resolve: { alias: packageAlias },
  test: {
    environment: 'node',
    setupFiles: ['tests/propertySeed.ts', 'tests/prove/mutationSetup.ts'],
    testTimeout: 60_000,
    sequence: { sequencer: QuickFirst },
    include: [`${process.env.STRANDWISE_ROOM ?? 'packages'}/**/*.test.ts`, ...docs],
    exclude: [...(mutated !== undefined && quick ? leftOut(mutated) : testsOf(slowest, nameOf(mutated ?? '')))],
  },
})
