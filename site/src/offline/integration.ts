import { fileURLToPath } from 'node:url'
import type { AstroIntegration } from 'astro'
import { generateSW } from 'workbox-build'

/** Pages and their parts, not source maps; a chart's and a formula's reader too, so that all of it works without a network. */
const kept = ['**/*.{html,css,js,svg,png,woff2,webmanifest}']
/** Nothing that a page needs is larger; what is gets noticed by the build. */
const largestBytes = 3_000_000

/** Writes the worker that keeps the site for use without a network, from what was really built. */
export function offlineIntegration(): AstroIntegration {
  return {
    name: 'offline',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const folder = fileURLToPath(dir)
        const { warnings } = await generateSW({
          globDirectory: folder,
          globPatterns: kept,
          globIgnores: ['offline-worker.js', 'workbox-*.js'],
          swDest: `${folder}offline-worker.js`,
          maximumFileSizeToCacheInBytes: largestBytes,
          directoryIndex: 'index.html',
          // A page is the same whatever follows the question mark.
          ignoreURLParametersMatching: [/./],
          runtimeCaching: [
            {
              // An address that was not kept: from the network, or the page that says that it is not there.
              urlPattern: ({ request }) => request.mode === 'navigate',
              handler: 'NetworkOnly',
              options: { precacheFallback: { fallbackURL: '404.html' } },
            },
          ],
          cleanupOutdatedCaches: true,
          // A new version waits until the person asks for it: work in progress is not swapped under their hands.
          skipWaiting: false,
          clientsClaim: true,
          inlineWorkboxRuntime: true,
          sourcemap: false,
          mode: 'production',
          babelPresetEnvTargets: ['chrome >= 111', 'firefox >= 115', 'safari >= 16.4'],
        })
        if (warnings.length > 0) throw new Error(warnings.join('\n'))
      },
    },
  }
}
