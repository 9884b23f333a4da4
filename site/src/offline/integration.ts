import { createHash } from 'node:crypto'
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import { getManifest, type ManifestEntry } from 'workbox-build'

/** Pages and their parts, not source maps; a chart's and a formula's reader too, so that all of it works without a network. */
const kept = ['**/*.{html,css,js,json,csv,svg,png,woff2,webmanifest}']
const worker = 'offline-worker.js'
/** Nothing that a page needs is larger; what is gets noticed by the build. */
const largestBytes = 3_000_000
/** Stands in every page until the build is whole and has a mark of its own. */
const placeholder = 'build-mark'

async function list(folder: string): Promise<readonly ManifestEntry[]> {
  const { manifestEntries, warnings } = await getManifest({
    globDirectory: folder,
    globPatterns: kept,
    globIgnores: [worker],
    maximumFileSizeToCacheInBytes: largestBytes,
    // A name that carries a hash needs no revision.
    dontCacheBustURLsMatching: /^_astro\//,
  })
  if (warnings.length > 0) throw new Error(warnings.join('\n'))
  return manifestEntries
}

/** Marks each page with the build that it belongs to: a page that is still open can tell that there is a newer one. */
async function markPages(folder: string): Promise<string> {
  const before = await list(folder)
  const build = createHash('sha256').update(JSON.stringify(before)).digest('hex').slice(0, 12)
  for (const { url } of before.filter((entry) => entry.url.endsWith('.html'))) {
    const path = join(folder, url)
    await writeFile(path, (await readFile(path, 'utf8')).replace(`data-build="${placeholder}"`, `data-build="${build}"`))
  }
  return build
}

/** Writes the worker that keeps the site for use without a network, from what was really built. */
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
