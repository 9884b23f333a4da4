import { planOrRefuse } from '../random/planOrRefuse.ts'
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
