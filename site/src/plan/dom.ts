type Child = Node | string
type Properties = Readonly<Record<string, string | boolean | undefined>>

/** Creates an element with attributes and children; text is never parsed as markup. */
export function el<K extends keyof HTMLElementTagNameMap>(name: K, properties: Properties = {}, ...children: readonly Child[]): HTMLElementTagNameMap[K] {
  const node = document.createElement(name)
  for (const [key, value] of Object.entries(properties)) {
    if (value === true) node.setAttribute(key, '')
    else if (typeof value === 'string') node.setAttribute(key, value)
  }
  node.append(...children)
  return node
}

export const list = (name: 'ul' | 'ol', items: readonly Child[], properties: Properties = {}): HTMLElement =>
  el(name, properties, ...items.map((item) => el('li', {}, item)))

/** The element of the static page that matches; if missing, the page is at fault. */
export function part<T extends Element>(root: ParentNode, selector: string, type: abstract new () => T): T {
  const found = root.querySelector(selector)
  if (!(found instanceof type)) throw new Error(`the page has no ${selector}`)
  return found
}

/** Parses trusted markup of this site (drawings, charts), in which typed text is escaped. */
export function drawn(markup: string): DocumentFragment {
  const template = document.createElement('template')
  template.innerHTML = markup
  return template.content
}
