import { type Interval, insulation, solder } from '@strandwise/core'
import type { WorkedOut } from '../report/inner.ts'
import { heatedFor, isSoldered, type JudgedWay, solderFill, type ToolHeat } from '../ways/inner.ts'

/** Joint and insulation edge against heating time for one tool, lifted after wetting; low and high are the unfavourable and the favourable end. */
export interface HeatingCurve {
  readonly tool: string
  readonly timeS: readonly number[]
  readonly jointC: readonly number[]
  readonly jointLowC: readonly number[]
  readonly jointHighC: readonly number[]
  readonly edgeC: readonly number[]
}

/** The curves of all tools, with the temperatures to reach and not to exceed. */
export interface HeatingPicture {
  readonly alloy: string
  readonly liquidusC: number
  readonly insulation: string
  /** null if its short-time limit is unknown. */
  readonly insulationC: Interval | null
  readonly curves: readonly HeatingCurve[]
}

const points = 40

/** Denser at the start, where the joint warms fastest. */
const times = (lastS: number): readonly number[] => Array.from({ length: points + 1 }, (_, index) => lastS * (index / points) ** 2)

interface Run {
  readonly jointC: readonly number[]
  readonly edgeC: readonly (readonly number[])[]
}

/** The hottest insulation edge at each time. */
const hottest = (run: Run): readonly number[] => run.jointC.map((_, index) => Math.max(...run.edgeC.map((edge) => edge[index] ?? Number.NEGATIVE_INFINITY)))

function curveOf({ tool, inputs, heat }: ToolHeat): HeatingCurve {
  const { favourable, nominal, unfavourable } = heat.ends
  const lastS = Math.max(favourable.toolOffS, nominal.toolOffS, unfavourable.toolOffS)
  const timeS = times(lastS)
  const { tool: model } = inputs
  const run = (end: typeof nominal): Run => {
    const contact = end.contactResistanceKPerW
    const at = model.kind === 'iron' && contact !== null ? { ...model, contactResistanceKPerW: contact } : streamed(model, end.streamFactor)
    return heatedFor({ ...inputs, tool: at }, { toolOffS: end.toolOffS, observeS: lastS, sampleTimesS: timeS })
  }
  const middle = run(nominal)
  return { tool: tool.name, timeS, jointC: middle.jointC, jointLowC: run(unfavourable).jointC, jointHighC: run(favourable).jointC, edgeC: hottest(middle) }
}

/** A stream with its film coefficient scaled by a factor, via its speed: the coefficient grows about with the square root of speed. */
function streamed(tool: ToolHeat['inputs']['tool'], factor: number | null): ToolHeat['inputs']['tool'] {
  if (tool.kind !== 'hot-air' || factor === null || factor === 1) return tool
  if (tool.filmWPerM2K !== undefined) return { ...tool, filmWPerM2K: tool.filmWPerM2K * factor }
  return tool.airSpeedMPerS === undefined ? tool : { ...tool, airSpeedMPerS: tool.airSpeedMPerS * factor ** 2 }
}

/** The soldered way shown: the chosen one, else the intended one. */
function shownWay({ deciding, ways }: WorkedOut): JudgedWay | null {
  const soldered = [deciding.decided.way, ways.find(({ meant }) => meant)].find((way) => way != null && isSoldered(way.method))
  return soldered ?? null
}

/** Heating by each tool of the way shown; null if none is soldered, no tool is named, or the heating cannot be computed. */
export function decidedHeating(worked: WorkedOut): HeatingPicture | null {
  const way = shownWay(worked)
  if (way === null || way.heatAll.length === 0) return null
  const { alloy } = solderFill(way.method, way.facts)
  const limit = insulation(way.facts.insulationName).shortExposureC
  return {
    alloy,
    liquidusC: solder(alloy).liquidusC.nominal,
    insulation: way.facts.insulationName,
    insulationC: limit === null ? null : { low: limit.low, high: limit.high },
    curves: way.heatAll.map(curveOf),
  }
}
