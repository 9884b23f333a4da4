import { packBundle } from '@strandwise/core/bundle'
import type { APIRoute } from 'astro'

/** The seven-strand mark as the page icon, by the packing function. */
export const GET: APIRoute = () => {
  const packed = packBundle(Array.from({ length: 7 }, () => 10))
  const half = packed.diameterMm / 2 + 1
  const strands = packed.centresMm.map((centre) => `<circle cx="${centre.xMm.toFixed(2)}" cy="${centre.yMm.toFixed(2)}" r="4.2"/>`).join('')
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${-half} ${-half} ${2 * half} ${2 * half}"><g fill="none" stroke="#97490F" stroke-width="1.6">${strands}</g></svg>`
  return new Response(svg, { headers: { 'Content-Type': 'image/svg+xml' } })
}
