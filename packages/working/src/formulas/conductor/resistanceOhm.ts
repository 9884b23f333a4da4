import { conductorDefaults, resistanceOhm } from '@strandwise/core/conductor'
import { metal } from '@strandwise/core/materials'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of resistanceOhm. */
export const resistanceOhmFormula = closed<Parameters<typeof resistanceOhm>[0]>({
  id: 'resistanceOhm',
  call: resistanceOhm,
  symbols: {
    rho_20: { tex: '\\rho_{20}', unit: 'Ω m', of: (i) => metal(i.material).resistivity20OhmM.nominal, meaning: 'resistivity of the metal at 20 °C' },
    alpha: { tex: '\\alpha_{20}', unit: '1/K', of: (i) => metal(i.material).temperatureCoefficient20PerK.nominal, meaning: 'temperature coefficient at 20 °C' },
    theta: { tex: '\\theta', unit: '°C', of: 'temperatureC', meaning: 'temperature of the metal' },
    K: { tex: 'K', unit: '1', of: (i) => i.layFactor ?? conductorDefaults.layFactor, meaning: 'length of a strand over length of the wire' },
    L: { tex: 'L', unit: 'm', of: 'lengthM', meaning: 'length of the wire, one way' },
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area of the conductor, square to its strands' },
  },
  steps: [{ name: 'rho', tex: '\\rho', unit: 'Ω m', meaning: 'resistivity at the temperature', expression: 'rho_20 * (1 + alpha * (theta - 20))' }],
  results: [{ name: 'R', tex: 'R', unit: 'Ω', meaning: 'resistance from end to end', expression: 'rho * K * L * 10^6/A' }],
  source: published('IEC 60028', 'temperature coefficient rule; geometry of the lay'),
  validity: ['the straight line of resistance holds to about 1 % for copper from -60 to 300 °C'],
})
