import type { CurrentPicture, HeatingPicture } from '@strandwise/planner'
import type { ChartSpec } from './chartSpec.ts'

const whole = (value: number): string => String(Math.round(value))

/** Joint and insulation edge against heating time, for each tool, with liquidus and the insulation's limit. */
export function heatingChart(picture: HeatingPicture): { readonly spec: ChartSpec; readonly sentence: string } {
  const limits = [{ name: `${picture.alloy} liquid, ${whole(picture.liquidusC)} °C`, y: picture.liquidusC, hot: false }]
  if (picture.insulationC !== null)
    limits.push({ name: `${picture.insulation} stands ${whole(picture.insulationC.low)} °C for seconds`, y: picture.insulationC.low, hot: true })
  const series = picture.curves.flatMap((curve, index) => [
    {
      name: `joint, ${curve.tool}`,
      kind: index === 0 ? ('main' as const) : ('other' as const),
      x: curve.timeS,
      y: curve.jointC,
      low: curve.jointLowC,
      high: curve.jointHighC,
    },
    { name: `edge of the insulation, ${curve.tool}`, kind: 'edge' as const, x: curve.timeS, y: curve.edgeC },
  ])
  const said = picture.curves.map((curve) => {
    const last = curve.timeS.length - 1
    const reached = curve.jointC.findIndex((joint) => joint >= picture.liquidusC)
    const joint =
      reached < 0
        ? `the joint comes to ${whole(curve.jointC[last] ?? 0)} °C and never to ${whole(picture.liquidusC)} °C`
        : `the joint passes ${whole(picture.liquidusC)} °C after about ${(curve.timeS[reached] ?? 0).toPrecision(2)} s`
    return `${curve.tool}: in ${whole(curve.timeS[last] ?? 0)} s ${joint}; the edge of the insulation comes to ${whole(curve.edgeC[last] ?? 0)} °C if the tool stays on.`
  })
  return {
    spec: { title: 'Joint and insulation against heating time', xLabel: 'tool on, s', yLabel: '°C', series, limits, marks: [] },
    sentence: said.join(' '),
  }
}

/** Conductor temperature against current in the hottest air, with the limit and the working current. */
export function currentChart(picture: CurrentPicture): { readonly spec: ChartSpec; readonly sentence: string } {
  const middle = picture.lowC.map((low, index) => (low + (picture.highC[index] ?? low)) / 2)
  const limit =
    picture.limitA === null
      ? 'no current is allowed'
      : `the limit of ${whole(picture.limitC)} °C is reached at ${picture.limitA.toPrecision(3)} A, the unfavourable end`
  return {
    spec: {
      title: 'Conductor temperature against current',
      xLabel: 'current, A',
      yLabel: '°C',
      series: [{ name: 'conductor', kind: 'main', x: picture.currentA, y: middle, low: picture.lowC, high: picture.highC }],
      limits: [{ name: `limit of the insulation, ${whole(picture.limitC)} °C`, y: picture.limitC, hot: true }],
      marks: [{ name: `working current, ${picture.workingA.toPrecision(3)} A`, x: picture.workingA }],
    },
    sentence: `In air of ${whole(picture.ambientC)} °C ${limit}; you draw ${picture.workingA.toPrecision(3)} A.`,
  }
}
