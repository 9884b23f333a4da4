import { execFile } from 'node:child_process'
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, relative, sep } from 'node:path'
import { promisify } from 'node:util'
import { root } from '../repository/tree.ts'
import { ensureChromium } from '../run/chromium.mjs'
import { serve } from '../run/serve.mjs'
import type { PartResult } from './results.ts'

const run = promisify(execFile)
const site = `${root}site/dist`
const wanted: Readonly<Record<string, number>> = { performance: 0.95, accessibility: 1, 'best-practices': 1, seo: 0.9 }

interface Report {
  readonly categories: Readonly<
    Record<string, { readonly score: number | null; readonly auditRefs: readonly { readonly id: string; readonly weight: number }[] }>
  >
  readonly audits: Readonly<Record<string, { readonly score: number | null; readonly title: string }>>
}

function pagesIn(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name)
    if (entry.isDirectory()) return pagesIn(path)
    return entry.name === 'index.html' ? [relative(site, folder).split(sep).join('/')] : []
  })
}

async function audit(address: string, chromium: string, folder: string): Promise<Report> {
  const output = join(folder, 'report.json')
  const flags = '--headless=new --no-sandbox --disable-dev-shm-usage'
  await run(
    process.execPath,
    [
      `${root}node_modules/lighthouse/cli/index.js`,
      address,
      `--chrome-flags=${flags}`,
      '--output=json',
      `--output-path=${output}`,
      '--quiet',
      `--only-categories=${Object.keys(wanted).join(',')}`,
    ],
    {
      env: { ...process.env, CHROME_PATH: chromium },
    },
  )
  return JSON.parse(readFileSync(output, 'utf8')) as Report
}

function shortfalls({ categories, audits }: Report): readonly string[] {
  return Object.entries(wanted).flatMap(([name, least]) => {
    const category = categories[name]
    if (category === undefined || (category.score ?? 0) >= least) return []
    const lost = category.auditRefs.filter(({ id, weight }) => weight > 0 && (audits[id]?.score ?? 1) < 0.9).map(({ id }) => audits[id]?.title)
    return [`${name} ${category.score}, wanted ${least}: ${lost.join('; ')}`]
  })
}

/** Every page of the built site through Lighthouse. */
export async function audits(say: (text: string) => void): Promise<PartResult> {
  if (!existsSync(site)) return { ok: false, summary: 'no built site', details: 'Run `npm run build` first.' }
  const chromium = await ensureChromium()
  const folder = mkdtempSync(join(tmpdir(), 'strandwise-lighthouse-'))
  const { address, close } = await serve(site, 0)
  const rows: string[] = []
  const short: string[] = []
  try {
    for (const page of pagesIn(site)) {
      say(`/${page}`)
      const report = await audit(`${address}${page === '' ? '' : `${page}/`}`, chromium, folder)
      rows.push(
        `| /${page} | ${Object.keys(wanted)
          .map((name) => report.categories[name]?.score ?? 'none')
          .join(' | ')} |`,
      )
      short.push(...shortfalls(report).map((line) => `- /${page}: ${line}`))
    }
  } finally {
    await close()
    rmSync(folder, { recursive: true, force: true })
  }
  const head = `| page | ${Object.keys(wanted).join(' | ')} |\n| --- |${' --- |'.repeat(Object.keys(wanted).length)}`
  return { ok: short.length === 0, summary: `${rows.length} pages, ${short.length} shortfalls`, details: `${head}\n${rows.join('\n')}\n\n${short.join('\n')}` }
}
