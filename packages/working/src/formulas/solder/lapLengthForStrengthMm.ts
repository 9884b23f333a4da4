import { lapLengthForStrengthMm } from '@strandwise/core/solder'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of lapLengthForStrengthMm. */
export const lapLengthForStrengthMmFormula = closed<Parameters<typeof lapLengthForStrengthMm>[0]>({
  id: 'lapLengthForStrengthMm',
  call: lapLengthForStrengthMm,
  symbols: {
    S: { tex: 'S', unit: '1', of: 'safetyFactor', meaning: 'how much stronger the lap is to be' },
    sigma: { tex: '\\sigma', unit: 'MPa', of: 'tensileMPa', meaning: 'tensile strength of the conductor' },
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area of the conductor' },
    tau_s: { tex: '\\tau', unit: 'MPa', of: 'shearMPa', meaning: 'short-time shear strength of the solder' },
    w: { tex: 'w', unit: 'mm', of: 'bondWidthMm', meaning: 'width over which solder joins the two' },
  },
  results: [{ name: 'L', tex: 'L', unit: 'mm', meaning: 'length of the lap', expression: 'S * sigma * A/(tau_s * w)' }],
  source: derived('equal forces, an even shear stress over the bond'),
  validity: ['pulled once: no lap carries a sustained load'],
})
