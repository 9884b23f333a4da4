import { levelDimension } from '../../drawings/dimension.ts'
import { drawing, rect, text } from '../../drawings/svg.ts'
import type { LessonPicture } from '../lesson/lesson.ts'
import { figures } from '../lesson/say.ts'

const width = 360
const margin = 16
const top = 34

/** A solder sleeve over a lap, from the side, before it is shrunk: tube, ring of solder, wires. */
export function sleeveSide(i: {
  readonly conductorMm: number
  readonly outsideMm: number
  readonly lapMm: number
  readonly stubMm: number
  readonly tubeMm: number
  readonly tubeInsideMm: number
  readonly wallMm: number
}): LessonPicture {
  const halfMm = Math.max(i.tubeMm / 2 + 4, i.lapMm / 2 + i.stubMm + 6)
  const perMm = (width - 2 * margin) / (2 * halfMm)
  const x = (mm: number): number => width / 2 + mm * perMm
  const tubeOutsideMm = i.tubeInsideMm + 2 * i.wallMm
  const axis = top + (tubeOutsideMm / 2) * perMm
  const y = (mm: number): number => axis + mm * perMm
  const half = i.lapMm / 2
  const wire = (sideways: -1 | 1): string => {
    const at = (sideways * i.conductorMm) / 2
    const from = sideways < 0 ? -halfMm : -half
    const to = sideways < 0 ? half : halfMm
    const jacket = sideways < 0 ? [-halfMm, -half - i.stubMm] : [half + i.stubMm, halfMm]
    return (
      rect(x(from), y(at - i.conductorMm / 2), (to - from) * perMm, i.conductorMm * perMm, 'metal') +
      rect(x(jacket[0] ?? 0), y(at - i.outsideMm / 2), ((jacket[1] ?? 0) - (jacket[0] ?? 0)) * perMm, i.outsideMm * perMm, 'insulation')
    )
  }
  const ringMm = 3
  const ring = (from: number): string => rect(x(-ringMm / 2), y(from), ringMm * perMm, 0.7 * perMm, 'solder', 2)
  const bottom = y(tubeOutsideMm / 2)
  const says = `tube ${figures(i.tubeMm, 2)} mm long, lap ${figures(i.lapMm, 2)} mm, ring of solder in its middle`
  return {
    svg: drawing(
      width,
      bottom + 44,
      `A solder sleeve before it is shrunk: ${says}`,
      wire(-1),
      wire(1),
      ring(-i.tubeInsideMm / 2),
      ring(i.tubeInsideMm / 2 - 0.7),
      rect(x(-i.tubeMm / 2), y(-tubeOutsideMm / 2), i.tubeMm * perMm, tubeOutsideMm * perMm, 'sleeve', 3),
      text(width / 2, top - 16, 'ring'),
      levelDimension(x(-half), x(half), bottom + 18, bottom + 2, `${figures(i.lapMm, 2)} mm`),
    ),
    sentence: `To scale: ${says}.`,
  }
}
