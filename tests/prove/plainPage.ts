import { existsSync, readdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { ensureChromium } from '../run/chromium.mjs'
import { serve } from '../run/serve.mjs'
import { packages, pageProgram } from './consumerProject.ts'

/** Where a page without a bundler finds each name: an import map has no pattern for the rooms, so that each has its line. */
function importsOf(folder: string): Readonly<Record<string, string>> {
  const rooms = packages.flatMap((name) => {
    const dist = `node_modules/@strandwise/${name}/dist`
    const open = readdirSync(join(folder, dist)).filter((room) => existsSync(join(folder, dist, room, 'index.js')))
    return [[`@strandwise/${name}`, `/${dist}/index.js`], ...open.map((room) => [`@strandwise/${name}/${room}`, `/${dist}/${room}/index.js`])]
  })
  return {
    ...Object.fromEntries(rooms),
    '#csv-parse': '/node_modules/csv-parse/dist/esm/sync.js',
    'fastest-levenshtein': '/node_modules/fastest-levenshtein/esm/mod.js',
    'zod/mini': '/node_modules/zod/mini/index.js',
  }
}

/** Opens pages of a folder in a browser; the title that its script sets. */
export async function titleOf(folder: string, script: { readonly file: string } | 'modules as they are'): Promise<string> {
  const body =
    script === 'modules as they are'
      ? `<script type="importmap">${JSON.stringify({ imports: importsOf(folder) })}</script><script type="module">${pageProgram}</script>`
      : `<script type="module" src="/${script.file}"></script>`
  writeFileSync(join(folder, 'index.html'), `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>-</title></head><body>${body}</body></html>`)
  const server = await serve(folder, 0)
  const browser = await chromium.launch({ executablePath: await ensureChromium(), args: ['--no-sandbox', '--disable-gpu'] })
  try {
    const page = await browser.newPage()
    const faults: string[] = []
    page.on('pageerror', (error) => faults.push(error.message))
    page.on('console', (message) => faults.push(message.text()))
    await page.goto(server.address, { waitUntil: 'load' })
    await page.waitForFunction(() => document.title !== '-', undefined, { timeout: 20_000 }).catch(() => faults.push('no title in 20 s'))
    const shown = faults.filter((fault) => !fault.includes('favicon') && !fault.includes('404'))
    if (shown.length > 0) throw new Error(shown.join('\n'))
    return await page.title()
  } finally {
    await browser.close()
    await server.close()
  }
}
