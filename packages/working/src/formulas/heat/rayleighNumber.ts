import { rayleighNumber } from '@strandwise/core/heat'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of rayleighNumber. */
export const rayleighNumberFormula = closed<{ readonly surfaceC: number; readonly ambientC: number; readonly diameterM: number; readonly pressurePa: number }>({
  id: 'rayleighNumber',
  call: ({ surfaceC, ambientC, diameterM, pressurePa }) => rayleighNumber(surfaceC, ambientC, diameterM, pressurePa),
  symbols: {
    theta_s: { tex: '\\theta_s', unit: '°C', of: 'surfaceC', meaning: 'temperature of the surface' },
    theta_a: { tex: '\\theta_a', unit: '°C', of: 'ambientC', meaning: 'temperature of the air' },
    D: { tex: 'D', unit: 'm', of: 'diameterM', meaning: 'outside diameter' },
    p: { tex: 'p', unit: 'Pa', of: 'pressurePa', meaning: 'absolute pressure' },
  },
  steps: [
    { name: 'T', tex: 'T', unit: 'K', meaning: 'film temperature', expression: '(theta_s + theta_a)/2 + 273.15' },
    { name: 'mu', tex: '\\mu', unit: 'Pa s', meaning: 'viscosity of the air', expression: '1.458e-6 * T^1.5/(T + 110.4)' },
    { name: 'k', tex: 'k', unit: 'W/(m K)', meaning: 'conductivity of the air', expression: '2.64638e-3 * T^1.5/(T + 245.4 * 10^(-12/T))' },
    { name: 'nu', tex: '\\nu', unit: 'm²/s', meaning: 'kinematic viscosity', expression: 'mu * 8.314462618 * T/(p * 0.0289586)' },
    { name: 'Pr', tex: '\\mathrm{Pr}', unit: '1', meaning: 'Prandtl number', expression: 'mu * 1006/k' },
  ],
  results: [{ name: 'Ra', tex: '\\mathrm{Ra}', unit: '1', meaning: 'Rayleigh number', expression: '9.80665/T * abs(theta_s - theta_a) * D^3 * Pr/nu^2' }],
  source: derived('definition of the Rayleigh number, ideal gas'),
  validity: ['air properties at the film temperature'],
})
