import { readFileSync } from 'node:fs'
import { NoSteadyStateError } from '../packages/core/src/errors/index.ts'
import { acceptanceResistanceOhm, type JointSite, jointState, jointTemperatureC } from '../packages/core/src/joint/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

interface GoldenCase {
  readonly id: string
  readonly inputs: JointSite & { readonly jointResistanceOhm: number; readonly jointResistanceCoefficientPerK: number }
  readonly expected: {
    readonly hasSteadyState: boolean
    readonly jointC?: number
    readonly farC?: readonly number[]
    readonly wireFlowW?: readonly number[]
    readonly sleeveEndC?: readonly number[]
    readonly largestCurrentA?: number
  }
}

const cases = JSON.parse(readFileSync(new URL('./data/thermalJointService.json', import.meta.url), 'utf8')) as readonly GoldenCase[]
const linear = (golden: GoldenCase): boolean => golden.inputs.conductors[0].filmWPerM2K !== undefined
const allowed = { relative: 1e-9, why: 'closed forms and quadratures; the golden figures carry twelve digits and state errors up to 1e-7 K' }

/** The largest current, from the error for a joint without a steady state. */
function largestCurrentOf(inputs: GoldenCase['inputs']): number {
  try {
    jointTemperatureC(inputs)
  } catch (error) {
    if (error instanceof NoSteadyStateError && error.cause === 'runaway') return error.largestCurrentA
    throw error
  }
  return Number.NaN
}

function figures(golden: GoldenCase): ReferenceCase[] {
  const { id, inputs, expected } = golden
  if (!expected.hasSteadyState) {
    return [
      {
        title: `${id}: no steady joint at ${inputs.currentA} A, largest current`,
        printed: String(expected.largestCurrentA),
        unit: 'A',
        got: () => largestCurrentOf(inputs),
        allowed,
      },
    ]
  }
  const list = (name: 'farC' | 'wireFlowW' | 'sleeveEndC', unit: string): ReferenceCase[] =>
    (expected[name] ?? []).map((value, k) => ({
      title: `${id}: ${name}.${k}`,
      printed: String(value),
      unit,
      got: () => jointState(inputs)[name]?.[k] ?? Number.NaN,
      allowed,
    }))
  const joint = { title: `${id}: jointC`, printed: String(expected.jointC), unit: 'C', got: () => jointTemperatureC(inputs), allowed }
  // Inverse check: the hot resistance that gives the golden temperature is the golden one.
  const hot = inputs.jointResistanceOhm * (1 + inputs.jointResistanceCoefficientPerK * ((expected.jointC ?? Number.NaN) - 20))
  const back: ReferenceCase = {
    title: `${id}: resistance accepted at the golden temperature`,
    printed: String(hot),
    unit: 'ohm',
    got: () => acceptanceResistanceOhm({ ...inputs, jointLengthMm: 1, limitC: expected.jointC ?? Number.NaN }).resistanceOhm,
    allowed: { relative: 1e-7, why: 'near the far temperature the resistance answers to the twelve digits of the temperature' },
  }
  return [joint, ...list('farC', 'C'), ...list('wireFlowW', 'W'), ...list('sleeveEndC', 'C'), back]
}

export const reference: readonly Reference[] = [
  {
    source: 'joints in service between two long wires: closed form of the fins, finite volumes on two grids beside it',
    clause: 'golden cases, constant film coefficients',
    status: 'derived',
    cases: cases.filter(linear).flatMap(figures),
  },
  {
    source: 'joints in service between two long wires: first integral by adaptive quadrature and order-8 shooting, finite volumes on two grids beside it',
    clause: 'golden cases, natural convection and radiation',
    status: 'derived',
    cases: cases.filter((golden) => !linear(golden)).flatMap(figures),
  },
]
