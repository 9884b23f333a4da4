import type { HeatJointResult } from './heatJointTypes.ts'
import type { HeatModel } from './heatModel.ts'
import { heatingRun } from './solver/heatingRun.ts'
import type { HeatingRecord } from './solver/record.ts'
import { steadyJoint } from './solver/steadyJoint.ts'

/** Runs a model, if asked only until it is wetted, and returns its results, lists in the order of the conductors, and the raw record. */
export function runHeatModel(model: HeatModel, untilWetted = false): { readonly result: HeatJointResult; readonly record: HeatingRecord } {
  const { ambientC, wireOf } = model
  const steady = steadyJoint(model)
  const { record, energyResidual } = heatingRun(model, untilWetted)
  const perConductor = <T>(of: (w: number) => T): T[] => wireOf.map(of)
  const result: HeatJointResult = {
    reachesLiquidus: record.liquidusAtS !== null,
    everReachesLiquidus: steady.riseK > model.melt.liquidusRiseK,
    solidusAtS: record.solidusAtS,
    liquidusAtS: record.liquidusAtS,
    wettedAtS: record.wettedAtS,
    resolidifiedAtS: record.resolidifiedAtS,
    steadyC: ambientC + steady.riseK,
    steadyEdgeC: perConductor((w) => ambientC + (steady.edgeRiseK[w] as number)),
    jointAtToolOffC: ambientC + record.jointAtToolOffK,
    jointPeakC: ambientC + record.jointPeakK,
    insulationPeakC: perConductor((w) => ambientC + (record.edgePeakK[w] as number)),
    insulationOuterPeakC: perConductor((w) => ambientC + (record.outerPeakK[w] as number)),
    insulationExposureS: perConductor((w) => record.exposureS[w] as number),
    jointC: Array.from(record.jointK, (rise) => ambientC + rise),
    edgeC: perConductor((w) => Array.from(record.edgeK[w] as Float64Array, (rise) => ambientC + rise)),
    energyResidual,
  }
  return { result, record }
}
