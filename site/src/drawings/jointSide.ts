import type { JointPicture } from '@strandwise/planner'
import { levelDimension, uprightDimension } from './dimension.ts'
import { drawing, line, path, rect } from './svg.ts'

const width = 360
const marginX = 14
/** Width kept on the right for the outside diameter's label. */
const diameterRoom = 66
/** Height kept on top for the sleeve's length. */
const roomAbove = 40

const mm = (value: number): string => `${value < 10 ? value.toFixed(1) : Math.round(value)} mm`

interface Scale {
  readonly x: (mmFromMiddle: number) => number
  readonly y: (mmFromAxis: number) => number
  readonly perMm: number
}

function wire(picture: JointPicture, scale: Scale, side: -1 | 1, axisMm: number, tipMm: number, endMm: number): string {
  const half = picture.jointMm / 2
  const edge = half + picture.stubMm
  const conductor = picture.conductorMm
  const left = Math.min(side * endMm, tipMm)
  const right = Math.max(side * endMm, tipMm)
  const insulation = side < 0 ? [-endMm, -edge] : [edge, endMm]
  const strands = [-0.25, 0, 0.25].map((share) =>
    line(scale.x(left), scale.y(axisMm + share * conductor), scale.x(right), scale.y(axisMm + share * conductor), 'strand'),
  )
  return [
    rect(scale.x(left), scale.y(axisMm - conductor / 2), (right - left) * scale.perMm, conductor * scale.perMm, 'metal'),
    ...strands,
    rect(scale.x(insulation[0] ?? 0), scale.y(axisMm - picture.outsideMm / 2), (endMm - edge) * scale.perMm, picture.outsideMm * scale.perMm, 'insulation'),
  ].join('')
}

function solder(picture: JointPicture, scale: Scale): string {
  const half = picture.jointMm / 2
  const d = picture.conductorMm
  // The fillet fills both sides to the wires' common tangent and tapers at the ends.
  const run = Math.min(picture.stubMm * 0.4, d * 0.6)
  const x = (value: number) => scale.x(value).toFixed(2)
  const y = (value: number) => scale.y(value).toFixed(2)
  return path(
    `M${x(-half - run)} ${y(0)}Q${x(-half)} ${y(-d)} ${x(-half + run)} ${y(-d)}L${x(half - run)} ${y(-d)}Q${x(half)} ${y(-d)} ${x(half + run)} ${y(0)}Q${x(half)} ${y(d)} ${x(half - run)} ${y(d)}L${x(-half + run)} ${y(d)}Q${x(-half)} ${y(d)} ${x(-half - run)} ${y(0)}Z`,
    'solder',
  )
}

/** The joint from the side, to scale: stubs, overlap or barrel, solder, sleeve and their lengths; with lengthIsAsked the length is a question mark. */
export function jointSide(picture: JointPicture, lengthIsAsked = false): { readonly svg: string; readonly sentence: string } {
  const longestCut = Math.max(0, ...picture.layers.map((layer) => layer.cutMm))
  const halfShown = Math.max(picture.jointMm / 2 + picture.stubMm + 2 * picture.outsideMm, longestCut / 2 + picture.outsideMm)
  const perMm = (width - 2 * marginX - diameterRoom) / (2 * halfShown)
  const lap = picture.kind === 'lap'
  const tallestMm = Math.max(
    lap ? picture.conductorMm + picture.outsideMm : picture.outsideMm,
    picture.barrelMm,
    ...picture.layers.map((layer) => layer.outsideMm),
  )
  const outer = picture.layers.at(-1)
  const top = outer === undefined ? roomAbove / 3 : roomAbove
  const axis = top + (tallestMm / 2) * perMm
  const scale: Scale = { x: (value) => marginX + (halfShown + value) * perMm, y: (value) => axis + value * perMm, perMm }
  const bottom = axis + (tallestMm / 2) * perMm
  const half = picture.jointMm / 2
  const offset = lap ? picture.conductorMm / 2 : 0
  const tip = lap ? half : 0
  const layers = picture.layers.map((layer) =>
    rect(scale.x(-layer.cutMm / 2), scale.y(-layer.outsideMm / 2), layer.cutMm * perMm, layer.outsideMm * perMm, 'sleeve', 3),
  )
  const svg = drawing(
    width,
    bottom + 72,
    'The joint from the side, to scale',
    wire(picture, scale, -1, -offset, tip, halfShown),
    wire(picture, scale, 1, offset, -tip, halfShown),
    lap ? solder(picture, scale) : rect(scale.x(-half), scale.y(-picture.barrelMm / 2), picture.jointMm * perMm, picture.barrelMm * perMm, 'barrel', 2),
    ...layers,
    levelDimension(scale.x(-half), scale.x(half), bottom + 16, bottom - 2, lengthIsAsked ? '?' : mm(picture.jointMm)),
    picture.stubMm * perMm > 14 ? levelDimension(scale.x(half), scale.x(half + picture.stubMm), bottom + 50, bottom - 2, mm(picture.stubMm)) : '',
    outer === undefined || outer.cutMm === 0 ? '' : levelDimension(scale.x(-outer.cutMm / 2), scale.x(outer.cutMm / 2), top - 14, top + 2, mm(outer.cutMm)),
    outer === undefined
      ? ''
      : uprightDimension(
          width - diameterRoom + 8,
          scale.y(-outer.outsideMm / 2),
          scale.y(outer.outsideMm / 2),
          scale.x(outer.cutMm / 2) + 2,
          `⌀ ${mm(outer.outsideMm)}`,
        ),
  )
  const cover = outer === undefined ? '' : `, under a sleeve cut ${mm(outer.cutMm)} long, ${mm(outer.outsideMm)} outside after shrinking`
  const bare = lap ? `, ${mm(picture.stubMm)} of bare wire on each side` : ''
  return {
    svg,
    sentence: `${lap ? 'Overlap' : 'Barrel'} ${lengthIsAsked ? 'to be found' : mm(picture.jointMm)}${bare}${cover}; wire ${mm(picture.outsideMm)} over its insulation.`,
  }
}
