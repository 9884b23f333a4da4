/** A link inside the site, relative to the folder that it is served from. */
export function link(path: string): string {
  const base = import.meta.env.BASE_URL
  return `${base.endsWith('/') ? base : `${base}/`}${path}`
}
