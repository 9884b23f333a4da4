/** One line of a chart; low and high draw its band. */
export interface ChartSeries {
  readonly name: string
  readonly kind: 'main' | 'edge' | 'other'
  readonly x: readonly number[]
  readonly y: readonly number[]
  readonly low?: readonly number[]
  readonly high?: readonly number[]
}

/** A chart as plain numbers: the SVG and, once touched, the live chart are drawn from the same. */
export interface ChartSpec {
  readonly title: string
  readonly xLabel: string
  readonly yLabel: string
  readonly series: readonly ChartSeries[]
  /** Level lines, such as a liquidus or a limit. */
  readonly limits: readonly { readonly name: string; readonly y: number; readonly hot: boolean }[]
  /** Upright lines, such as the working current. */
  readonly marks: readonly { readonly name: string; readonly x: number }[]
}
