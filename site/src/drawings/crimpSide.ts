import { levelDimension, uprightDimension } from './dimension.ts'
import { drawing, line, path, rect } from './svg.ts'

/** A crimp from the side: a barrel over both ends, or a terminal on one; lengths and diameters in millimetres. */
export interface CrimpSide {
  readonly form: 'barrel' | 'terminal'
  readonly conductorMm: number
  readonly outsideMm: number
  readonly barrelLengthMm: number
  readonly barrelMm: number
  readonly stripMm: number
  readonly sleeve: { readonly cutMm: number; readonly outsideMm: number } | null
}

const width = 360
const marginX = 12
const diameterRoom = 70
const roomAbove = 40

const mm = (value: number): string => `${value < 10 ? value.toFixed(1) : Math.round(value)} mm`

/** The crimp to scale: strip lengths inside the barrel, the barrel's length, the sleeve over it. */
export function crimpSide(crimp: CrimpSide): { readonly svg: string; readonly sentence: string } {
  const { form, conductorMm, outsideMm, barrelLengthMm, barrelMm, stripMm, sleeve } = crimp
  const half = barrelLengthMm / 2
  const isButt = form === 'barrel'
  const reachMm = Math.max(half + 3 * outsideMm, (sleeve?.cutMm ?? 0) / 2 + outsideMm)
  const tallMm = Math.max(barrelMm, outsideMm, sleeve?.outsideMm ?? 0)
  const perMm = (width - 2 * marginX - diameterRoom) / (2 * reachMm)
  const top = sleeve === null ? 12 : roomAbove
  const axis = top + (tallMm / 2) * perMm
  const bottom = axis + (tallMm / 2) * perMm
  const x = (value: number) => marginX + (reachMm + value) * perMm
  const y = (value: number) => axis + value * perMm
  const bar = (from: number, to: number, thickMm: number, kind: string, round = 0) =>
    rect(x(from), y(-thickMm / 2), (to - from) * perMm, thickMm * perMm, kind, round)
  const strands = (from: number, to: number) =>
    [-0.3, 0, 0.3].map((share) => line(x(from), y(share * conductorMm), x(to), y(share * conductorMm), 'strand hidden')).join('')
  // In a butt barrel a stripped end reaches to the middle, in a terminal through the barrel.
  const wires = isButt
    ? [bar(-reachMm, -half, outsideMm, 'insulation'), bar(half, reachMm, outsideMm, 'insulation')]
    : [bar(-reachMm, -half, outsideMm, 'insulation'), path(`M${x(half)} ${y(-conductorMm / 2)}H${x(reachMm * 0.8)}V${y(conductorMm / 2)}H${x(half)}`, 'metal')]
  const inside = isButt ? strands(-half, -half + Math.min(stripMm, half)) + strands(half - Math.min(stripMm, half), half) : strands(-half, -half + stripMm)
  const svg = (title: string) =>
    drawing(
      width,
      bottom + 72,
      title,
      ...wires,
      bar(-half, half, barrelMm, 'barrel', 2),
      inside,
      sleeve === null ? '' : bar(-sleeve.cutMm / 2, sleeve.cutMm / 2, sleeve.outsideMm, 'sleeve', 3),
      levelDimension(x(-half), x(-half + stripMm), bottom + 16, bottom + 2, `strip ${mm(stripMm)}`),
      levelDimension(x(-half), x(half), bottom + 50, bottom + 2, `barrel ${mm(barrelLengthMm)}`),
      sleeve === null ? '' : levelDimension(x(-sleeve.cutMm / 2), x(sleeve.cutMm / 2), top - 14, top - 2, `sleeve ${mm(sleeve.cutMm)}`),
      uprightDimension(
        width - diameterRoom + 6,
        y(-(sleeve?.outsideMm ?? barrelMm) / 2),
        y((sleeve?.outsideMm ?? barrelMm) / 2),
        x(sleeve === null ? half : sleeve.cutMm / 2) + 2,
        `⌀ ${mm(sleeve?.outsideMm ?? barrelMm)}`,
      ),
    )
  const over = sleeve === null ? '' : `, under a sleeve cut ${mm(sleeve.cutMm)} long, ${mm(sleeve.outsideMm)} outside after shrinking`
  const sentence = `Strip ${mm(stripMm)}; ${isButt ? 'barrel' : "terminal's barrel"} ${mm(barrelLengthMm)} long${over}.`
  return { svg: svg(`The crimp from the side, to scale. ${sentence}`), sentence }
}
