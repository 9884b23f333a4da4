import { knownNominal, solder } from '@strandwise/core/materials'
import { lapStrengthN } from '@strandwise/core/solder'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of lapStrengthN. */
export const lapStrengthNFormula = closed<Parameters<typeof lapStrengthN>[0]>({
  id: 'lapStrengthN',
  call: lapStrengthN,
  symbols: {
    tau_s: {
      tex: '\\tau',
      unit: 'MPa',
      of: (i) => i.shearMPa ?? knownNominal(solder(i.alloy), 'shearMPa', solder(i.alloy).shearMPa),
      meaning: 'short-time shear strength of the solder',
    },
    w: { tex: 'w', unit: 'mm', of: 'bondWidthMm', meaning: 'width over which solder joins the two' },
    L: { tex: 'L', unit: 'mm', of: 'overlapMm', meaning: 'length of the lap' },
  },
  results: [
    { name: 'F', tex: 'F', unit: 'N', meaning: 'force when pulled once', expression: 'tau_s * w * L', of: 'shortTimeN' },
    { name: 'F_long', tex: 'F_{long}', unit: 'N', meaning: 'under a constant load for 10,000 h', expression: 'tau_s * w * L/18', of: 'sustainedN' },
  ],
  source: published('NBS Building Materials and Structures Report BMS58, 1940', 'abstract, for the sustained share; an even shear stress'),
  validity: ['the sustained share was measured on half tin, half lead'],
})
