import { airProperties, heatDefaults } from '@strandwise/core/heat'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of airProperties. */
export const airPropertiesFormula = closed<{ readonly temperatureC: number; readonly pressurePa: number | undefined }>({
  id: 'airProperties',
  call: ({ temperatureC, pressurePa }) => airProperties(temperatureC, pressurePa),
  symbols: {
    theta: { tex: '\\theta', unit: '°C', of: 'temperatureC', meaning: 'temperature of the film' },
    p: { tex: 'p', unit: 'Pa', of: (i) => i.pressurePa ?? heatDefaults.pressurePa, meaning: 'absolute pressure' },
  },
  steps: [{ name: 'T', tex: 'T', unit: 'K', meaning: 'temperature on the absolute scale', expression: 'theta + 273.15' }],
  results: [
    { name: 'rho', tex: '\\rho', unit: 'kg/m³', meaning: 'density', expression: 'p * 0.0289586/(8.314462618 * T)', of: 'densityKgPerM3' },
    { name: 'mu', tex: '\\mu', unit: 'Pa s', meaning: 'viscosity', expression: '1.458e-6 * T^1.5/(T + 110.4)', of: 'viscosityPaS' },
    { name: 'k', tex: 'k', unit: 'W/(m K)', meaning: 'conductivity', expression: '2.64638e-3 * T^1.5/(T + 245.4 * 10^(-12/T))', of: 'conductivityWPerMK' },
    {
      name: 'Pr',
      tex: '\\mathrm{Pr}',
      unit: '1',
      meaning: 'Prandtl number',
      expression: '(1.458e-6 * T^1.5/(T + 110.4)) * 1006/(2.64638e-3 * T^1.5/(T + 245.4 * 10^(-12/T)))',
      of: 'prandtl',
    },
    { name: 'beta', tex: '\\beta', unit: '1/K', meaning: 'thermal expansion', expression: '1/T', of: 'expansionPerK' },
  ],
  source: published('U.S. Standard Atmosphere, 1976', 'viscosity and conductivity of air; ideal gas law'),
  validity: ['dry air from 100 to 1900 K'],
})
