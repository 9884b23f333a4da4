import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

export const root = fileURLToPath(new URL('..', import.meta.url))
/** Tests run on the sources: a package name resolves to its src folder, a room's to that room's index. */
export const packageAlias = ['core', 'working', 'planner'].flatMap((name) => [
  { find: new RegExp(`^@strandwise/${name}$`), replacement: `${root}packages/${name}/src/index.ts` },
  { find: new RegExp(`^@strandwise/${name}/(.+)$`), replacement: `${root}packages/${name}/src/$1/index.ts` },
])

export default defineConfig({
  root,
  resolve: { alias: packageAlias },
  test: {
    environment: 'node',
    projects: [
      { extends: true, test: { name: 'unit', include: ['packages/*/src/**/*.test.ts', 'tests/unit/**/*.test.ts'], setupFiles: ['tests/propertySeed.ts'] } },
      { extends: true, test: { name: 'references', include: ['references/**/*.test.ts'], testTimeout: 60_000 } },
      { extends: true, test: { name: 'repository', include: ['tests/repository/**/*.test.ts'], testTimeout: 60_000 } },
      {
        extends: true,
        test: {
          name: 'docs',
          include: ['tests/docs/**/*.test.ts'],
          globalSetup: ['tests/docs/setup.ts'],
          setupFiles: ['tests/propertySeed.ts'],
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      { extends: true, test: { name: 'sizes', include: ['tests/sizes/**/*.test.ts'], testTimeout: 60_000 } },
      { extends: true, test: { name: 'browser', include: ['tests/browser/**/*.test.ts'], testTimeout: 60_000, hookTimeout: 60_000, maxWorkers: 2 } },
    ],
  },
})
