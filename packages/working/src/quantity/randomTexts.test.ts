import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type QuantityKind, quantityKinds } from './kinds.ts'
import { parseQuantity } from './parseQuantity.ts'
import { QuantityError } from './quantityError.ts'

const kinds = Object.keys(quantityKinds) as QuantityKind[]
/** Fragments of quantities, so that random texts resemble real ones. */
const pieces = [
  ...'0123456789',
  ...'.,-+/ xX*:()±°%\'"#^',
  ...['\u00a0', '\u2009', '\u202f', '\u2212', '×', '½', '⅛', '²', '³', '⁻¹', '10^', 'e', 'e3', '1,234', '1/8', '0000', '2/0', ' per ', '/1000 ft'],
  ...[
    'mm',
    'mm²',
    'cmil',
    'kcmil',
    'AWG',
    'in',
    'ft',
    'm',
    'M',
    'k',
    'Ω',
    '\u2126',
    'ohm',
    'A',
    'V',
    'W',
    'N',
    'kg',
    'lb',
    'oz',
    's',
    'min',
    'h',
    'C',
    'F',
    'K',
    'R',
  ],
  ...['Pa', 'psi', 'µ', 'μ', 'm/s', 'K/W', 'Hz', 'rpm', 'strands of', 'sq', '__proto__', 'constructor', '\ud83d\ude00', '\ufdfa', '\0', '\n'],
]
const likeText = fc.array(fc.constantFrom(...pieces), { maxLength: 14 }).map((parts) => parts.join(''))
const someKind = fc.constantFrom(...kinds)
/** A number and a unit of the kind, with what people write before, between and after. */
const nearly = someKind.chain((kind) =>
  fc.tuple(
    fc
      .tuple(
        fc.constantFrom('', '', '-', '\u2212', '+', '('),
        fc.constantFrom('1', '0', '12', '1,5', '1,234', '0.25', '.5', '3/4', '1 1/8', '7/0.3', '1e3', '12 500', '9999', '2/0', '19 x 32', '½'),
        fc.constantFrom(' ', '', '\u00a0', '\u202f', '±0.1 '),
        fc.constantFrom(...quantityKinds[kind].examples.split(', ').map((example) => example.replace(/^[\d./ ]+/, ''))),
        fc.constantFrom('', '', '', ' ', '.', ')', ' 6 in', ' 30 s', ' (1 in)', '/m', '²'),
      )
      .map((parts) => parts.join('')),
    fc.constant(kind),
  ),
)
const anything = fc.oneof(
  { weight: 4, arbitrary: fc.tuple(likeText, someKind) },
  { weight: 4, arbitrary: nearly },
  { weight: 1, arbitrary: fc.tuple(fc.string({ unit: 'grapheme', maxLength: 40 }), someKind) },
  { weight: 1, arbitrary: fc.tuple(fc.string({ unit: 'binary', maxLength: 300 }), someKind) },
)

test('100,000 random texts give a number in range or a QuantityError', { timeout: 60_000 }, () => {
  let taken = 0
  fc.assert(
    fc.property(anything, ([text, kind]) => {
      try {
        const value = parseQuantity(text, kind)
        taken++
        expect(Number.isFinite(value) && value >= (quantityKinds[kind].lowest ?? Number.NEGATIVE_INFINITY), `${text} as ${kind}: ${value}`).toBe(true)
      } catch (error) {
        if (!(error instanceof QuantityError)) throw error
        expect(error.text).toBe(text)
        // If a text has one fault, each suggested reading parses; if it has two, a reading may still have the other.
        for (const reading of error.readings ?? []) {
          try {
            parseQuantity(reading, kind)
          } catch (second) {
            if (!(second instanceof QuantityError)) throw second
          }
        }
      }
    }),
    { numRuns: 100_000 },
  )
  expect(taken).toBeGreaterThan(5000)
})

test.each([
  ['digits', '1'.repeat(119)],
  ['groups', `${'123 '.repeat(29)}x`],
  ['fractions', '1/1/'.repeat(29)],
  ['strands', '1x'.repeat(59)],
  ['mixed', '1 1/1 '.repeat(19)],
  ['parts', '1 ft 1 in '.repeat(11)],
  ['brackets', '('.repeat(119)],
  ['spreads', '1±'.repeat(59)],
  ['spaces', `1${' '.repeat(117)}m`],
  ['inverse', `1 ${'m.'.repeat(56)}-1`],
  ['a megabyte', 'm'.repeat(1_000_000)],
  // Parsing takes microseconds; quadratic time or worse would hit the test's time limit.
])('no text hangs the reader: %s', (_name, text) => {
  for (const kind of kinds) {
    for (let repeat = 0; repeat < 100; repeat++) {
      try {
        parseQuantity(text, kind)
      } catch (error) {
        expect(error).toBeInstanceOf(QuantityError)
      }
    }
  }
})
