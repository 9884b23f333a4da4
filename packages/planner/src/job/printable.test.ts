import { expect, test } from 'vitest'
import { issueLine } from './jobError.ts'
import { printable } from './printable.ts'

test.each([
  ['an escape sequence', '\u001b[2J', '\\u{1b}[2J'],
  ['a line of its own', 'a\nverdict: sound', 'a\\u{a}verdict: sound'],
  ['C1 control', '\u009b31m', '\\u{9b}31m'],
  ['the other reading direction', 'a\u202eb', 'a\\u{202e}b'],
  ['half a character', '\ud83d', '\\u{d83d}'],
  ['a line separator', '\u2028', '\\u{2028}'],
])('%s is shown as its code point', (_title, text, shown) => {
  expect(printable(text)).toBe(shown)
})

test.each(['4,2 mm² at 20 °C', 'Bilgenpumpe, Zuleitung „rot“', '水泵', '😀'])('%s stays as it is', (text) => {
  expect(printable(text)).toBe(text)
})

test('an issue is one line, whatever its path and value contain', () => {
  const line = issueLine({ path: 'wire.\u001b[31m\n', value: 'x\r\ny\u0007', allowed: 'a', example: '' })
  expect(line).toBe('wire.\\u{1b}[31m\\u{a}: is "x\\u{d}\\u{a}y\\u{7}"; allowed: a')
})
