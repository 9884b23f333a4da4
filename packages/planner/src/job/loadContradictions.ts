import type { AddIssue } from './jobError.ts'
import { mostPowerW } from './loadCurrent.ts'
import type { RepairJob } from './repairJob.ts'
import { roundedDown } from './rounded.ts'
import type { WireSize } from './wireSize.ts'

/** A load said twice or by half, and one that asks for more than comes through the wire. */
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
  if (circuit.fuseA === undefined && circuit.fuseSeries !== undefined) add('circuit.fuseA', undefined, 'the rating with fuseSeries', '"fuseA": 7.5')
}
