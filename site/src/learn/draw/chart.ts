import type { ChartSpec } from '../../charts/chartSpec.ts'
import { lineChart } from '../../charts/lineChart.ts'
import type { LessonPicture } from '../lesson/lesson.ts'

/** Curves as a lesson picture. */
export const curves = (spec: ChartSpec, sentence: string): LessonPicture => ({ svg: lineChart(spec), sentence })

/** Evenly spaced points of a curve. */
export function sampled(low: number, high: number, value: (x: number) => number, count = 41): { readonly x: readonly number[]; readonly y: readonly number[] } {
  const x = Array.from({ length: count }, (_, index) => low + ((high - low) * index) / (count - 1))
  return { x, y: x.map(value) }
}
