import * as planner from '@strandwise/planner'
import { parseQuantity } from '@strandwise/working'
import { measure, measureOnce } from './measure.ts'
import type { Figure } from './report.ts'

const quantities = [
  ['4.2 A', 'currentA'],
  ['25 mm', 'lengthMm'],
  ['1 1/8 in', 'lengthMm'],
  ['12 ft 6 in', 'lengthM'],
  ['1.5 mm²', 'areaMm2'],
  ['18 AWG', 'areaMm2'],
  ['65 °C', 'temperatureC'],
  ['3 %', 'ratio'],
] as const

/** Quantities, plans and audit rows per second. */
export async function planning(): Promise<readonly Figure[]> {
  const [quantity] = measure({
    quantity: (count) => {
      let sum = 0
      for (let index = 0; index < count; index += 1) {
        const [text, kind] = quantities[index % quantities.length] as (typeof quantities)[number]
        sum += parseQuantity(text, kind)
      }
      return sum
    },
  })
  const plans = Object.entries(planner.demoJobs).map(([name, job]): Figure => {
    const { medianMs } = measureOnce(() => planner.planRepair(job), 25)
    return { what: `plan of ${name}, its heating curves included`, value: medianMs, unit: 'ms', note: `${(job.tools ?? []).length} tools` }
  })
  return [{ what: 'a quantity read from text', value: (quantity?.nsPerCall ?? Number.NaN) / 1000, unit: 'µs', atMost: 1 }, ...plans, ...(await audits())]
}

const row = { name: 'feed', areaMm2: 1.5, insulation: 'XLPE', outLengthM: 3, returnLengthM: 3, currentA: 4.2, supplyV: 12, ambientC: 30 } as const

async function audits(): Promise<readonly Figure[]> {
  // Skipped if the planner has no auditRow.
  const auditRow = (planner as { readonly auditRow?: (row: unknown, line: number) => unknown }).auditRow
  if (auditRow === undefined) return []
  const [timing] = measure({
    rows: (count) => {
      let sum = 0
      for (let line = 1; line <= count; line += 1) sum += auditRow({ ...row, currentA: 3 + (line % 16) * 0.1 }, line) === undefined ? 0 : 1
      return sum
    },
  })
  return [{ what: 'audit rows a second, without a fuse', value: 1e9 / (timing?.nsPerCall ?? Number.NaN), unit: '', atLeast: 120_000 }]
}
