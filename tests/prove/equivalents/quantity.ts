import type { Equivalents } from '../equivalent.ts'
import { atOneValue } from './reasons.ts'

const types = 'the check is for the types'
const quick = 'the long way gives the same, slower'
const edge = atOneValue

export const quantity: Equivalents = {
  'working/quantity/construction.ts': [
    ['if (error instanceof DomainError)', ['true'], `parseAwg throws no other error: ${types}`],
    ['const unit = number === null ? undefined', ['false'], `a broken size has been refused before: ${types}`],
    ['return number !== null && isUnit(unit)', ['true', 'number !== null || isUnit(unit)'], `a broken size has been refused before: ${types}`],
  ],
  'working/quantity/formatQuantity.ts': [
    ['if (lowest !== undefined &&', ['true'], `nothing is below what is undefined: ${types}`],
    ["const symbol = fits?.[1] ?? ''", ['fits[1]'], `the last unit takes every size: ${types}`],
    ['if (unit === undefined) throw new UnknownEntryError', ['false', '["Stryker'], `every unit that is printed is in the table: ${types}`],
    ["valueM < 0 ? '-'", ['valueM <= 0'], 'nothing at all is never printed in feet'],
  ],
  'working/quantity/normalise.ts': [
    ['const plain = /^', ['/^[\\x21-\\x7e](', '/^[\\x21-\\x7e]+(?: [\\x21-\\x7e]+)$', '/^[\\x21-\\x7e]+(?: [\\x21-\\x7e])*'], quick],
  ],
  'working/quantity/parseQuantity.ts': [
    ['const unit = found === null', ['true', "found[2] && ''"], quick],
    ['if (unit !== undefined) return inRange(', ['false'], quick],
    ['if (unit !== undefined) return inRange(', ['found[1]'], `a unit is there only where the form was found: ${types}`],
    ['function simpleUnit(', ['{}'], quick],
    ['unitsOf(kind).get(written) ??', ['unitsOf(kind).get(written) &&'], quick],
    ['written.replace(/[\\u00b5', ['/[^\\u00b5', '() => undefined', 'spelling[character] && character'], quick],
    ['if (lowest !== undefined &&', ['true'], `nothing is below what is undefined: ${types}`],
    ["plain.indexOf('±', spread + 1) >= 0", ["plain.indexOf('±', spread + 1) > 0"], 'the second sign stands after the first'],
    ['const unit = plain', ['plain.slice(tolerance.end).replace('], 'spaces before a unit are passed over'],
  ],
  'working/quantity/parts.ts': [
    ['if (number === null ||', ['false'], `a number stands there: ${types}`],
    ["letters.exec(plain)?.[0] ?? ''", ['letters.exec(plain)[0]'], `it finds at least nothing: ${types}`],
    ['reading.value < unitBefore * (1 - 1e-12)', ['reading.value <='], edge],
  ],
  'working/quantity/quantityError.ts': [['if (readings) this.readings', ['true'], `the field is there without it: ${types}`]],
  'working/quantity/readNumber.ts': [
    ['if (found === null) return null', ['false'], `the form can be empty, and is always found: ${types}`],
    ["const before = sign < 0 ? '-'", ['sign <= 0'], 'the sign is 1 or -1'],
    ['const value = Number(exponent === 0', ['false'], quick],
    ["if (found[7] === ',' && decimals?.length", ['decimals.length'], `decimals follow the comma: ${types}`],
  ],
  'working/quantity/readOne.ts': [
    ['if (unit !== undefined) return inOwnUnit(', ['false'], quick],
    ['half: 0.5 * scale', ['found[3].length'], `digits follow the letter: ${types}`],
  ],
  'working/quantity/reading.ts': [
    ['unit.power === 0 ? number.value', ['false'], quick],
    ['if (unit !== undefined) return unit', ['false'], quick],
  ],
  'working/quantity/units.ts': [
    ['power < 0 ? times', ['power <= 0'], edge],
    ['if (known !== undefined) return known', ['false'], quick],
    ["prefixes[letter] ?? ['', 0]", ['[]'], `every letter is in the table: ${types}`],
    ['const larger = exponent > 0', ['exponent >= 0'], 'no prefix is 1'],
    ['const smaller = exponent < 0', ['exponent <= 0'], 'no prefix is 1'],
    ['unit.offset * (smaller / larger)', ['smaller * larger'], 'a unit with an offset takes small prefixes alone'],
    ['.replace(/^(.+)[ *.]', ['/(.+)'], 'its beginning takes all that stands before'],
    ['.replace(/^(.+)[ *.]', ['/^(.+)[ *.]([a-z]+)\\^?-([123])/i'], 'what is left over makes no unit'],
    ['if (slash <= 0) return undefined', ['slash < 0'], 'no unit goes by an empty name'],
    ['const count = /^1', ['/1(?:'], 'what is left over makes no unit'],
    ['if (quotient !== undefined && slash > 0)', ['slash >= 0'], 'no unit goes by an empty name'],
    ['if (units.has(name)) return [name]', ['false'], quick],
    [
      'const size = unit.times / unit.over',
      ['unit.times * unit.over'],
      'of names that differ by case, equal sizes have equal factors, and the others differ in both',
    ],
    ['if (!found.has(size))', ['true'], 'of two spellings of one unit either will do'],
  ],
}
