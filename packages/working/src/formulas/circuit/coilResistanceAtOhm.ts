import { circuitDefaults, coilResistanceAtOhm } from '@strandwise/core/circuit'
import { metal } from '@strandwise/core/materials'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of coilResistanceAtOhm. */
export const coilResistanceAtOhmFormula = closed<Parameters<typeof coilResistanceAtOhm>[0]>({
  id: 'coilResistanceAtOhm',
  call: coilResistanceAtOhm,
  symbols: {
    R_1: { tex: 'R_1', unit: 'Ω', of: 'resistanceOhm', meaning: 'resistance as measured' },
    theta_1: { tex: '\\theta_1', unit: '°C', of: 'atC', meaning: 'temperature of the winding then' },
    theta_2: { tex: '\\theta_2', unit: '°C', of: 'wantedC', meaning: 'temperature asked for' },
    alpha: {
      tex: '\\alpha_{20}',
      unit: '1/K',
      of: (i) => metal(i.material ?? circuitDefaults.coilMaterial).temperatureCoefficient20PerK.nominal,
      meaning: 'temperature coefficient of the metal at 20 °C',
    },
  },
  results: [
    {
      name: 'R_2',
      tex: 'R_2',
      unit: 'Ω',
      meaning: 'resistance at the temperature asked for',
      expression: 'R_1 * (1 + alpha * (theta_2 - 20))/(1 + alpha * (theta_1 - 20))',
    },
  ],
  source: published('IEC 60028', 'temperature coefficient rule'),
  validity: ['the straight line of resistance holds to about 1 % for copper from -60 to 300 °C'],
})
