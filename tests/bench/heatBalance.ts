import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { conductorTemperatureC, wireState } from '@strandwise/core'
import { grid, insulationConductivityWPerMK, type Point } from './grid.ts'
import { type Candidate, measure } from './measure.ts'
import { plainSecant, takeEvaluations } from './plainSecant.ts'
import type { Figure } from './report.ts'

const inputsOf = ({ conductorC: _, ...point }: Point) => ({ ...point, insulationConductivityWPerMK })

/** Mean time in C in nanoseconds, and the mean temperature found; undefined without a compiler. */
function inC(points: readonly Point[]): { readonly ns: number; readonly meanC: number } | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'strandwise-bench-'))
  try {
    const program = join(folder, 'secant')
    execFileSync('cc', ['-O3', '-o', program, fileURLToPath(new URL('./plainSecant.c', import.meta.url)), '-lm'], { stdio: 'ignore' })
    const input = points
      .map((point) => `${point.areaMm2} ${point.insulationThicknessMm} ${point.ambientC} ${point.correlation === 'morgan' ? 1 : 0} ${point.currentA}`)
      .join('\n')
    const [ns, meanC] = execFileSync(program, { input, encoding: 'utf8' }).split(' ').map(Number) as [number, number]
    return { ns, meanC }
  } catch {
    return undefined
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The heat balance over the design's grid: evaluations, residual, agreement, and time against a plain secant in JS and in C. */
export function heatBalance(): readonly Figure[] {
  const points = grid()
  const inputs = points.map(inputsOf)
  const states = inputs.map((input) => wireState(input))
  const residuals = states.map(({ residual, convectionWPerM, radiationWPerM }) => Math.abs(residual) / Math.min(1, Math.abs(convectionWPerM + radiationWPerM)))
  const away = states.map(({ conductorC }, index) => Math.abs(conductorC - (points[index] as Point).conductorC))
  takeEvaluations()
  const plain = points.map(plainSecant)
  const plainEvaluations = takeEvaluations() / points.length
  const apart = Math.max(...plain.map((temperatureC, index) => Math.abs(temperatureC - (points[index] as Point).conductorC)))
  // Step through the grid, coprime to its length, so that a round samples everywhere.
  const step = 2477
  const over = <T>(list: readonly T[], one: (item: T) => number): Candidate => {
    let next = 0
    return (count) => {
      let sum = 0
      for (let k = 0; k < count; k += 1) {
        sum += one(list[next] as T)
        next = (next + step) % list.length
      }
      return sum
    }
  }
  const [library, secant] = measure({ library: over(inputs, conductorTemperatureC), secant: over(points, plainSecant) }).map(({ nsPerCall }) => nsPerCall) as [
    number,
    number,
  ]
  const c = inC(points)
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length
  return [
    { what: 'points of the grid', value: points.length, unit: '' },
    { what: 'evaluations of the terms, average', value: mean(states.map(({ evaluations }) => evaluations)), unit: '', atMost: 6 },
    { what: 'evaluations, most', value: Math.max(...states.map(({ evaluations }) => evaluations)), unit: '' },
    { what: 'heat residual, largest (of the flow below 1 W/m)', value: Math.max(...residuals), unit: 'W/m', atMost: 1e-9 },
    { what: 'conductor, farthest from the temperature the current was made for', value: Math.max(...away), unit: 'K', atMost: 1e-6 },
    { what: 'plain secant, evaluations, average', value: plainEvaluations, unit: '' },
    { what: 'plain secant, farthest from it', value: apart, unit: 'K', note: 'Morgan jumps at its band edges: a secant may not settle there' },
    {
      what: 'time against the plain secant in JS',
      value: library / secant,
      unit: 'times its time',
      atMost: 1,
      note: `${library.toFixed(0)} ns, secant ${secant.toFixed(0)} ns`,
    },
    ...(c === undefined
      ? []
      : [
          {
            what: 'time against the plain secant in C, -O3',
            value: library / c.ns,
            unit: 'times its time',
            note: `C ${c.ns.toFixed(0)} ns, mean ${c.meanC.toFixed(6)} C, JS ${mean(plain).toFixed(6)} C`,
          },
        ]),
  ]
}
