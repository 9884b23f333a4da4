import { contactSpotRadiusMm } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { fromMemory } from '../sources.ts'

/** The working of contactSpotRadiusMm. */
export const contactSpotRadiusMmFormula = closed<Parameters<typeof contactSpotRadiusMm>[0]>({
  id: 'contactSpotRadiusMm',
  call: contactSpotRadiusMm,
  symbols: {
    F: { tex: 'F', unit: 'N', of: 'forceN', meaning: 'force that presses the faces together' },
    H: { tex: 'H', unit: 'MPa', of: 'hardnessMPa', meaning: 'hardness of the softer metal' },
  },
  results: [{ name: 'a', tex: 'a', unit: 'mm', meaning: 'radius of the spot', expression: 'sqrt(F/(pi * H))' }],
  source: fromMemory('Holm, Electric Contacts, 1967', 'plastic contact'),
  validity: ['one round spot; the metal yields'],
})
