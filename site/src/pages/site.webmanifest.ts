import type { APIRoute } from 'astro'
import { iconSizes } from '../lib/iconSizes.ts'
import { link } from '../lib/link.ts'

/** Web manifest for installing the site on a home screen, in the page's colours. */
export const GET: APIRoute = () =>
  new Response(
    JSON.stringify({
      name: 'Strandwise',
      short_name: 'Strandwise',
      description: 'Plan a wire joint, then prove it.',
      start_url: link(''),
      scope: link(''),
      display: 'standalone',
      background_color: '#FBFAF6',
      theme_color: '#FBFAF6',
      icons: [
        { src: link('mark.svg'), sizes: 'any', type: 'image/svg+xml', purpose: 'any' },
        ...iconSizes.map((size) => ({ src: link(`icon-${size}.png`), sizes: `${size}x${size}`, type: 'image/png', purpose: 'any maskable' })),
      ],
    }),
    { headers: { 'Content-Type': 'application/manifest+json' } },
  )
