/** The docstring of an export as data. DEVELOPERS.md describes the grammar. */
export interface SymbolLine {
  readonly symbol: string
  /** A parameter's path, or `result`. */
  readonly path: string
  readonly unit: string
  readonly meaning: string
}

export interface DomainLine {
  readonly path: string
  readonly optional: boolean
  readonly domain: Domain
}

/** An interval of numbers; an absent end is unbounded. */
export interface Domain {
  readonly text: string
  readonly low?: number
  readonly lowIncluded?: boolean
  readonly high?: number
  readonly highIncluded?: boolean
  readonly whole: boolean
}

export interface Docstring {
  readonly sentence: string
  /** Paragraphs after the first sentence: assumptions and limits. */
  readonly remarks: readonly string[]
  readonly equations: readonly string[]
  readonly symbols: readonly SymbolLine[]
  readonly domains: readonly DomainLine[]
  /** Functions whose domains apply here too, for shared parameters: `@domain as heatJoint`. */
  readonly domainsOf: readonly string[]
  readonly throws: readonly string[]
  readonly examples: readonly string[]
  readonly sources: readonly string[]
  /** Faults found while reading. */
  readonly problems: readonly string[]
}

const number = String.raw`-?\d+(?:\.\d+)?(?:e[+-]?\d+)?`
const domainForms: readonly (readonly [RegExp, (a: number, b: number) => Omit<Domain, 'text'>])[] = [
  [new RegExp(`^above (${number})$`), (low) => ({ low, lowIncluded: false, whole: false })],
  [new RegExp(`^at least (${number})$`), (low) => ({ low, lowIncluded: true, whole: false })],
  [new RegExp(`^below (${number})$`), (high) => ({ high, highIncluded: false, whole: false })],
  [new RegExp(`^at most (${number})$`), (high) => ({ high, highIncluded: true, whole: false })],
  [new RegExp(`^from (${number}) to (${number})$`), (low, high) => ({ low, lowIncluded: true, high, highIncluded: true, whole: false })],
  [new RegExp(`^above (${number}) up to (${number})$`), (low, high) => ({ low, lowIncluded: false, high, highIncluded: true, whole: false })],
  [new RegExp(`^from (${number}) below (${number})$`), (low, high) => ({ low, lowIncluded: true, high, highIncluded: false, whole: false })],
  [new RegExp(`^above (${number}) below (${number})$`), (low, high) => ({ low, lowIncluded: false, high, highIncluded: false, whole: false })],
  [/^finite$/, () => ({ whole: false })],
  [new RegExp(`^whole from (${number}) to (${number})$`), (low, high) => ({ low, lowIncluded: true, high, highIncluded: true, whole: true })],
  [new RegExp(`^whole at least (${number})$`), (low) => ({ low, lowIncluded: true, whole: true })],
  [/^whole$/, () => ({ whole: true })],
]

/** "above 0", "from 0 to 1", "whole at least 1", "finite"; undefined for any other text. */
export function parseDomain(text: string): Domain | undefined {
  for (const [form, make] of domainForms) {
    const match = form.exec(text)
    if (match !== null) return { text, ...make(Number(match[1]), Number(match[2])) }
  }
  return undefined
}

/** The comment without its stars. */
function bodyOf(comment: string): string {
  return comment
    .replace(/^\/\*\*/, '')
    .replace(/\*\/$/, '')
    .split('\n')
    .map((line) => line.replace(/^\s*\* ?/, '').trimEnd())
    .join('\n')
    .trim()
}

function isAscii(text: string): boolean {
  return [...text].every((letter) => letter >= ' ' && letter <= '~')
}

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim()

/** Reads a whole comment, including its stars. */
export function parseDocstring(comment: string): Docstring {
  const [head = '', ...blocks] = bodyOf(comment).split(/^(?=@\w)|(?<=\s)(?=@(?:throws|source)\b)/m)
  const problems: string[] = []
  const found = {
    equation: [] as string[],
    symbol: [] as SymbolLine[],
    domain: [] as DomainLine[],
    domainOf: [] as string[],
    throws: [] as string[],
    example: [] as string[],
    source: [] as string[],
  }
  for (const block of blocks) {
    const [, tag = '', rest = ''] = /^@(\w+)[ \t]*([\s\S]*)$/.exec(block) ?? []
    const text = rest.trim()
    if (text === '') problems.push(`@${tag} says nothing`)
    else if (tag === 'equation') {
      if (!isAscii(oneLine(text))) problems.push(`@equation "${oneLine(text)}" is not in plain ASCII characters`)
      found.equation.push(oneLine(text))
    } else if (tag === 'symbol') {
      const [symbol, path, unit, ...meaning] = oneLine(text).split(' - ')
      if (symbol === undefined || path === undefined || unit === undefined || meaning.length === 0)
        problems.push(`@symbol "${oneLine(text)}" is not "symbol - parameter - unit - meaning"`)
      else found.symbol.push({ symbol, path, unit, meaning: meaning.join(' - ') })
    } else if (tag === 'domain' && /^as \w+$/.test(text)) found.domainOf.push(text.slice(3))
    else if (tag === 'domain') {
      const match = /^(optional )?([\w.*]+): (.+)$/.exec(oneLine(text))
      const domain = match === null ? undefined : parseDomain(match[3] as string)
      if (match === null || domain === undefined)
        problems.push(`@domain "${oneLine(text)}" is not "[optional ]parameter: above 0", "… from 0 to 1", or another of the forms`)
      else found.domain.push({ path: match[2] as string, optional: match[1] !== undefined, domain })
    } else if (tag === 'throws') found.throws.push(oneLine(text))
    else if (tag === 'example') found.example.push(text)
    else if (tag === 'source') found.source.push(oneLine(text))
    else problems.push(`@${tag} is no tag of ours`)
  }
  const [sentence = '', ...remarks] = head.split(/\n\s*\n/).map(oneLine)
  return {
    sentence,
    remarks: remarks.filter((remark) => remark !== ''),
    equations: found.equation,
    symbols: found.symbol,
    domains: found.domain,
    domainsOf: found.domainOf,
    throws: found.throws,
    examples: found.example,
    sources: found.source,
    problems,
  }
}
