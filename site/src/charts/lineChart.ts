import { extent, ticks } from 'd3-array'
import { area, line as polyline } from 'd3-shape'
import { drawing, line, path, rect, text } from '../drawings/svg.ts'
import type { ChartSeries, ChartSpec } from './chartSpec.ts'

const width = 360
const height = 240
const left = 42
const right = 10
const top = 28
const bottom = 46
const rowHeight = 18
/** Room between the axis and the legend. */
const keyTop = height + 10

function range(values: readonly number[], always: readonly number[]): readonly [number, number] {
  const [low, high] = extent([...values, ...always])
  const a = low ?? 0
  const b = high ?? 1
  return b > a ? [a, b + 0.04 * (b - a)] : [a - 1, b + 1]
}

/** The chart as SVG: axes, bands, lines with distinct dashes, limits, and a legend beneath. */
export function lineChart(spec: ChartSpec): string {
  const [x0, x1] = range(
    spec.series.flatMap((series) => series.x),
    spec.marks.map((mark) => mark.x),
  )
  const [y0, y1] = range(
    spec.series.flatMap((series) => [...series.y, ...(series.low ?? []), ...(series.high ?? [])]),
    spec.limits.map((limit) => limit.y),
  )
  const x = (value: number) => left + ((value - x0) / (x1 - x0)) * (width - left - right)
  const y = (value: number) => height - bottom - ((value - y0) / (y1 - y0)) * (height - top - bottom)
  const key: string[] = []
  let row = 0
  const keyRow = (sample: (yAt: number) => string, name: string) => {
    const at = keyTop + rowHeight * row++
    key.push(sample(at), text(left + 34, at + 4, name, 'start'))
  }
  const grid = [
    ...ticks(y0, y1, 5).map((value) => line(left, y(value), width - right, y(value), 'grid') + text(left - 6, y(value) + 4, String(value), 'end')),
    ...ticks(x0, x1, 5).map(
      (value) => line(x(value), height - bottom, x(value), height - bottom + 4, 'axis') + text(x(value), height - bottom + 18, String(value)),
    ),
  ]
  const drawn = spec.series.map((series) => {
    const kind = series.kind === 'main' ? 'series' : `series ${series.kind}`
    // A single line that the axis already names needs no row.
    if (spec.series.length > 1 || !spec.yLabel.startsWith(series.name)) keyRow((at) => line(left, at, left + 28, at, kind), series.name)
    return (
      bandOf(series, x, y) +
      path(
        polyline<number>(
          (value) => x(value),
          (_value, index) => y(series.y[index] ?? 0),
        )([...series.x]) ?? '',
        kind,
      )
    )
  })
  const limits = spec.limits.map((limit) => {
    keyRow((at) => line(left, at, left + 28, at, limit.hot ? 'limit hot' : 'limit'), limit.name)
    return line(left, y(limit.y), width - right, y(limit.y), limit.hot ? 'limit hot' : 'limit')
  })
  const marks = spec.marks.map((mark) => {
    keyRow((at) => line(left + 14, at - 7, left + 14, at + 5, 'mark'), mark.name)
    return line(x(mark.x), top, x(mark.x), height - bottom, 'mark')
  })
  if (spec.series.some((series) => series.low !== undefined)) keyRow((at) => rect(left, at - 5, 28, 10, 'band'), 'band of the models')
  return drawing(
    width,
    keyTop + rowHeight * row,
    spec.title,
    ...grid,
    line(left, height - bottom, width - right, height - bottom, 'axis'),
    ...drawn,
    ...limits,
    ...marks,
    text((left + width - right) / 2, height - 8, spec.xLabel),
    text(left - 34, 14, spec.yLabel, 'start'),
    ...key,
  )
}

function bandOf(series: ChartSeries, x: (value: number) => number, y: (value: number) => number): string {
  const { low, high } = series
  if (low === undefined || high === undefined) return ''
  const shape = area<number>(
    (value) => x(value),
    (_value, index) => y(low[index] ?? 0),
    (_value, index) => y(high[index] ?? 0),
  )([...series.x])
  return path(shape ?? '', 'band')
}
