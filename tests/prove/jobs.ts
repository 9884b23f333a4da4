import { planOrRefuse } from '../random/planOrRefuse.ts'
import { spoiltJobs } from '../random/spoiltJobs.ts'
import type { PartResult } from './results.ts'

const atOnce = 1000

/** Random jobs over the whole schema, each planned or refused. */
export function jobs(count: number, seed: number, say: (text: string) => void): PartResult {
  let [planned, refused] = [0, 0]
  for (let done = 0; done < count; done += atOnce) {
    const found = planOrRefuse(Math.min(atOnce, count - done), seed + done)
    planned += found.planned
    refused += found.refused
    say(`${planned + refused} jobs`)
  }
  return { ok: true, summary: `${count} random jobs: ${planned} planned, ${refused} refused by field, no other error`, details: '' }
}

/** Demo jobs spoilt in a few places, each planned with finite numbers or refused by field. */
export function spoilt(count: number, seed: number, say: (text: string) => void): PartResult {
  let [planned, refused] = [0, 0]
  const wrong: string[] = []
  for (let done = 0; done < count; done += atOnce) {
    const found = spoiltJobs(Math.min(atOnce, count - done), seed + done)
    planned += found.planned
    refused += found.refused
    wrong.push(...found.wrong)
    say(`${planned + refused} spoilt jobs`)
  }
  return {
    ok: wrong.length === 0,
    summary: `${count} spoilt jobs: ${planned} planned, ${refused} refused by field, ${wrong.length} with another answer`,
    details: wrong
      .slice(0, 20)
      .map((one) => `- ${one}`)
      .join('\n'),
  }
}
