import type { AskedChoice } from './question.ts'

/** Choice of units for the answer. */
export const unitsField: AskedChoice = {
  kind: 'choice',
  id: 'units',
  title: 'Units of the answer',
  choices: [
    { value: 'metric', label: 'metric' },
    { value: 'inch', label: 'inch' },
    { value: 'both', label: 'both side by side' },
  ],
  typed: 'metric',
}
