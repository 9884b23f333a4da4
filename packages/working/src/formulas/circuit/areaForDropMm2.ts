import { areaForDropMm2 } from '@strandwise/core/circuit'
import { metal } from '@strandwise/core/materials'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of areaForDropMm2. */
export const areaForDropMm2Formula = closed<Parameters<typeof areaForDropMm2>[0]>({
  id: 'areaForDropMm2',
  call: areaForDropMm2,
  symbols: {
    rho_20: { tex: '\\rho_{20}', unit: 'Ω m', of: (i) => metal(i.material).resistivity20OhmM.nominal, meaning: 'resistivity of the metal at 20 °C' },
    alpha: { tex: '\\alpha_{20}', unit: '1/K', of: (i) => metal(i.material).temperatureCoefficient20PerK.nominal, meaning: 'temperature coefficient at 20 °C' },
    theta: { tex: '\\theta', unit: '°C', of: 'temperatureC', meaning: 'temperature of the conductor' },
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'load current' },
    L_out: { tex: 'L_{out}', unit: 'm', of: 'outLengthM', meaning: 'wire from the source to the load' },
    L_back: { tex: 'L_{back}', unit: 'm', of: 'returnLengthM', meaning: 'wire back' },
    V: { tex: 'V', unit: 'V', of: 'allowedDropV', meaning: 'voltage that the wire may lose' },
  },
  steps: [{ name: 'rho', tex: '\\rho', unit: 'Ω m', meaning: 'resistivity at the temperature', expression: 'rho_20 * (1 + alpha * (theta - 20))' }],
  results: [{ name: 'A', tex: 'A', unit: 'mm²', meaning: 'area of each wire', expression: 'rho * I * (L_out + L_back) * 10^6/V' }],
  source: derived("Ohm's law with the resistance of a uniform conductor"),
  validity: ['wire alone: joints and contacts take their part first', 'the straight line of resistance holds to about 1 % for copper from -60 to 300 °C'],
})
