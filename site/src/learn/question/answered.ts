import { DomainError, NoSteadyStateError } from '@strandwise/core/errors'
import type { Answer, Inputs, Outcome } from './question.ts'

/** The answer, or at its field what a model refuses; fields by the parameter that they fill. */
export function answered(fields: Readonly<Record<string, string>>, fallback: string, run: () => Answer): Outcome {
  try {
    return run()
  } catch (error) {
    if (error instanceof DomainError) {
      const field = Object.entries(fields).find(([parameter]) => error.parameter.endsWith(parameter))?.[1] ?? fallback
      return { field, read: String(error.value), allowed: error.allowed, example: 'the value that stood here first' }
    }
    if (error instanceof NoSteadyStateError)
      return { field: fallback, read: 'this case', allowed: 'one in which the wire settles at a temperature', example: 'less current' }
    throw error
  }
}

/** A number that may be left out. */
export function optionalNumber(inputs: Inputs, id: string): number | undefined {
  const value = inputs[id]
  return typeof value === 'number' ? value : undefined
}
