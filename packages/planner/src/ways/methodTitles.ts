import type { MethodName } from '@strandwise/core'

/** Titles of the methods. */
export const methodTitles: Readonly<Record<MethodName, string>> = {
  'soldered-lap': 'soldered lap',
  'soldered-lineman-splice': 'wrapped and soldered splice',
  'crimped-butt-splice': 'crimped butt splice',
  'crimped-and-sealed-butt-splice': 'crimped and sealed butt splice',
  'solder-sleeve': 'solder sleeve',
  'new-crimped-terminal': 'new crimped terminal',
  'replace-the-run': 'new run of wire',
}

/** Soldered methods. */
export const solderedMethods: readonly MethodName[] = ['soldered-lap', 'soldered-lineman-splice', 'solder-sleeve']

/** True if wire is joined to wire. */
export const isSplice = (method: MethodName): boolean => method !== 'new-crimped-terminal' && method !== 'replace-the-run'
