import { resistivityOhmM } from '@strandwise/core/conductor'
import { metal } from '@strandwise/core/materials'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of resistivityOhmM. */
export const resistivityOhmMFormula = closed<{ readonly material: Parameters<typeof resistivityOhmM>[0]; readonly temperatureC: number }>({
  id: 'resistivityOhmM',
  call: ({ material, temperatureC }) => resistivityOhmM(material, temperatureC),
  symbols: {
    rho_20: { tex: '\\rho_{20}', unit: 'Ω m', of: (i) => metal(i.material).resistivity20OhmM.nominal, meaning: 'resistivity of the metal at 20 °C' },
    alpha: { tex: '\\alpha_{20}', unit: '1/K', of: (i) => metal(i.material).temperatureCoefficient20PerK.nominal, meaning: 'temperature coefficient at 20 °C' },
    theta: { tex: '\\theta', unit: '°C', of: 'temperatureC', meaning: 'temperature of the metal' },
  },
  results: [{ name: 'rho', tex: '\\rho', unit: 'Ω m', meaning: 'resistivity at the temperature', expression: 'rho_20 * (1 + alpha * (theta - 20))' }],
  source: published('IEC 60028', 'temperature coefficient rule; other metals as the table of metals states'),
  validity: ['the straight line of resistance holds to about 1 % for copper from -60 to 300 °C', 'below the melting point'],
})
