import type { HeatModel, HeatSource } from '../heatModel.ts'
import { newRecord } from './heatingRecord.ts'
import type { HeatingState } from './heatingState.ts'
import { newLump } from './lump.ts'
import { newStep } from './stepState.ts'

export const toleranceK = 0.008
const iron: HeatSource = { kind: 'iron', setRiseK: 340, maximumW: Infinity, resistanceKPerW: 5 }

/** A run that begins cold, without wires. */
export function runOf(level: number, solidusRiseK = 1e9, source: HeatSource = iron, body: ReturnType<typeof newLump> | null = null): HeatingState {
  const melt = { solidusRiseK, liquidusRiseK: solidusRiseK + 100, latentJ: 1 }
  const model = { source, melt, wires: [], sampleTimesS: [], wettedRiseK: 1e9 } as unknown as HeatModel
  const step = newStep(model, newLump(0.05, melt, 0), body, false, [])
  const sums = { nowS: 0, riseKS: 0, heatInJ: 0, lossJ: 0 }
  return { step, record: newRecord(model), wires: [], edges: [], tables: [], next: [], toolOn: true, toleranceK, level, ...sums } as unknown as HeatingState
}
