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

/** Quantities and plans. */
export function planning(): readonly Figure[] {
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
  return [{ what: 'a quantity read from text', value: (quantity?.nsPerCall ?? Number.NaN) / 1000, unit: 'µs', atMost: 1 }, ...plans]
}
