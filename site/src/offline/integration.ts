import { createHash } from 'node:crypto'
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import { getManifest, type ManifestEntry } from 'workbox-build'

/** Files kept offline: pages and their parts, with charts and formulas, but no source maps. */
const kept = ['**/*.{html,css,js,json,csv,svg,png,woff2,webmanifest}']
const worker = 'offline-worker.js'
/** Above the size of any file; the build reports a larger one. */
const largestBytes = 3_000_000
/** Placeholder in every page until the finished build gets its mark. */
const placeholder = 'build-mark'

async function list(folder: string): Promise<readonly ManifestEntry[]> {
  const { manifestEntries, warnings } = await getManifest({
    globDirectory: folder,
    globPatterns: kept,
    globIgnores: [worker],
    maximumFileSizeToCacheInBytes: largestBytes,
    // Hashed names need no revision.
    dontCacheBustURLsMatching: /^_astro\//,
  })
  if (warnings.length > 0) throw new Error(warnings.join('\n'))
  return manifestEntries
}

/** Marks each page with its build, so that an open page can detect a newer one. */
async function markPages(folder: string): Promise<string> {
  const before = await list(folder)
  const build = createHash('sha256').update(JSON.stringify(before)).digest('hex').slice(0, 12)
  for (const { url } of before.filter((entry) => entry.url.endsWith('.html'))) {
    const path = join(folder, url)
    await writeFile(path, (await readFile(path, 'utf8')).replace(`data-build="${placeholder}"`, `data-build="${build}"`))
  }
  return build
}

/** Writes the offline worker for the files actually built. */
export function offlineIntegration(): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const folder = fileURLToPath(dir)
        const build = await markPages(folder)
        const source = await readFile(new URL('worker.js', import.meta.url), 'utf8')
        const constants = `const kept = ${JSON.stringify(await list(folder))}\nconst build = ${JSON.stringify(build)}\n`
        await writeFile(join(folder, worker), constants + source)
      },
    },
  }
}
