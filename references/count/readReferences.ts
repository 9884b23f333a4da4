import { readdirSync } from 'node:fs'
import { createRequire, registerHooks } from 'node:module'
import { fileURLToPath } from 'node:url'
import type { Reference } from '../compare.ts'

const root = new URL('../../', import.meta.url)
const folder = new URL('references/', root).href
const packages = new URL('packages/', root).href
const recorder = new URL('./recorder.ts', import.meta.url).href
const mark = '?recorded'

/** Source of a wrapper module: a package's or room's index with every function recording its calls. */
function recordingModule(url: string): string {
  const names = Object.keys(createRequire(import.meta.url)(fileURLToPath(url)) as object)
  const lines = names.map((name) => `export const ${name} = recorded('${name}', real.${name})`)
  return [`import * as real from '${url}'`, `import { recorded } from '${recorder}'`, ...lines].join('\n')
}

/** Path of a package's or room's sources; null for another module. */
function sourcesOf(specifier: string): string | null {
  const [, name, room] = /^@strandwise\/(\w+)(?:\/(\w+))?$/.exec(specifier) ?? []
  return name === undefined ? null : `${packages}${name}/src/${room === undefined ? '' : `${room}/`}index.ts`
}

/** Redirects the references' imports of the packages to the recorder; imports between packages stay as they are. */
function recordCalls(): { deregister(): void } {
  return registerHooks({
    resolve(specifier, context, next) {
      const found = next(sourcesOf(specifier) ?? specifier, context)
      const isFigures = context.parentURL?.startsWith(folder) === true && !context.parentURL.startsWith(`${folder}count/`)
      return isFigures && found.url.startsWith(packages) ? { ...found, url: `${found.url}${mark}`, shortCircuit: true } : found
    },
    load(url, context, next) {
      if (!url.endsWith(mark)) return next(url, context)
      return { format: 'module', source: recordingModule(url.slice(0, -mark.length)), shortCircuit: true }
    },
  })
}

/** Every source with its file, with the packages' functions recording their calls. Node only: it hooks module loading. */
export async function readReferences(): Promise<readonly { readonly file: string; readonly reference: Reference }[]> {
  const files = readdirSync(new URL(folder))
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts') && name !== 'compare.ts')
    .sort()
  const hooks = recordCalls()
  try {
    const modules = await Promise.all(
      files.map(async (file) => ({
        file,
        module: (await import(/* @vite-ignore */ `${folder}${file}`)) as { readonly reference?: Reference | readonly Reference[] },
      })),
    )
    return modules.flatMap(({ file, module }) => [module.reference ?? []].flat().map((reference) => ({ file, reference })))
  } finally {
    hooks.deregister()
  }
}
