import { readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'
import { packageAlias, root } from './vitest.config.ts'

/** The only file mutated, in a room that goes file by file. */
const mutated = process.env.STRANDWISE_FILE
const quick = process.env.STRANDWISE_QUICK !== undefined
const docs = ['tests/docs/domains.test.ts', 'tests/docs/examples.test.ts']
/** Searches that a mutant could delay by minutes, and a hundred thousand texts: run only for a mutated file of the same name. */
const slowest = ['packBundle', 'randomTexts']
/** Whole runs against other methods, and long searches: run last for a file with tests of its own. */
const slow = ['heatJoint.ladder', 'heatJoint.golden', 'heatJointAdvice', 'heatJointBand', 'heatSolderSleeve', 'jointVolumes', ...slowest]

/** Base name, so that heatingStep.wires.test.ts also belongs to heatingStep.ts. */
const nameOf = (path: string): string => basename(path).replace(/\..*$/, '')

/** Docstring tests excluded for a file: those of formulas only judge formulas. */
function leftOut(file: string): readonly string[] {
  const isFormula = readFileSync(root + file, 'utf8').includes('@domain')
  const ownName = nameOf(file)
  const aim = ownName.startsWith('advice') ? 'heatJointAdvice' : ownName
  return [...(isFormula ? [] : docs), ...testsOf(slow, aim)]
}

/** The tests of these names except one. */
function testsOf(names: readonly string[], butOf: string): readonly string[] {
  return names.filter((name) => name !== butOf).map((name) => `**/${name}.test.ts`)
}

/** The mutated file's own test first, then the fastest of the last run: most mutants die at once, and a dead one meets no further test. */
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

/** Tests that judge the mutants of one room: its own, and those generated from its docstrings. */
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
