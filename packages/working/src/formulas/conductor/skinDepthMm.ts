import { skinDepthMm } from '@strandwise/core/conductor'
import { metal } from '@strandwise/core/materials'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of skinDepthMm. */
export const skinDepthMmFormula = closed<Parameters<typeof skinDepthMm>[0]>({
  id: 'skinDepthMm',
  call: skinDepthMm,
  symbols: {
    rho_20: { tex: '\\rho_{20}', unit: 'Ω m', of: (i) => metal(i.material).resistivity20OhmM.nominal, meaning: 'resistivity of the metal at 20 °C' },
    alpha: { tex: '\\alpha_{20}', unit: '1/K', of: (i) => metal(i.material).temperatureCoefficient20PerK.nominal, meaning: 'temperature coefficient at 20 °C' },
    theta: { tex: '\\theta', unit: '°C', of: 'temperatureC', meaning: 'temperature of the metal' },
    f: { tex: 'f', unit: 'Hz', of: 'frequencyHz', meaning: 'frequency' },
  },
  steps: [{ name: 'rho', tex: '\\rho', unit: 'Ω m', meaning: 'resistivity at the temperature', expression: 'rho_20 * (1 + alpha * (theta - 20))' }],
  results: [{ name: 'delta', tex: '\\delta', unit: 'mm', meaning: 'skin depth', expression: 'sqrt(rho/(pi * 4e-7 * pi * f)) * 1000' }],
  source: derived('classical eddy-current theory, plane conductor'),
  validity: ['metals that are not magnetic', 'the straight line of resistance holds to about 1 % for copper from -60 to 300 °C'],
})
