import { gzipSync } from 'node:zlib'
import { rolldown } from 'rolldown'
import { root } from '../repository/tree.ts'

export interface Bundle {
  readonly gzipBytes: number
  readonly minifiedBytes: number
  readonly code: string
  /** Files that contributed, relative to the root. */
  readonly modules: readonly string[]
}

const entry = '\0entry'
const alias = Object.fromEntries(['core', 'working', 'planner'].map((name) => [`@strandwise/${name}`, `${root}packages/${name}/src`]))

/** Bundles this code as a user would ship it: tree-shaken, minified, compressed at level 9. Package imports resolve to sources; rooms of core may be excluded. */
export async function bundled(code: string, leftOut: readonly string[] = []): Promise<Bundle> {
  const build = await rolldown({
    input: entry,
    platform: 'browser',
    treeshake: true,
    logLevel: 'silent',
    external: leftOut.map((room) => new RegExp(`/${room}/index\\.ts$`)),
    resolve: { extensions: ['.ts', '.js'] },
    plugins: [
      {
        name: 'entry',
        resolveId(id) {
          if (id === entry) return entry
          const [, name = '', room] = /^(@strandwise\/\w+)(?:\/(\w+))?$/.exec(id) ?? []
          return alias[name] === undefined ? null : `${alias[name]}/${room === undefined ? '' : `${room}/`}index.ts`
        },
        load: (id) => (id === entry ? { code, moduleType: 'ts', moduleSideEffects: true } : null),
        transform: (_code, id) => (id.startsWith(`${root}packages/`) ? { moduleSideEffects: false } : null),
      },
    ],
  })
  try {
    const { output } = await build.generate({ format: 'esm', minify: true, codeSplitting: false })
    const [chunk] = output
    const modules = Object.entries(chunk.modules).filter(([, module]) => module.renderedLength > 0)
    return {
      gzipBytes: gzipSync(chunk.code, { level: 9 }).length,
      minifiedBytes: Buffer.byteLength(chunk.code),
      code: chunk.code,
      modules: modules.map(([id]) => id.replace(root, '')).filter((id) => id !== entry),
    }
  } finally {
    await build.close()
  }
}
