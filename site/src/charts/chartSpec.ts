/** One line of a chart; low and high give its band. */
export interface ChartSeries {
  readonly name: string
  readonly kind: 'main' | 'edge' | 'other'
  readonly x: readonly number[]
  readonly y: readonly number[]
  readonly low?: readonly number[]
  readonly high?: readonly number[]
}

/** A chart as plain numbers, the source of both the SVG and the live chart. */
export interface ChartSpec {
  readonly title: string
  readonly xLabel: string
  /** Name and unit of the upright axis; the name of a single line, if it begins with it. */
  readonly yLabel: string
  readonly series: readonly ChartSeries[]
  /** Horizontal lines, such as a liquidus or a limit. */
  readonly limits: readonly { readonly name: string; readonly y: number; readonly hot: boolean }[]
  /** Vertical lines, such as the working current. */
  readonly marks: readonly { readonly name: string; readonly x: number }[]
}
