import type { JointPicture } from '@strandwise/planner'
import { circle, drawing, element, text } from './svg.ts'

const width = 360
const panel = width / 2
const roomBelow = 40

const mm = (value: number): string => `${value < 10 ? value.toFixed(1) : Math.round(value)} mm`

function strandsAt(picture: JointPicture, perMm: number, cx: number, cy: number, offsetMm: number): readonly string[] {
  return picture.strands.map((strand) => circle(cx + strand.xMm * perMm, cy + (offsetMm + strand.yMm) * perMm, (picture.strandMm / 2) * perMm, 'metal'))
}

/** A tube as one shape with its hole. */
function ring(cx: number, cy: number, insideMm: number, outsideMm: number, perMm: number): string {
  const arc = (radius: number, sweep: 0 | 1) => {
    const r = ((radius / 2) * perMm).toFixed(2)
    return `M${(cx - Number(r)).toFixed(2)} ${cy}a${r} ${r} 0 1 ${sweep} ${(2 * Number(r)).toFixed(2)} 0a${r} ${r} 0 1 ${sweep} ${(-2 * Number(r)).toFixed(2)} 0Z`
  }
  return element('path', { class: 'sleeve', 'fill-rule': 'evenodd', d: arc(outsideMm, 1) + arc(insideMm, 0) })
}

/** Cross-section at the joint's middle, in the housing's hole: as supplied, and after shrinking. */
export function jointSection(picture: JointPicture): { readonly svg: string; readonly sentence: string } {
  const lap = picture.kind === 'lap'
  const coreMm = lap ? 2 * picture.conductorMm : picture.barrelMm
  const largestMm = Math.max(coreMm, picture.housingHoleMm ?? 0, ...picture.layers.map((layer) => layer.suppliedOutsideMm))
  const perMm = (panel - 28) / largestMm
  const cy = 12 + (largestMm / 2) * perMm
  const offsets = lap ? [-picture.conductorMm / 2, picture.conductorMm / 2] : [0]
  // Without a sleeve there is one picture only.
  const moments = picture.layers.length === 0 ? (['as made'] as const) : (['as supplied', 'after shrinking'] as const)
  const views = moments.map((moment, index) => {
    const supplied = moment === 'as supplied'
    const cx = panel * (index + 0.5)
    const core = lap
      ? [element('ellipse', { class: 'solder', cx, cy, rx: (picture.conductorMm / 2) * perMm, ry: picture.conductorMm * perMm })]
      : [circle(cx, cy, (picture.barrelMm / 2) * perMm, 'barrel')]
    const layers = picture.layers.map((layer) =>
      ring(cx, cy, supplied ? layer.suppliedInsideMm : layer.insideMm, supplied ? layer.suppliedOutsideMm : layer.outsideMm, perMm),
    )
    const outer = picture.layers.at(-1)
    const outsideMm = outer === undefined ? coreMm : supplied ? outer.suppliedOutsideMm : outer.outsideMm
    return [
      picture.housingHoleMm === null ? '' : circle(cx, cy, (picture.housingHoleMm / 2) * perMm, 'hole'),
      ...layers,
      ...core,
      ...offsets.flatMap((offset) => strandsAt(picture, perMm, cx, cy, offset)),
      text(cx, 2 * cy + 6, moment),
      text(cx, 2 * cy + 24, `⌀ ${mm(outsideMm)}`),
    ].join('')
  })
  const outer = picture.layers.at(-1)
  const afterMm = outer?.outsideMm ?? coreMm
  const hole = picture.housingHoleMm
  const fits = hole === null ? '' : ` The housing's hole is ${mm(hole)}: it ${afterMm <= hole ? 'passes' : 'does not pass'}.`
  const made = picture.layers.length === 0 ? '' : ' after shrinking'
  const sentence = `Across the joint: ${mm(afterMm)}${made}.${fits}`
  return { svg: drawing(width, 2 * cy + roomBelow - 10, `The joint across its middle, to scale. ${sentence}`, ...views), sentence }
}
