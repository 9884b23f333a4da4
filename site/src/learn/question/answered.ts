import { DomainError, NoSteadyStateError } from '@strandwise/core/errors'
import type { Answer, Inputs, Outcome } from './question.ts'

/** Runs the model; a refusal becomes a message at the field of the parameter. */
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

/** An optional number. */
export function optionalNumber(inputs: Inputs, id: string): number | undefined {
  const value = inputs[id]
  return typeof value === 'number' ? value : undefined
}
