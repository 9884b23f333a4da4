import { defineConfig } from 'vitest/config'
import { packageAlias, root } from './vitest.config.ts'

/** The tests that judge the mutants of one room: its own, and the generated ones of its docstrings. */
export default defineConfig({
  root,
  resolve: { alias: packageAlias },
  test: {
    environment: 'node',
    setupFiles: ['tests/propertySeed.ts'],
    testTimeout: 60_000,
    include: [`${process.env.STRANDWISE_ROOM ?? 'packages'}/**/*.test.ts`, 'tests/docs/domains.test.ts', 'tests/docs/examples.test.ts'],
  },
})
