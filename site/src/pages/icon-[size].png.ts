import { packBundle } from '@strandwise/core/bundle'
import type { APIRoute, GetStaticPaths } from 'astro'
import { iconSizes } from '../lib/iconSizes.ts'
import { ringsPng } from '../lib/ringsPng.ts'

const strandMm = 10
const lineMm = 1.6
/** The palette's copper on its light ground. */
const copper = [0x97, 0x49, 0x0f] as const
const ground = [0xfb, 0xfa, 0xf6] as const
/** Systems may crop an icon to a circle of this share of its width. */
const safeShare = 0.8

export const getStaticPaths: GetStaticPaths = () => iconSizes.map((size) => ({ params: { size: String(size) } }))

/** The seven-strand mark as a home-screen icon, by the packing function. */
export const GET: APIRoute = ({ params }) => {
  const packed = packBundle(Array.from({ length: 7 }, () => strandMm))
  const rings = packed.centresMm.map((centre) => ({ ...centre, radiusMm: (strandMm - lineMm) / 2 }))
  const picture = ringsPng(rings, Number(params.size), packed.diameterMm / 2 / safeShare, lineMm, copper, ground)
  return new Response(new Uint8Array(picture), { headers: { 'Content-Type': 'image/png' } })
}
