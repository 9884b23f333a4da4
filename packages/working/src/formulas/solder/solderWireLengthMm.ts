import { solderWireDefaults, solderWireLengthMm } from '@strandwise/core/solder'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of solderWireLengthMm. */
export const solderWireLengthMmFormula = closed<Parameters<typeof solderWireLengthMm>[0]>({
  id: 'solderWireLengthMm',
  call: solderWireLengthMm,
  symbols: {
    V: { tex: 'V', unit: 'mm³', of: 'volumeMm3', meaning: 'solder that the joint takes' },
    d: { tex: 'd', unit: 'mm', of: 'wireDiameterMm', meaning: 'diameter of the solder wire' },
    f: { tex: 'f', unit: '1', of: (i) => i.fluxVolumeFraction ?? solderWireDefaults.fluxVolumeFraction, meaning: 'share of flux in the wire, by volume' },
  },
  results: [{ name: 'l', tex: 'l', unit: 'mm', meaning: 'length to feed', expression: '4 * V/(pi * d^2 * (1 - f))' }],
  source: derived('plane geometry'),
  validity: ['what drips or stays on the tip comes on top'],
})
