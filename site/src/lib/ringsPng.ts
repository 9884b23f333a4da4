import { crc32, deflateSync } from 'node:zlib'

export interface Ring {
  readonly xMm: number
  readonly yMm: number
  readonly radiusMm: number
}

type Colour = readonly [red: number, green: number, blue: number]

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data])
  const length = Buffer.alloc(4)
  length.writeUInt32BE(data.length)
  const sum = Buffer.alloc(4)
  sum.writeUInt32BE(crc32(body))
  return Buffer.concat([length, body, sum])
}

/** Coverage of a pixel by a ring: 1 on its line, 0 off it, in between at its edge. */
const coverage = (distance: number, radius: number, half: number, pixel: number): number =>
  Math.min(Math.max((half - Math.abs(distance - radius)) / pixel + 0.5, 0), 1)

/** Rings as a square PNG, for icons made without a drawing program. */
export function ringsPng(rings: readonly Ring[], sizePx: number, halfWidthMm: number, lineMm: number, line: Colour, ground: Colour): Buffer {
  const pixel = (2 * halfWidthMm) / sizePx
  const rows = Buffer.alloc(sizePx * (3 * sizePx + 1))
  for (let row = 0; row < sizePx; row += 1) {
    const y = (row + 0.5) * pixel - halfWidthMm
    for (let column = 0; column < sizePx; column += 1) {
      const x = (column + 0.5) * pixel - halfWidthMm
      let share = 0
      for (const ring of rings) share = Math.max(share, coverage(Math.hypot(x - ring.xMm, y - ring.yMm), ring.radiusMm, lineMm / 2, pixel))
      const at = row * (3 * sizePx + 1) + 1 + 3 * column
      for (const [index, value] of line.entries()) rows[at + index] = Math.round(share * value + (1 - share) * (ground[index] ?? 0))
    }
  }
  const head = Buffer.alloc(13)
  head.writeUInt32BE(sizePx, 0)
  head.writeUInt32BE(sizePx, 4)
  // Eight bits per channel, RGB.
  head.set([8, 2], 8)
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])
  return Buffer.concat([signature, chunk('IHDR', head), chunk('IDAT', deflateSync(rows, { level: 9 })), chunk('IEND', Buffer.alloc(0))])
}
