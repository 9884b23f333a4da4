import { fuseBands } from '@strandwise/core'
import type { AddIssue } from './jobError.ts'
import { mostPowerW } from './loadCurrent.ts'
import type { RepairJob } from './repairJob.ts'
import { roundedDown } from './rounded.ts'
import type { WireSize } from './wireSize.ts'

/** Common practice, no published source: the largest batteries have tenths of a milliohm inside. */
const leastSourceOhm = 0.000001

/** A load given twice or incompletely, one that draws more than the wire can deliver, a source of almost no resistance, and a fuse rating that its series lacks. */
export function loadContradictions(job: RepairJob, size: WireSize | null, add: AddIssue): void {
  const { load, circuit } = job
  const given = [load.currentA, load.powerW, load.resistanceOhm].filter((value) => value !== undefined).length
  if (given !== 1) add('load', given === 0 ? undefined : load, 'one of currentA, powerW and resistanceOhm', '"currentA": 4.2')
  else if (load.powerW !== undefined && size !== null) {
    const mostW = mostPowerW(job, size.areaMm2)
    const told = roundedDown(mostW)
    if (load.powerW > mostW)
      add(
        'load.powerW',
        load.powerW,
        `at most ${told} W, the most that ${circuit.supplyV} V deliver through this wire and its source in the hottest air; thicker wire or a shorter run delivers more`,
        `"powerW": ${told}`,
      )
  }
  if ((load.inrushA === undefined) !== (load.inrushS === undefined))
    add('load.inrushA', load.inrushA, 'inrushA and inrushS together', '"inrushA": 15, "inrushS": 0.2')
  if ((load.onS === undefined) !== (load.offS === undefined)) add('load.onS', load.onS, 'onS and offS together', '"onS": 30, "offS": 300')
  const { sourceResistanceOhm: sourceOhm } = circuit
  if (sourceOhm !== undefined && sourceOhm > 0 && sourceOhm < leastSourceOhm)
    add('circuit.sourceResistanceOhm', sourceOhm, `0, or at least ${leastSourceOhm} Ω: no battery has less inside`, '"sourceResistanceOhm": 0.02')
  fuseContradictions(circuit, add)
}

function fuseContradictions({ fuseA, fuseSeries, fuseKind }: RepairJob['circuit'], add: AddIssue): void {
  if (fuseSeries === undefined) return
  const ratingsA = ratingsOf(fuseSeries)
  if (fuseKind !== undefined && fuseKind !== 'blade')
    add('circuit.fuseKind', fuseKind, `blade: ${fuseSeries} is a series of blade fuses; leave fuseSeries out for another kind`, '"fuseKind": "blade"')
  if (fuseA === undefined) add('circuit.fuseA', undefined, 'the rating with fuseSeries', '"fuseA": 7.5')
  else if (!ratingsA.includes(fuseA)) {
    const nearest = [...ratingsA].sort((a, b) => Math.abs(a - fuseA) - Math.abs(b - fuseA))[0]
    add('circuit.fuseA', fuseA, `a rating of ${fuseSeries}: ${ratingsA.join(', ')} A`, `"fuseA": ${nearest}`)
  }
}

/** Ratings of a standard, including the large blades, which are another type of it. */
function ratingsOf(series: string): readonly number[] {
  const types = Object.entries<{ readonly ratingsA: readonly number[] }>(fuseBands).filter(([name]) => name.startsWith(series))
  return [...new Set(types.flatMap(([, type]) => type.ratingsA))].sort((a, b) => a - b)
}

/** True if the series has that rating. */
export const isFuseRating = (series: string, ratedA: number): boolean => ratingsOf(series).includes(ratedA)
