import { DomainError, requireWhole } from '../errors/index.ts'

const finestGauge = 40
const thickestGauge = -5
const allowed = 'a gauge from 40 to 6/0, such as "18", "AWG 18", "2/0" or "0000"'

/** An optional mark before or after the number, then a plain number, repeated zeros, or the n/0 form. */
const written = /^(?:awg[\s-]*)?(?:#|no\.?)?\s*(?:([1-9]\d?)|(0{1,6})|([1-6])\s*\/\s*0)\s*(?:awg)?$/i

/**
 * Reads a wire gauge as people write it.
 *
 * @equation n = number; n = 1 - k for k/0 or for k zeros in a row
 * @symbol k - text - 1 - count of zeros: "3/0" and "000" both count three
 * @symbol n - result - 1 - gauge number; 0 is 1/0, -1 is 2/0, -3 is 4/0
 * @throws DomainError where the text is no gauge from 40 to 6/0
 * @example
 * parseAwg('2/0') // -1
 * @source ASTM B258, designation of sizes larger than No. 1 by their zeros
 */
export function parseAwg(text: string): number {
  if (typeof text !== 'string') throw new DomainError('text', text, allowed, undefined, text === undefined ? 'missing' : 'wrong-choice')
  const found = written.exec(text.trim())
  if (found === null) throw new DomainError('text', text, allowed, undefined, 'wrong-choice')
  const zeros = found[2]?.length ?? (found[3] === undefined ? 0 : Number(found[3]))
  if (zeros > 0) return 1 - zeros
  const gauge = Number(found[1])
  if (gauge > finestGauge) throw new DomainError('text', text, allowed, undefined, 'out-of-range')
  return gauge
}

/**
 * Writes a whole wire gauge as the trade does: plain from 1 to 40, then 1/0, 2/0 and on to 6/0.
 *
 * @equation text = n, or (1 - n)/0 for n of 0 and below
 * @symbol n - gauge - 1 - whole gauge number; 0 is 1/0, -3 is 4/0
 * @domain gauge: whole from -5 to 40
 * @throws DomainError outside the domain, and for a fraction of a gauge
 * @example
 * formatAwg(-3) // "4/0"
 * @source ASTM B258, designation of sizes larger than No. 1 by their zeros
 */
export function formatAwg(gauge: number): string {
  requireWhole('gauge', gauge, thickestGauge, finestGauge)
  return gauge > 0 ? String(gauge) : `${1 - gauge}/0`
}
