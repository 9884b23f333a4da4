import { figures as published } from 'virtual:published-figures'
import type { DerivedCheck, PublishedCheck } from './lesson.ts'
import { figures } from './say.ts'

/** A check as printed on its card. */
export interface CheckedFigure {
  readonly what: string
  readonly status: 'published' | 'derived' | 'read off'
  readonly source: string
  readonly theirs: string
  readonly ours: string
  readonly difference: string
  readonly verdict: string
}

const signed = (value: number): string => `${value < 0 ? '−' : ''}${figures(Math.abs(value), 2)}`
const withUnit = (text: string, unit: string): string => (unit === '1' || unit === '' ? text : `${text} ${unit.replace('ohm', 'Ω').replace('mm2', 'mm²')}`)

/** A smaller difference is not told in figures. */
const leastShare = 1e-5

function difference(theirs: number, ours: number): string {
  if (ours === theirs) return 'none'
  const share = ours / theirs - 1
  if (Math.abs(share) < leastShare) return `below ${figures(100 * leastShare, 1)} %`
  return `${signed(100 * share)} %`
}

/** Digits of our value: one more than the source prints, so that a difference shows. */
const digitsOf = (printed: string): number =>
  printed
    .replace(/e.*$/i, '')
    .replace(/^[+-]?0*\.?0*/, '')
    .replace('.', '').length + 1

/** Runs a check: a printed figure and the library's value, or the lesson's own second solution. */
export function checked(check: PublishedCheck | DerivedCheck): CheckedFigure {
  if (check.kind === 'derived')
    return {
      what: check.what,
      status: check.readOff === true ? 'read off' : 'derived',
      source: check.readOff === true ? check.method : `${check.method} (worked out by us: it proves the arithmetic, not the model)`,
      theirs: withUnit(figures(check.theirs, check.readOff === true ? 2 : 6), check.unit),
      ours: withUnit(figures(check.ours, check.readOff === true ? 3 : 6), check.unit),
      difference: difference(check.theirs, check.ours),
      verdict: check.verdict,
    }
  const found = published.filter((figure) => figure.source.includes(check.source) && figure.title === check.title && figure.clause.includes(check.clause ?? ''))
  const [figure, second] = found
  if (figure === undefined || second !== undefined) throw new Error(`${found.length} figures "${check.title}" of "${check.source}", where there should be one`)
  return {
    what: check.what,
    status: 'published',
    source: [figure.source, figure.edition, figure.clause].filter((part) => part !== undefined && part !== '').join(', '),
    theirs: withUnit(figure.printed, figure.unit),
    ours: withUnit(figures(figure.got, digitsOf(figure.printed)), figure.unit),
    difference: difference(Number(figure.printed), figure.got),
    verdict: check.verdict,
  }
}
