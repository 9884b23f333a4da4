import { contactVoltageV } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { fromMemory } from '../sources.ts'

/** The working of contactVoltageV. */
export const contactVoltageVFormula = closed<Parameters<typeof contactVoltageV>[0]>({
  id: 'contactVoltageV',
  call: contactVoltageV,
  symbols: {
    theta_m: { tex: '\\theta_m', unit: '°C', of: 'peakC', meaning: 'temperature of the spot' },
    theta_0: { tex: '\\theta_0', unit: '°C', of: 'bulkC', meaning: 'temperature of the parts' },
  },
  results: [
    { name: 'V', tex: 'V', unit: 'V', meaning: 'voltage over the contact', expression: '2 * sqrt(2.45e-8 * ((theta_m + 273.15)^2 - (theta_0 + 273.15)^2))' },
  ],
  source: fromMemory('Holm, Electric Contacts, 1967', 'voltage and temperature relation, Lorenz number 2.45e-8 V²/K²'),
  validity: ['clean metal, both sides alike'],
})
