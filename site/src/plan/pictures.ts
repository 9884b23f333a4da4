import type { SectionId } from '@strandwise/planner/facts'
import type { RepairJob } from '@strandwise/planner/job'
import { planWithPictures } from '@strandwise/planner/picture'
import type { ChartSpec } from '../charts/chartSpec.ts'
import { lineChart } from '../charts/lineChart.ts'
import { defineLiveChart } from '../charts/liveChart.ts'
import { currentChart, heatingChart } from '../charts/planCharts.ts'
import { jointSection } from '../drawings/jointSection.ts'
import { jointSide } from '../drawings/jointSide.ts'

export interface Picture {
  readonly svg: string
  readonly sentence: string
  /** A chart's numbers, for the live chart that takes over when it is touched. */
  readonly spec?: ChartSpec
}

export type Pictures = Readonly<Partial<Record<SectionId, Picture>>>

const chart = ({ spec, sentence }: { readonly spec: ChartSpec; readonly sentence: string }): Picture => ({ svg: lineChart(spec), sentence, spec })

/** The drawings and charts of a planned job, each for the section that it belongs to. */
export function picturesOf(job: RepairJob): Pictures {
  defineLiveChart()
  const { pictures } = planWithPictures(job)
  if (pictures === null) return {}
  const { joint, heating, currents } = pictures
  return {
    'wire-and-protection': chart(currentChart(currents)),
    ...(joint === null ? {} : { joint: jointSide(joint), covering: jointSection(joint) }),
    ...(heating === null ? {} : { heating: chart(heatingChart(heating)) }),
  }
}
