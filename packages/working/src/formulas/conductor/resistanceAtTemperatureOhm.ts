import { conductorDefaults, resistanceAtTemperatureOhm } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of resistanceAtTemperatureOhm. */
export const resistanceAtTemperatureOhmFormula = closed<Parameters<typeof resistanceAtTemperatureOhm>[0]>({
  id: 'resistanceAtTemperatureOhm',
  call: resistanceAtTemperatureOhm,
  symbols: {
    R_1: { tex: 'R_1', unit: 'Ω', of: 'resistanceOhm', meaning: 'resistance as measured' },
    theta_1: { tex: '\\theta_1', unit: '°C', of: 'atC', meaning: 'its temperature' },
    theta_2: { tex: '\\theta_2', unit: '°C', of: 'wantedC', meaning: 'temperature wanted' },
    alpha: { tex: '\\alpha', unit: '1/K', of: 'coefficientPerK', meaning: 'temperature coefficient at the base' },
    theta_b: { tex: '\\theta_b', unit: '°C', of: (i) => i.coefficientAtC ?? conductorDefaults.temperatureC, meaning: 'base of the coefficient' },
  },
  results: [
    {
      name: 'R_2',
      tex: 'R_2',
      unit: 'Ω',
      meaning: 'resistance at the temperature wanted',
      expression: 'R_1 * (1 + alpha * (theta_2 - theta_b))/(1 + alpha * (theta_1 - theta_b))',
    },
  ],
  source: published('IEC 60028 and IEC 60228', 'temperature correction'),
  validity: ['the straight line of resistance holds to about 1 % for copper from -60 to 300 °C'],
})
