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
/** Categories that must score 100 in the mobile profile. */
const categories = ['performance', 'accessibility', 'best-practices', 'seo'] as const
/** Runs per page; the median counts, as speed varies on a shared machine. */
const runs = 3

interface Report {
  readonly categories: Readonly<
    Record<string, { readonly score: number | null; readonly auditRefs: readonly { readonly id: string; readonly weight: number }[] }>
  >
  readonly audits: Readonly<Record<string, { readonly score: number | null; readonly title: string; readonly displayValue?: string }>>
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
      `--only-categories=${categories.join(',')}`,
    ],
    {
      env: { ...process.env, CHROME_PATH: chromium },
    },
  )
  return JSON.parse(readFileSync(output, 'utf8')) as Report
}

type Category = (typeof categories)[number]

const scoreOf = (report: Report, category: Category): number => report.categories[category]?.score ?? 0

/** The median run by one category's score. */
function median(reports: readonly Report[], category: Category): Report {
  const sorted = [...reports].sort((a, b) => scoreOf(a, category) - scoreOf(b, category))
  return sorted[Math.floor(sorted.length / 2)] as Report
}

/** Audits below full score in the median run. */
function shortfalls(reports: readonly Report[]): readonly string[] {
  return categories.flatMap((name) => {
    const report = median(reports, name)
    if (scoreOf(report, name) >= 1) return []
    const lost = report.categories[name]?.auditRefs.filter(({ id, weight }) => weight > 0 && (report.audits[id]?.score ?? 1) < 0.9) ?? []
    return [
      `${name} ${scoreOf(report, name)}: ${lost.map(({ id }) => `${report.audits[id]?.title} ${report.audits[id]?.displayValue ?? ''}`.trim()).join('; ')}`,
    ]
  })
}

/** Runs Lighthouse on every page of the built site. */
export async function audits(say: (text: string) => void): Promise<PartResult> {
  if (!existsSync(site)) return { ok: false, summary: 'no built site', details: 'Run `npm run build` first.' }
  const chromium = await ensureChromium()
  const folder = mkdtempSync(join(tmpdir(), 'strandwise-lighthouse-'))
  const { address, close } = await serve(site, 0)
  const rows: string[] = []
  const short: string[] = []
  try {
    for (const page of pagesIn(site)) {
      const reports: Report[] = []
      for (let n = 1; n <= runs; n += 1) {
        say(`/${page}, run ${n} of ${runs}`)
        reports.push(await audit(`${address}${page === '' ? '' : `${page}/`}`, chromium, folder))
      }
      rows.push(`| /${page} | ${categories.map((name) => Math.round(100 * scoreOf(median(reports, name), name))).join(' | ')} |`)
      short.push(...shortfalls(reports).map((line) => `- /${page}: ${line}`))
    }
  } finally {
    await close()
    rmSync(folder, { recursive: true, force: true })
  }
  const head = `Mobile profile, median of ${runs} runs.\n\n| page | ${categories.join(' | ')} |\n| --- |${' --- |'.repeat(categories.length)}`
  return { ok: short.length === 0, summary: `${rows.length} pages, ${short.length} below 100`, details: `${head}\n${rows.join('\n')}\n\n${short.join('\n')}` }
}
