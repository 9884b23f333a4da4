import katex from 'katex'

/** A line that shows more characters than this is broken at its plus signs and factors in brackets as well: a phone holds about as many. */
const longLine = 32

/** About how many characters a line shows, side by side. */
const shownLength = (tex: string): number => tex.replace(/\\[a-zA-Z]+/g, 'x').replace(/[{}^_\\, ]/g, '').length

/** Parts of a TeX line at a sign that stands outside all brackets; the sign goes to the front of the next part. */
function splitAt(tex: string, sign: RegExp): readonly string[] {
  const parts: string[] = []
  let depth = 0
  let from = 0
  for (let at = 0; at < tex.length; at += 1) {
    const rest = tex.slice(at)
    if (depth === 0 && at > from && sign.test(rest)) {
      parts.push(tex.slice(from, at))
      from = at
    }
    if (tex[at] === '{' || rest.startsWith('\\left')) depth += 1
    if (tex[at] === '}' || rest.startsWith('\\right')) depth -= 1
  }
  return [...parts, tex.slice(from)].map((part) => part.trim()).filter((part) => part !== '')
}

/** Equations side by side are a line each; a space inside TeX is no sign. */
const signs = { list: /^,\\quad /, equal: /^ =/, plus: /^\+/, factor: /^\\cdot\\left/ } as const

const isShort = (part: string): boolean => shownLength(part) <= longLine

/** What is computed stays with its first equation where both fit in a line. */
function firstTogether(parts: readonly string[]): readonly string[] {
  const [name, first, ...others] = parts
  if (name === undefined || first === undefined || !isShort(`${name} ${first}`)) return parts
  return [`${name} ${first}`, ...others]
}

function shortLines(tex: string): readonly string[] {
  return splitAt(tex, signs.list)
    .map((part) => part.replace(signs.list, ''))
    .flatMap((part) => firstTogether(splitAt(part, signs.equal)))
    .flatMap((part) => (isShort(part) ? [part] : splitAt(part, signs.plus)))
    .flatMap((part) => (isShort(part) ? [part] : splitAt(part, signs.factor)))
}

/** One formula as MathML, without the TeX it came from and without anything that a strict style policy would drop. */
export function mathml(tex: string, display: 'block' | 'inline' = 'inline'): string {
  const markup = katex.renderToString(tex, { output: 'mathml', displayMode: display === 'block', strict: 'ignore', throwOnError: true })
  const found = /<math[\s\S]*<\/math>/.exec(markup)?.[0]
  if (found === undefined || found.includes('style=')) throw new Error(`no plain MathML for ${tex}`)
  return (
    found
      .replace(/<annotation[^>]*>[\s\S]*?<\/annotation>/, '')
      .replace(/<\/?semantics>/g, '')
      // One row inside each root: the style sheet draws the sign around it, as high as the row.
      .replaceAll('<msqrt>', '<msqrt><mrow>')
      .replaceAll('</msqrt>', '</mrow></msqrt>')
  )
}

/** Units that read as words: a number must not run into "1/m". */
const spoken: Readonly<Record<string, string>> = { '1/m': 'per metre', '1/mm': 'per mm', '1/K': 'per kelvin', '1/s': 'per second' }

/** A unit as a reader takes it. */
export const unitText = (unit: string): string => spoken[unit] ?? unit

/** A unit stands apart from its number, and in words where it begins with a 1. */
const apart = (tex: string): string =>
  tex.replace(/\\,\\mathrm\{(1\/m{1,2}|1\/K|1\/s)\}/g, (_found, unit: string) => `\\ \\text{${unitText(unit)}}`).replaceAll('\\,\\mathrm', '\\ \\mathrm')

/** A chain of equations, one sign of equality a line, so that it reads on a narrow page. */
export function equationMarkup(tex: string): string {
  return `<div class="equation">${shortLines(apart(tex))
    .map((line) => `<div${/^(\+|\\cdot)/.test(line) ? ' class="goes-on"' : ''}>${mathml(line, 'block')}</div>`)
    .join('')}</div>`
}
