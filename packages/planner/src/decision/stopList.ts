import { type Finding, figure, findingOf, planValue, rule, type Units } from '../facts/inner.ts'
import type { RepairJob } from '../job/index.ts'
import { stopWords } from './stopWords.ts'

const byKind: Readonly<Partial<Record<RepairJob['circuit']['kind'], { readonly code: keyof typeof stopWords; readonly rule: string }>>> = {
  airbag: { code: 'airbag', rule: 'ca-srs-off-limits' },
  'high-voltage': { code: 'high-voltage', rule: 'ca-hv-orange' },
  mains: { code: 'mains', rule: 'ca-mains' },
  safety: { code: 'safety', rule: 'ca-safety-circuits' },
  'fuel-or-explosive': { code: 'fuel-or-explosive', rule: 'ca-fuel-tank' },
}

/** Reasons to refuse a circuit; empty if there are none. Reads only `circuit`. */
export function stopList({ circuit, units = 'metric' }: Pick<RepairJob, 'circuit' | 'units'>): readonly Finding[] {
  const stops: Finding[] = []
  const kind = byKind[circuit.kind]
  if (kind !== undefined) stops.push(stop(kind.code, kind.rule, units))
  const ac = circuit.waveform === 'ac'
  const most = planValue('highest voltage', figure('ca-voltage-limit', ac ? 'maxAcRmsV' : 'maxDcV'), 'V', rule('ca-voltage-limit').source)
  if (circuit.supplyV > most.value)
    stops.push(stop('voltage', 'ca-voltage-limit', units, { supply: planValue('supply', circuit.supplyV, 'V'), most }, ac ? 'AC rms' : 'DC'))
  return stops
}

function stop(code: keyof typeof stopWords, id: string, units: Units, values: Finding['values'] = {}, waveform = ''): Finding {
  return findingOf(stopWords, units, code, 'refused', { values, names: { waveform }, rule: id })
}
