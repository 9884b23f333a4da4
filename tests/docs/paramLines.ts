import type { Entry } from './extract.ts'
import { printedUnit } from './working.ts'

/** "@param i.spanMm - distance between the ties, in mm; above 0" for each input, made from the @symbol and @domain lines. */
export function paramLines({ parameters, doc }: Pick<Entry, 'parameters' | 'doc'>): readonly string[] {
  const [first] = parameters
  const own = parameters.length === 1 && first?.leaves.some(({ path }) => path !== '' && !/^\d/.test(path)) ? `${first.name}.` : ''
  const paths = [...new Set([...doc.symbols.map(({ path }) => path.split(' else ')[0] ?? ''), ...doc.domains.map(({ path }) => path)])]
  const known = new Set(parameters.flatMap(({ name, leaves }) => leaves.flatMap(({ path }) => (own === '' ? [name, `${name}.${path}`] : [path]))))
  return paths
    .filter((path) => known.has(path) || known.has(`${path}.0`))
    .map((path) => {
      const symbol = doc.symbols.find((line) => line.path.split(' else ')[0] === path)
      const domain = doc.domains.find((line) => line.path === path)
      const unit = symbol === undefined || symbol.unit === '1' ? '' : `, in ${printedUnit(symbol.unit)}`
      const said = [`${symbol?.meaning ?? ''}${unit}`, domain === undefined ? '' : `${domain.domain.text}${domain.optional ? ', or left out' : ''}`]
      return `@param ${own}${path.replace(/\.(\d+)/g, '[$1]')} - ${said.filter((part) => part !== '').join('; ')}`
    })
}

/** The declarations of a file with the lines that editors show put into each function's comment; a second run changes nothing. */
export function withParamLines(declarations: string, entries: readonly Entry[]): string {
  return entries.reduce((text, entry) => {
    const lines = paramLines(entry)
    const at = text.search(new RegExp(`export declare function ${entry.name}\\(`))
    const start = at === -1 ? -1 : text.lastIndexOf('/**', at)
    const comment = start === -1 ? '' : text.slice(start, at)
    if (lines.length === 0 || comment.includes('@param') || !comment.trimEnd().endsWith('*/')) return text
    const first = comment.search(/\n \* @/)
    const put = first === -1 ? comment.lastIndexOf('\n */') : first
    return `${text.slice(0, start + put)}${lines.map((line) => `\n * ${line}`).join('')}${text.slice(start + put)}`
  }, declarations)
}
