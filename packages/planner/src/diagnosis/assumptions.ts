import { type Chain, meterInputs, restingSupplyV, sound } from '../circuit/inner.ts'
import type { JobReading, PlanAssumption } from '../job/index.ts'

const percent = (share: number): number => Math.round(100 * Math.abs(share - 1))

/** What the diagnosis takes for granted of a sound circuit and of meters: every reading is compared with it. */
export function diagnosisAssumptions({ input }: Chain, readings: readonly JobReading[]): readonly PlanAssumption[] {
  if (readings.length === 0) return []
  const millimetres = ({ low, high }: { readonly low: number; readonly high: number }) => `${low} to ${high} mm of its wire`
  const { jointMm, contactMm, fuseV, lay, lengthShare, batteryV, supplyShare, loadShare, sourceShare } = sound
  const supply = restingSupplyV(input)
  const battery = supply.low !== supplyShare.low * input.supplyV
  const list: PlanAssumption[] = [
    { field: 'circuit.soundJoint', value: millimetres(jointMm), why: jointMm.source.source },
    { field: 'circuit.soundContact', value: millimetres(contactMm), why: contactMm.source.source },
    { field: 'circuit.soundFuse', value: `${fuseV.low} to ${fuseV.high} V${input.fuseA === null ? '' : ` at ${input.fuseA} A`}`, why: fuseV.source.source },
    {
      field: 'circuit.soundWire',
      value: `lay ${lay.low} to ${lay.high}, length within ${percent(lengthShare.high)} %`,
      why: `${lay.source.source}; ${lengthShare.source.source}`,
    },
    { field: 'circuit.soundLoad', value: `within ${percent(loadShare.high)} % of what is stated`, why: loadShare.source.source },
  ]
  // A supply that was read is taken as read.
  if (!readings.some(({ kind, from, to }) => kind === 'voltage' && [from, to].includes('source+') && [from, to].includes('source-')))
    list.push({ field: 'circuit.soundSupply', value: `${supply.low} to ${supply.high} V at rest`, why: (battery ? batteryV : supplyShare).source.source })
  if (input.sourceOhm === null)
    list.push({
      field: 'circuit.sourceResistanceOhm',
      value: `${100 * sourceShare.low} to ${100 * sourceShare.high} % of the supply`,
      why: sourceShare.source.source,
    })
  return [...list, ...readings.flatMap(meterAssumed)]
}

/** The meter of a reading that does not give its accuracy. */
function meterAssumed(reading: JobReading, index: number): readonly PlanAssumption[] {
  const { percentOfReading, counts, resolution, leadOhm = 0, leadUncertaintyOhm = 0 } = meterInputs(reading)
  const list: PlanAssumption[] = []
  if (reading.percentOfReading === undefined || reading.counts === undefined || reading.resolution === undefined)
    list.push({
      field: `readings.${index}.resolution`,
      value: `${percentOfReading} % and ${counts} counts of ${Number(resolution.toPrecision(3))}`,
      why: 'an ordinary hand meter on its lowest range that shows this',
    })
  if (reading.kind === 'resistance' && (reading.leadOhm === undefined || reading.leadUncertaintyOhm === undefined))
    list.push({ field: `readings.${index}.leadOhm`, value: `${leadOhm} Ω, plus or minus ${leadUncertaintyOhm} Ω`, why: 'two test leads and their probes' })
  return list
}
