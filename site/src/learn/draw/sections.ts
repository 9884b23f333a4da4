import { circle, drawing, text } from '../../drawings/svg.ts'
import type { LessonPicture } from '../lesson/lesson.ts'

const width = 360
const height = 190
const room = 140

/** Cross-section of a wire: metal within insulation. */
export interface WireSection {
  readonly name: string
  readonly coreMm: number
  readonly outsideMm: number
}

/** Cross-sections of wires side by side, on one scale. */
export function wireSections(title: string, wires: readonly WireSection[]): LessonPicture {
  const total = wires.reduce((sum, { outsideMm }) => sum + outsideMm, 0)
  const largest = Math.max(...wires.map(({ outsideMm }) => outsideMm))
  const gap = 24
  const perMm = Math.min(room / largest, (width - gap * (wires.length + 1)) / total)
  let x = (width - perMm * total - gap * (wires.length - 1)) / 2
  const drawn = wires.map(({ name, coreMm, outsideMm }) => {
    const at = x + (outsideMm * perMm) / 2
    x += outsideMm * perMm + gap
    return (
      circle(at, 20 + room / 2, (outsideMm / 2) * perMm, 'insulation') + circle(at, 20 + room / 2, (coreMm / 2) * perMm, 'solder') + text(at, height - 10, name)
    )
  })
  return { svg: drawing(width, height, title, ...drawn), sentence: `To scale: ${wires.map(({ name }) => name).join('; ')}.` }
}

/** Cross-section of a bundle, to scale, with the library's packing; on the scale of a wider bundle if given. */
export function bundleSection(
  title: string,
  wire: { readonly coreMm: number; readonly outsideMm: number },
  packed: { readonly diameterMm: number; readonly centresMm: readonly { readonly xMm: number; readonly yMm: number }[] },
  says: string,
  widestMm = packed.diameterMm,
): LessonPicture {
  const perMm = (room + 20) / widestMm
  const middle = { x: width / 2, y: 14 + (room + 20) / 2 }
  const wires = packed.centresMm.flatMap(({ xMm, yMm }) => [
    circle(middle.x + xMm * perMm, middle.y + yMm * perMm, (wire.outsideMm / 2) * perMm, 'insulation'),
    circle(middle.x + xMm * perMm, middle.y + yMm * perMm, (wire.coreMm / 2) * perMm, 'solder'),
  ])
  return {
    svg: drawing(width, height, title, circle(middle.x, middle.y, (packed.diameterMm / 2) * perMm, 'hole'), ...wires),
    sentence: `To scale: ${says}.`,
  }
}
