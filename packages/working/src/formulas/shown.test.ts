import katex from 'katex'
import { expect, test } from 'vitest'
import { asObject } from '../../../../tests/docs/draw.ts'
import { entries } from '../../../../tests/docs/entries.ts'
import { evaluate, parseExample } from '../../../../tests/docs/example.ts'
import { scope } from '../../../../tests/docs/scope.ts'
import { explain } from './explain.ts'
import { formulas } from './formulas.ts'

/** The example calls of every function with a working. */
const calls = entries().flatMap((entry) =>
  Object.hasOwn(formulas, entry.name)
    ? entry.doc.examples.map((code) => [entry.name, asObject(entry, evaluate(parseExample(code).argumentsText, scope))] as const)
    : [],
)

test('each formula is shown', () => {
  expect([...new Set(calls.map(([id]) => id))].sort()).toEqual(Object.keys(formulas).sort())
})

test.each(calls)('%s: finite values, whole sentences, TeX that a typesetter takes', (id, inputs) => {
  const shown = explain(id, Object.freeze(inputs))
  expect(Number.isFinite(shown.value)).toBe(true)
  for (const { name, value, meaning } of shown.symbols) expect(Number.isFinite(value) && meaning.length > 2, name).toBe(true)
  for (const { text, value } of shown.steps) expect(Number.isFinite(value) && text.length > 2, text).toBe(true)
  for (const tex of [shown.formulaTex, shown.substitutedTex, ...shown.symbols.map((one) => one.tex), ...shown.steps.map((one) => one.tex)]) {
    expect(() => katex.renderToString(tex, { throwOnError: true, strict: 'error', output: 'mathml' }), tex).not.toThrow()
  }
  for (const { name } of shown.symbols) expect(shown.plain).toContain(`${name} = `)
  expect(shown.plain).not.toMatch(/undefined|NaN|Infinity|\\/)
})
