import { readFileSync } from 'node:fs'
import {
  conductorTemperatureC,
  steadyCurrentA,
  temperatureAfterC,
  thermalTimeConstantS,
  timeToTemperatureS,
  type WireHeat,
  type WireStore,
  wireState,
} from '../packages/core/src/ampacity/index.ts'
import { NoSteadyStateError } from '../packages/core/src/errors/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

type Inputs = WireHeat & WireStore & { readonly currentA: number; readonly limitC: number; readonly timeS: number; readonly initialC: number }
interface GoldenCase {
  readonly id: string
  readonly model: 'wire-steady-temperature' | 'wire-steady-current' | 'wire-transient-linear' | 'wire-transient-nonlinear'
  readonly inputs: Inputs
  readonly expected: Readonly<Record<string, number | boolean | null>>
}

const golden = JSON.parse(readFileSync(new URL('./data/thermalWire.json', import.meta.url), 'utf8')) as readonly GoldenCase[]
const steady = { relative: 1e-8, why: 'the same equations by bisection in 30 digits; twelve digits printed' }
const transient = { absolute: 1e-3, why: 'the same equations by an integrator of order 8; quadrature over the jumps of the piecewise law costs up to 0.1 mK' }

/** Lowest runaway current, from the error's cause. */
function runawayCurrentA(inputs: Inputs): number {
  const runsAway = (currentA: number) => {
    try {
      conductorTemperatureC({ ...inputs, currentA })
    } catch (error) {
      if (error instanceof NoSteadyStateError) return error.cause === 'runaway'
      throw error
    }
    return false
  }
  let [low, high] = [0, 1e5]
  while (high - low > 1e-12 * high) {
    const middle = 0.5 * (low + high)
    if (runsAway(middle)) high = middle
    else low = middle
  }
  return high
}

/** The library's value for a figure's name, by model; a name without entry is not one of our outputs. */
const got: Readonly<Record<GoldenCase['model'], Readonly<Record<string, (i: Inputs) => number>>>> = {
  'wire-steady-temperature': {
    conductorC: conductorTemperatureC,
    surfaceC: (i) => wireState(i).surfaceC,
    resistanceOhmPerM: (i) => wireState(i).resistanceOhmPerM,
    jouleWPerM: (i) => i.currentA ** 2 * wireState(i).resistanceOhmPerM,
    convectionWPerM: (i) => wireState(i).convectionWPerM,
    radiationWPerM: (i) => wireState(i).radiationWPerM,
    rayleigh: (i) => wireState(i).rayleigh,
    reynolds: (i) => wireState(i).reynolds,
    runawayCurrentA,
  },
  'wire-steady-current': {
    currentA: (i) => steadyCurrentA(i) ?? Number.NaN,
    surfaceC: (i) => wireState({ ...i, currentA: steadyCurrentA(i) ?? Number.NaN }).surfaceC,
    convectionWPerM: (i) => wireState({ ...i, currentA: steadyCurrentA(i) ?? Number.NaN }).convectionWPerM,
    radiationWPerM: (i) => wireState({ ...i, currentA: steadyCurrentA(i) ?? Number.NaN }).radiationWPerM,
    resistanceOhmPerM: (i) => wireState({ ...i, currentA: steadyCurrentA(i) ?? Number.NaN }).resistanceOhmPerM,
    rayleigh: (i) => wireState({ ...i, currentA: steadyCurrentA(i) ?? Number.NaN }).rayleigh,
  },
  'wire-transient-linear': {
    temperatureC: temperatureAfterC,
    steadyC: conductorTemperatureC,
    timeConstantS: (i) => thermalTimeConstantS({ ...i, currentA: 0 }),
    effectiveTimeConstantS: thermalTimeConstantS,
  },
  'wire-transient-nonlinear': { temperatureC: temperatureAfterC, steadyC: conductorTemperatureC },
}

function unitOf(name: string): string {
  if (name.endsWith('WPerM')) return 'W/m'
  if (name.endsWith('OhmPerM')) return 'ohm/m'
  return name.endsWith('S') ? 's' : name.endsWith('A') ? 'A' : name.endsWith('C') ? 'C' : '1'
}

function casesOf(model: GoldenCase['model']): readonly ReferenceCase[] {
  return golden
    .filter((one) => one.model === model)
    .flatMap(({ id, inputs, expected }) => {
      const cases = Object.entries(expected).flatMap(([name, value]): readonly ReferenceCase[] => {
        const compute = got[model][name]
        if (compute === undefined || typeof value !== 'number') return []
        const allowed =
          name === 'temperatureC' && model === 'wire-transient-nonlinear' ? transient : value === 0 ? { absolute: 0, why: 'nothing flows' } : steady
        return [{ title: `${id}, ${name}`, printed: String(value), unit: unitOf(name), got: () => compute(inputs), allowed }]
      })
      const { timeTo63S, steadyC } = expected
      if (typeof timeTo63S !== 'number' || typeof steadyC !== 'number') return cases
      const wantedC = inputs.initialC + (1 - Math.exp(-1)) * (steadyC - inputs.initialC)
      const allowed = { relative: 1e-4, why: 'as the temperature: the jumps of the piecewise law, 1 in 75,000 at most' }
      return [
        ...cases,
        { title: `${id}, timeTo63S`, printed: String(timeTo63S), unit: 's', got: () => timeToTemperatureS({ ...inputs, wantedC }) ?? Number.NaN, allowed },
      ]
    })
}

const oneModel = (model: GoldenCase['model'], clause: string): Reference => ({
  source: 'golden cases of one insulated wire in air, solved apart from this library',
  clause,
  status: 'derived',
  cases: casesOf(model),
})

export const reference: readonly Reference[] = [
  oneModel('wire-steady-temperature', 'steady temperature for a current, 16 wires; two of them run away'),
  oneModel('wire-steady-current', 'steady current for a limit, 6 wires'),
  oneModel('wire-transient-linear', 'transient with a constant film, closed form, 4 wires'),
  oneModel('wire-transient-nonlinear', 'transient by correlations, 6 wires'),
]
