type Attributes = Readonly<Record<string, string | number>>

/** Escapes text for markup. */
export function escapeText(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;')
}

/** Coordinates rounded: short, and finer than any screen. */
const shown = (value: string | number): string => (typeof value === 'number' ? String(Math.round(value * 100) / 100) : escapeText(value))

/** One SVG element as markup. */
export function element(name: string, attributes: Attributes, ...inside: readonly string[]): string {
  const list = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${shown(value)}"`)
    .join('')
  return inside.length === 0 ? `<${name}${list}/>` : `<${name}${list}>${inside.join('')}</${name}>`
}

export const line = (x1: number, y1: number, x2: number, y2: number, kind: string): string => element('line', { x1, y1, x2, y2, class: kind })
export const circle = (cx: number, cy: number, r: number, kind: string): string => element('circle', { cx, cy, r, class: kind })
export const rect = (x: number, y: number, width: number, height: number, kind: string, rx = 0): string =>
  element('rect', { x, y, width, height, class: kind, ...(rx > 0 ? { rx } : {}) })
export const path = (d: string, kind: string): string => element('path', { d, class: kind })
export const text = (x: number, y: number, words: string, anchor: 'start' | 'middle' | 'end' = 'middle', kind = 'label'): string =>
  element('text', { x, y, class: kind, 'text-anchor': anchor }, escapeText(words))

/** A drawing with its accessible title. */
export function drawing(width: number, height: number, title: string, ...inside: readonly string[]): string {
  return element(
    'svg',
    { class: 'drawing', viewBox: `0 0 ${shown(width)} ${shown(height)}`, role: 'img', 'aria-label': title },
    element('title', {}, escapeText(title)),
    ...inside,
  )
}
