import { conductorDefaults, massKgPerM } from '@strandwise/core/conductor'
import { metal } from '@strandwise/core/materials'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of massKgPerM. */
export const massKgPerMFormula = closed<Parameters<typeof massKgPerM>[0]>({
  id: 'massKgPerM',
  call: massKgPerM,
  symbols: {
    D: { tex: '\\rho', unit: 'kg/m³', of: (i) => metal(i.material).densityKgPerM3.nominal, meaning: 'density of the metal' },
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area of the conductor, square to its strands' },
    K: { tex: 'K', unit: '1', of: (i) => i.layFactor ?? conductorDefaults.layFactor, meaning: 'length of a strand over length of the wire' },
  },
  results: [{ name: 'm', tex: "m'", unit: 'kg/m', meaning: 'mass of a metre', expression: 'D * 10^-6 * A * K' }],
  source: derived('geometry'),
  validity: ['bare metal alone'],
})
