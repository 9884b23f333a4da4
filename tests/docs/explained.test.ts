import { planRepair } from '@strandwise/planner'
import { demoJobs } from '@strandwise/planner/demo'
import { explain } from '@strandwise/working/formulas'
import { expect, test } from 'vitest'
import { type Noted, notedIn, printsOneOf } from './explained.ts'

const noted = Object.entries(demoJobs).flatMap(([name, job]) => notedIn(name, planRepair(job)))

const numbersOf = ({ working }: Noted): readonly number[] => {
  const { value, steps } = explain(working.id, working.inputs)
  return [value, ...steps.flatMap((step) => step.value ?? [])]
}

test('every working of the demo jobs is explained, and a figure that it gives is printed with the same digits', () => {
  expect(noted.length).toBeGreaterThan(400)
  for (const one of noted) {
    const numbers = numbersOf(one)
    if (one.working.gives === undefined) continue
    expect(one.values.length, one.at).toBeGreaterThan(0)
    expect(
      one.values.some((value) => printsOneOf(value, numbers)),
      `${one.at} gives ${one.working.gives}: ${numbers}`,
    ).toBe(true)
  }
})

test('a working that gives no figure of its own feeds another one', () => {
  const feeding = noted.filter(({ working }) => working.gives === undefined)
  expect([...new Set(feeding.map(({ working }) => working.id))]).toEqual(['filletConductanceSPerM'])
  const fed = new Set(noted.flatMap(({ working }) => Object.values(working.inputs)))
  for (const one of feeding) expect(fed, one.at).toContain(numbersOf(one)[0])
})
