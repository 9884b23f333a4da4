import type { ChartSpec } from '../../charts/chartSpec.ts'
import type { LessonPicture } from './lesson.ts'
import { figures } from './say.ts'

/** Range of a slider. */
export interface Range {
  readonly label: string
  readonly unit: string
  readonly low: number
  readonly high: number
  readonly step: number
}

/** One slider, its effect on a curve and a picture, and the prediction asked of the class. */
export interface WhatIf {
  readonly title: string
  /** Question for the prediction: the curve's value with the slider at `at`. */
  readonly ask: string
  readonly setting: Range & { readonly start: number }
  readonly at: number
  readonly result: Range
  readonly limits?: readonly { readonly name: string; readonly y: number; readonly hot: boolean }[]
  value(setting: number): number
  picture(setting: number): LessonPicture
  says(setting: number): string
}

const points = 41

/** A number with no more decimals than the slider's step. */
export function onScale(range: Range, value: number): string {
  const decimals = (String(range.step).split('.')[1] ?? '').length
  const unit = range.unit === '' ? '' : ` ${range.unit}`
  return `${value.toFixed(decimals).replace('-', '−')}${unit}`
}

/** The curve with the slider's position and the class's prediction, if made. */
export function whatIfChart(whatIf: WhatIf, setting: number, predicted: number | null): ChartSpec {
  const { low, high } = whatIf.setting
  const x = Array.from({ length: points }, (_, index) => low + ((high - low) * index) / (points - 1))
  const axis = ({ label, unit }: Range): string => (unit === '' ? label : `${label}, ${unit}`)
  const prediction = predicted === null ? [] : [{ name: `the class: ${onScale(whatIf.result, predicted)}`, y: predicted, hot: true }]
  return {
    title: `${axis(whatIf.result)} against ${axis(whatIf.setting)}`,
    xLabel: axis(whatIf.setting),
    yLabel: axis(whatIf.result),
    series: [{ name: whatIf.result.label, kind: 'main', x, y: x.map((at) => whatIf.value(at)) }],
    limits: [...(whatIf.limits ?? []), ...prediction],
    marks: [{ name: `the slider: ${onScale(whatIf.setting, setting)} gives ${figures(whatIf.value(setting))} ${whatIf.result.unit}`, x: setting }],
  }
}

/** Parses a setting within the slider's range; otherwise says what is allowed. */
export function readSetting(range: Range, text: string): { readonly value: number } | { readonly said: string } {
  const value = Number(text.trim().replace(',', '.').replace('−', '-'))
  if (text.trim() !== '' && Number.isFinite(value) && value >= range.low && value <= range.high) return { value }
  const read = text.trim() === '' ? 'nothing' : `“${text.trim().slice(0, 20)}”`
  return { said: `Read: ${read}. Allowed: ${range.low} to ${onScale(range, range.high)}. For example: ${range.high}.` }
}
