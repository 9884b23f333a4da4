import { readdirSync } from 'node:fs'
import { createRequire, registerHooks } from 'node:module'
import { fileURLToPath } from 'node:url'
import type { CheckStatus } from './facts.ts'

export interface Case {
  readonly title: string
  readonly printed: string
  readonly unit: string
  readonly got: () => number
  readonly allowed?: { readonly absolute?: number; readonly relative?: number }
  readonly status?: CheckStatus
  readonly looksUp?: boolean
}

export interface Source {
  readonly source: string
  readonly status: CheckStatus
  readonly cases: readonly Case[]
}

const root = new URL('../../../', import.meta.url)
const folder = new URL('references/', root).href
const packages = new URL('packages/', root).href
const recorder = new URL('./recorder.ts', import.meta.url).href
const mark = '?recorded'

/** The module behind a package's door, with each function noting its calls. */
function recordingModule(url: string): string {
  const names = Object.keys(createRequire(import.meta.url)(fileURLToPath(url)) as object)
  const lines = names.map((name) => `export const ${name} = recorded('${name}', real.${name})`)
  return [`import * as real from '${url}'`, `import { recorded } from '${recorder}'`, ...lines].join('\n')
}

/** The files of figures see the packages' sources through the recorder; nothing else does. */
function recordCalls(): { deregister(): void } {
  return registerHooks({
    resolve(specifier, context, next) {
      if (context.parentURL?.startsWith(folder) !== true) return next(specifier, context)
      const [, name, room] = /^@strandwise\/(\w+)(?:\/(\w+))?$/.exec(specifier) ?? []
      const found = next(name === undefined ? specifier : `${packages}${name}/src/${room === undefined ? '' : `${room}/`}index.ts`, context)
      return found.url.startsWith(packages) ? { ...found, url: `${found.url}${mark}`, shortCircuit: true } : found
    },
    load(url, context, next) {
      if (!url.endsWith(mark)) return next(url, context)
      return { format: 'module', source: recordingModule(url.slice(0, -mark.length)), shortCircuit: true }
    },
  })
}

/** Every source of figures. */
export async function readReferences(): Promise<readonly Source[]> {
  const files = readdirSync(new URL(folder))
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && name !== 'compare.ts')
    .sort()
  const hooks = recordCalls()
  try {
    const modules = await Promise.all(
      files.map((name) => import(/* @vite-ignore */ `${folder}${name}`) as Promise<{ readonly reference?: Source | readonly Source[] }>),
    )
    return modules.flatMap((module) => [module.reference ?? []].flat())
  } finally {
    hooks.deregister()
  }
}
