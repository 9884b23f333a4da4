import type { Equivalents } from '../equivalent.ts'

export const tables: Equivalents = {
  'core/tables/maximumResistance.ts': [
    ['if (i.conductorClass === undefined)', ['false', ';'], 'requireChoice refuses it in the same words: the check is for the types'],
  ],
}
