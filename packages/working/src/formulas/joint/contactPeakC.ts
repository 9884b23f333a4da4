import { contactPeakC } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { fromMemory } from '../sources.ts'

/** The working of contactPeakC. */
export const contactPeakCFormula = closed<Parameters<typeof contactPeakC>[0]>({
  id: 'contactPeakC',
  call: contactPeakC,
  symbols: {
    V: { tex: 'V', unit: 'V', of: 'contactV', meaning: 'voltage over the contact' },
    theta_0: { tex: '\\theta_0', unit: '°C', of: 'bulkC', meaning: 'temperature of the parts' },
  },
  results: [
    {
      name: 'theta_m',
      tex: '\\theta_m',
      unit: '°C',
      meaning: 'temperature of the spot',
      expression: 'sqrt(V^2/(4 * 2.45e-8) + (theta_0 + 273.15)^2) - 273.15',
    },
  ],
  source: fromMemory('Holm, Electric Contacts, 1967', 'voltage and temperature relation, Lorenz number 2.45e-8 V²/K²'),
  validity: ['clean metal, both sides alike'],
})
