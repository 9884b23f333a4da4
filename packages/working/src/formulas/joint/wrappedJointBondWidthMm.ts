import { wrappedJointBondWidthMm } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of wrappedJointBondWidthMm. */
export const wrappedJointBondWidthMmFormula = closed<Parameters<typeof wrappedJointBondWidthMm>[0]>({
  id: 'wrappedJointBondWidthMm',
  call: wrappedJointBondWidthMm,
  symbols: {
    w: { tex: 'w', unit: 'mm', of: 'filletWidthMm', meaning: 'width of good fillet across the wrapped wire' },
    D: { tex: 'D', unit: 'mm', of: 'coreDiameterMm', meaning: 'wire that goes straight through' },
    p: { tex: 'p', unit: 'mm', of: 'pitchMm', meaning: 'advance of one turn' },
  },
  results: [{ name: 'w_b', tex: "w'", unit: 'mm', meaning: 'bond area per length of joint', expression: 'min(w * sqrt((pi * D)^2 + p^2)/p, pi * D)' }],
  source: derived("geometry of a helix on the core's surface"),
  validity: ['at most the whole perimeter of the core'],
})
