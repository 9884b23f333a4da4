import { heatJointBand, type Interval, insulation, solder } from '@strandwise/core'
import { heatInput, longestHoldS, modelTool } from '../facts/heatInputs.ts'
import { type JobFacts, jobFacts } from '../facts/jobFacts.ts'
import { solderedJoint, solderedMethods } from '../facts/soldered.ts'
import { quietly } from '../job/assume.ts'
import { parseRepairJob } from '../job/parseRepairJob.ts'
import type { RepairJob } from '../job/repairJob.ts'
import { heatObstacles } from '../plan/heatObstacles.ts'
import { chooseMethod } from '../plan/methodSection.ts'
import { sleeveHeat } from '../plan/sleeveHeat.ts'

/** Joint and insulation edge against heating time for one tool, the tool on throughout; low and high are the slowest and the fastest of the band. */
export interface HeatingCurve {
  readonly tool: string
  readonly timeS: readonly number[]
  readonly jointC: readonly number[]
  readonly jointLowC: readonly number[]
  readonly jointHighC: readonly number[]
  readonly edgeC: readonly number[]
}

/** The curves of all tools with the temperatures that they must pass and must not pass. */
export interface HeatingPicture {
  readonly alloy: string
  readonly liquidusC: number
  readonly insulation: string
  /** null: what it stands for seconds is not known. */
  readonly insulationC: Interval | null
  readonly curves: readonly HeatingCurve[]
}

const points = 40

interface Run {
  readonly jointC: readonly number[]
  readonly edgeC: readonly (readonly number[])[]
}

/** The hottest edge at each time. */
const hottest = (run: Run): readonly number[] => run.jointC.map((_, index) => Math.max(...run.edgeC.map((edge) => edge[index] ?? Number.NEGATIVE_INFINITY)))

function curveOf(tool: string, timeS: readonly number[], band: { readonly best: Run; readonly nominal: Run; readonly worst: Run }): HeatingCurve {
  return { tool, timeS, jointC: band.nominal.jointC, jointLowC: band.worst.jointC, jointHighC: band.best.jointC, edgeC: hottest(band.nominal) }
}

function times(lastS: number): readonly number[] {
  // Denser at the start, where the joint warms fastest.
  return Array.from({ length: points + 1 }, (_, index) => lastS * (index / points) ** 2)
}

function curvesFor(facts: JobFacts, method: Parameters<typeof solderedJoint>[0]): readonly HeatingCurve[] {
  if (heatObstacles(facts, method).length > 0) return []
  const sleeve = facts.job.solderSleeve
  return (facts.job.tools ?? []).flatMap((tool, index) => {
    const holdS = longestHoldS(tool, facts)
    const timeS = times(holdS)
    const model = modelTool(tool, index, facts, solderedJoint(method, facts).overlapMm, quietly)
    if (method === 'solder-sleeve') {
      if (tool.kind !== 'hot-air' || sleeve === undefined) return []
      return [curveOf(tool.name, timeS, sleeveHeat(facts, sleeve, model, holdS, timeS))]
    }
    return [curveOf(tool.name, timeS, heatJointBand({ ...heatInput(method, facts, model, holdS), sampleTimesS: timeS }))]
  })
}

/**
 * What each of the job's tools does to the joint over time, for a chart; null where the method is not soldered, no tool is named, or its heat cannot be computed.
 *
 * @throws JobError where the job is not one that parseRepairJob would return
 * @example
 * heatingCurves(bilgePumpFeed) // { alloy: 'Sn42Bi58', liquidusC: 138 }
 */
export function heatingCurves(job: RepairJob): HeatingPicture | null {
  const facts = jobFacts(parseRepairJob(job))
  const { considered } = chooseMethod(facts)
  if (!solderedMethods.includes(considered)) return null
  const curves = curvesFor(facts, considered)
  if (curves.length === 0) return null
  const { alloy } = solderedJoint(considered, facts)
  const limit = insulation(facts.insulationName).shortExposureC
  return {
    alloy,
    liquidusC: solder(alloy).liquidusC.nominal,
    insulation: facts.insulationName,
    insulationC: limit === null ? null : { low: limit.low, high: limit.high },
    curves,
  }
}
