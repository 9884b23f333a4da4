import { appendFileSync, writeFileSync } from 'node:fs'
import { JobError, planRepair } from '@strandwise/planner'
import fc from 'fast-check'
import { test } from 'vitest'
import { anyJob } from '../../random/anyJob.ts'
test('x', { timeout: 600000 }, () => {
  const seed = Number(process.env.SEED ?? 1), n = Number(process.env.N ?? 1500)
  const seen = new Map<string, { count: number; job: unknown }>()
  let refused = 0, planned = 0
  const slow: [number, unknown][] = []
  const t0 = performance.now()
  for (const job of fc.sample(anyJob, { numRuns: n, seed })) {
    const t = performance.now(); writeFileSync('/tmp/current.json', JSON.stringify(job))
    try { planRepair(job as never); planned++ } catch (e) {
      if (e instanceof JobError) { refused++; continue }
      const key = `${(e as Error).name} ${(e as any).parameter ?? ''} ${String((e as Error).message).slice(0, 120)} @ ${String((e as Error).stack).split('\n').filter((l) => /packages\//.test(l)).slice(0, 6).map((l) => l.replace(/.*packages\//, '').replace(/\)$/, '')).join(' < ')}`.replace(/\d+\.\d+/g,'#')
      const s = seen.get(key); if (s) s.count++; else seen.set(key, { count: 1, job })
    }
    const d = performance.now() - t; slow.push([d, job]); if (d > 300) appendFileSync('/tmp/slow.log', d.toFixed(0) + ' ' + JSON.stringify(job) + '\n') 
  }
  slow.sort((a, b) => b[0] - a[0])
  writeFileSync('/tmp/rand.json', JSON.stringify({ planned, refused, ms: (performance.now() - t0), seen: [...seen], slow: slow.slice(0, 5) }, null, 1))
})
