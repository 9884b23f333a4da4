import type { PracticeRule } from '@strandwise/core/rules'

const fieldWords: Readonly<Record<string, string>> = {
  circuit: 'circuit',
  rules: 'rules',
  location: 'place',
  vibration: 'vibration',
  supplyV: 'supply in volt',
  currentA: 'current in ampere',
  areaMm2: 'area in mm²',
  hottestC: 'hottest air in °C',
  coldestC: 'coldest air in °C',
  ambientC: 'air in °C',
  method: 'method',
  tool: 'tool',
  solder: 'solder',
  sleeve: 'sleeve',
  insulation: 'insulation',
  damage: 'damage',
  step: 'while',
  reading: 'reading',
  situation: 'where',
  fuse: 'fuse',
  terminal: 'terminal',
  flammableVapour: 'vapour',
  flexes: 'moves',
}

const opWords = { '=': '', '!=': 'not ', '<': 'below ', '<=': 'at most ', '>': 'above ', '>=': 'at least ' } as const

/** The conditions of a rule as a short head: "tool hot-air; place splash or submerged". */
export function conditionWords(conditions: PracticeRule['conditions']): string {
  return conditions
    .map(
      ({ field, op, values }) =>
        `${fieldWords[field] ?? field} ${opWords[op]}${values.map((value) => (value === true ? 'yes' : value === false ? 'no' : String(value).replaceAll('-', ' '))).join(' or ')}`,
    )
    .join('; ')
}
