import { levelDimension, uprightDimension } from './dimension.ts'
import { drawing, line, rect } from './svg.ts'

/** A sleeve shrunk over a joint, in millimetres. */
export interface SleeveSide {
  /** Outside of the wire, where the sleeve must grip. */
  readonly wireMm: number
  /** Outside of the joint, over which it must go. */
  readonly jointMm: number
  readonly jointLengthMm: number
  /** Cover past the joint on each side. */
  readonly coverMm: number
  readonly outsideMm: number
  /** Widest that may pass; null without a limit. */
  readonly limitMm: number | null
}

const width = 360
const marginX = 12
const diameterRoom = 74
const top = 14

/** The sleeve from the side, to scale, shrunk on: the joint, its cover on each side, the outside against the allowed one. */
export function sleeveSide(i: SleeveSide, words: { readonly joint: string; readonly cover: string; readonly outside: string }): string {
  const coveredMm = i.jointLengthMm + 2 * i.coverMm
  const reachMm = coveredMm / 2 + Math.max(i.wireMm, 0.08 * coveredMm)
  const tallMm = Math.max(i.outsideMm, i.jointMm, i.limitMm ?? 0)
  const perMm = Math.min((width - 2 * marginX - diameterRoom) / (2 * reachMm), 110 / tallMm)
  const axis = top + (tallMm / 2) * perMm
  const middle = marginX + (width - 2 * marginX - diameterRoom) / 2
  const bottom = axis + (tallMm / 2) * perMm
  const x = (mm: number): number => middle + mm * perMm
  const bar = (from: number, to: number, thickMm: number, kind: string, round = 0): string =>
    rect(x(from), axis - (thickMm / 2) * perMm, (to - from) * perMm, thickMm * perMm, kind, round)
  const half = i.jointLengthMm / 2
  const limit =
    i.limitMm === null
      ? []
      : [-1, 1].map((side) =>
          line(x(-reachMm), axis + (side * (i.limitMm ?? 0) * perMm) / 2, x(reachMm), axis + (side * (i.limitMm ?? 0) * perMm) / 2, 'limit'),
        )
  return drawing(
    width,
    bottom + 70,
    `The sleeve shrunk on, from the side, to scale: joint ${words.joint} long, ${words.cover} of cover on each side, ${words.outside} outside${i.limitMm === null ? '' : '; dashed, the most that may pass'}`,
    bar(-reachMm, -half, i.wireMm, 'insulation'),
    bar(half, reachMm, i.wireMm, 'insulation'),
    bar(-half, half, i.jointMm, 'barrel', 2),
    bar(-coveredMm / 2, coveredMm / 2, i.outsideMm, 'sleeve', 3),
    ...limit,
    levelDimension(x(-half), x(half), bottom + 16, bottom + 2, words.joint),
    levelDimension(x(half), x(half + i.coverMm), bottom + 48, bottom + 2, words.cover),
    uprightDimension(width - diameterRoom + 4, axis - (i.outsideMm / 2) * perMm, axis + (i.outsideMm / 2) * perMm, x(coveredMm / 2) + 2, `⌀ ${words.outside}`),
  )
}
