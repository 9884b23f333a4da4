import * as core from '@strandwise/core'
import * as planner from '@strandwise/planner'
import * as working from '@strandwise/working'

/** Every export by name, the scope of an example. */
export const scope: Readonly<Record<string, unknown>> = { ...core, ...working, ...planner }

/** The exported function of that name. */
export function functionOf(name: string): (...inputs: unknown[]) => unknown {
  const found = scope[name]
  if (typeof found !== 'function') throw new Error(`"${name}" is no exported function`)
  return found as (...inputs: unknown[]) => unknown
}
