import fc from 'fast-check'
import { expect, test } from 'vitest'
import { asObject, drawnInputs } from '../../../../tests/docs/draw.ts'
import { entries } from '../../../../tests/docs/entries.ts'
import { type ClosedFormula, closed, type Formula, type Inputs, numberAt, valuesOf } from './formula.ts'
import { formulas } from './formulas.ts'
import { parseExpression } from './mathematics.ts'
import { derived } from './sources.ts'

const compiled = new Map<string, { evaluate(scope: Record<string, number>): unknown }>()

function evaluate(expression: string, values: Record<string, number>): number {
  const code = compiled.get(expression) ?? parseExpression(expression).compile()
  compiled.set(expression, code)
  return Number(code.evaluate({ ...values }))
}

/** Relative step of the numerical derivatives in the condition number. */
const step = 1e-6

/** Compares each expression with the core function: they differ by at most 1e-12 times the condition number. */
function compareAt(formula: ClosedFormula, inputs: Inputs): void {
  const given = formula.call(inputs)
  const symbols = valuesOf(formula.symbols(inputs), inputs)
  const at = Object.fromEntries(symbols.map(({ name, value }) => [name, value]))
  for (const [name, value] of Object.entries(at)) expect(Number.isFinite(value), `${formula.id}: ${name} of ${JSON.stringify(inputs)}`).toBe(true)
  for (const result of formula.results(inputs)) {
    const run = (values: Record<string, number>): number => {
      const all = { ...values }
      for (const one of formula.steps(inputs)) all[one.name] = evaluate(one.expression, all)
      return evaluate(result.expression, all)
    }
    const wanted = result.of === undefined ? Number(given) : numberAt(given, result.of)
    const sensitivity = symbols.reduce((sum, { name, value, unit }) => {
      // Scale of a temperature: its distance from absolute zero.
      const moved = step * (unit === '°C' ? Math.abs(value) + 273.15 : Math.abs(value))
      const slope = (run({ ...at, [name]: value + moved }) - run({ ...at, [name]: value - moved })) / (2 * step)
      return sum + (Number.isFinite(slope) ? Math.abs(slope) : 0)
    }, 0)
    const got = run(at)
    const allowed = 1e-12 * (Math.abs(wanted) + sensitivity) + Number.MIN_VALUE
    expect(
      Math.abs(got - wanted),
      `${formula.id}, ${result.name}: ${got} on the page, ${wanted} from the function, for ${JSON.stringify(inputs)}`,
    ).toBeLessThanOrEqual(allowed)
  }
}

/** The function's result; undefined if it refuses the inputs. */
function accepted(formula: Formula, inputs: Inputs): boolean {
  try {
    formula.call(inputs)
    return true
  } catch (error) {
    if (error instanceof Error && /^(DomainError|UnknownEntryError|NoSteadyStateError)$/.test(error.name)) return false
    throw error
  }
}

const functions = new Map(entries().map((entry) => [entry.name, entry]))

test.each(Object.entries(formulas).filter(([, formula]) => formula.kind === 'closed'))('%s: the page shows what the function computes', (id, formula) => {
  const entry = functions.get(id)
  if (entry === undefined || formula.kind !== 'closed') throw new Error(`no function is called ${id}`)
  fc.assert(
    fc.property(drawnInputs(entry), (drawn) => {
      const inputs = asObject(entry, drawn)
      fc.pre(accepted(formula, inputs))
      compareAt(formula, inputs)
    }),
    { numRuns: 150 },
  )
})

test('a formula that is not the function is told', () => {
  const wrong = closed<{ readonly a: number; readonly b: number }>({
    id: 'wrong',
    call: ({ a, b }) => a + b,
    symbols: { a: { tex: 'a', unit: '1', of: 'a', meaning: 'first' }, b: { tex: 'b', unit: '1', of: 'b', meaning: 'second' } },
    results: [{ name: 'c', tex: 'c', unit: '1', meaning: 'sum', expression: 'a + 1.000000001 * b' }],
    source: derived('a slip of one part in a thousand million'),
    validity: [],
  })
  expect(() => compareAt(wrong, { a: 1, b: 2 })).toThrow('on the page')
  compareAt(wrong, { a: 1, b: 0 })
})
