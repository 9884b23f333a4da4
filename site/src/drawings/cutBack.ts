import { levelDimension } from './dimension.ts'
import { drawing, path, rect, text } from './svg.ts'

/** The lead's cut-back and inserted lengths, in millimetres. */
export interface CutBack {
  readonly fromTerminationMm: number
  readonly cutBackMm: number
  /** 2 if the end towards the plug is cut and joined again too. */
  readonly cutEnds: 1 | 2
  readonly insertMm: number
  readonly jointMm: number
  readonly outsideMm: number
  /** True if the plug's end gets a new terminal. */
  readonly newTerminal: boolean
}

const width = 360
const margin = 10
const plugMm = 14
const rowGap = 96
const leastWireHeight = 4

const mm = (value: number): string => `${value < 10 ? value.toFixed(1) : Math.round(value)} mm`

/** A jagged end, where the drawing leaves out the rest of a long wire. */
const openEnd = (x: number, y: number, half: number): string => path(`M${x} ${y - half - 4}l4 ${half + 2}l-8 4l4 ${half + 2}`, 'axis')
const cutMark = (x: number, y: number): string =>
  path(`M${x} ${y - 16}V${y + 16}M${x - 4} ${y - 12}L${x + 4} ${y - 18}M${x - 4} ${y + 18}L${x + 4} ${y + 12}`, 'cut')

/** The lead at the damage with its cuts, and the same lead mended, to one scale. */
export function cutBackDrawing(lead: CutBack): { readonly svg: string; readonly sentence: string } {
  const { cutBackMm, cutEnds, insertMm, fromTerminationMm, jointMm } = lead
  const leftMm = Math.max(1.5 * cutBackMm, 30)
  const towardsPlugMm = Math.min(fromTerminationMm, Math.max(1.6 * cutBackMm, 30))
  const isShortened = towardsPlugMm < fromTerminationMm
  const keptMm = cutEnds === 2 ? towardsPlugMm - cutBackMm : 0
  const mendedMm = leftMm - cutBackMm + insertMm + Math.max(0, keptMm)
  const perMm = (width - 2 * margin) / (Math.max(leftMm + towardsPlugMm, mendedMm) + plugMm)
  const high = Math.max(leastWireHeight, lead.outsideMm * perMm)
  const half = high / 2
  const x = (valueMm: number) => margin + valueMm * perMm
  const y1 = 50
  const y2 = y1 + rowGap
  const wire = (from: number, to: number, y: number) => rect(x(from), y - half, (to - from) * perMm, high, 'insulation')
  const plug = (at: number, y: number) => rect(x(at), y - 10, plugMm * perMm, 20, 'housing', 2)
  const breakMm = leftMm
  const endMm = leftMm + towardsPlugMm
  const found = [
    wire(0, breakMm - 1, y1),
    wire(breakMm + 1, endMm, y1),
    openEnd(x(0), y1, half),
    plug(endMm, y1),
    cutMark(x(breakMm - cutBackMm), y1),
    cutEnds === 2 ? cutMark(x(breakMm + cutBackMm), y1) : '',
    levelDimension(x(breakMm - cutBackMm), x(breakMm), y1 - 28, y1 - half - 2, `cut back ${mm(cutBackMm)}`),
    levelDimension(x(breakMm), x(endMm), y1 + 26, y1 + half + 2, `${mm(fromTerminationMm)} to the plug${isShortened ? ', shortened' : ''}`),
  ]
  const startMm = leftMm - cutBackMm
  const joints = insertMm > 0 ? [startMm, startMm + insertMm] : [startMm]
  const mendedEnd = insertMm > 0 || cutEnds === 2 ? startMm + insertMm + Math.max(0, keptMm) : startMm
  const spliced = joints.slice(0, lead.newTerminal && insertMm > 0 ? 1 : lead.newTerminal ? 0 : 2)
  const mended = [
    wire(0, mendedEnd, y2),
    openEnd(x(0), y2, half),
    plug(mendedEnd, y2),
    ...spliced.map((at) => rect(x(at) - (jointMm / 2) * perMm, y2 - half - 3, jointMm * perMm, high + 6, 'barrel', 2)),
    insertMm > 0 ? levelDimension(x(startMm), x(startMm + insertMm), y2 + 28, y2 + half + 5, `${mm(insertMm)} put in`) : '',
    lead.newTerminal ? text(x(mendedEnd) - 4, y2 - 18, 'new terminal', 'end') : '',
  ]
  const ends = cutEnds === 2 ? 'from both ends' : 'from the end of the lead'
  const put = insertMm > 0 ? `; ${mm(insertMm)} of new wire put in` : ''
  const last = lead.newTerminal ? '; a new terminal at the end' : ''
  const sentence = `Cut back ${mm(cutBackMm)} ${ends}, ${mm(fromTerminationMm)} from the plug${put}${last}.`
  return {
    svg: drawing(width, y2 + (insertMm > 0 ? 56 : 26), `The lead before and after, to scale. ${sentence}`, ...found, ...mended),
    sentence,
  }
}
