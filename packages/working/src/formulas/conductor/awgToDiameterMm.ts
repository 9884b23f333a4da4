import { awgToDiameterMm } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of awgToDiameterMm. */
export const awgToDiameterMmFormula = closed<{ readonly gauge: number }>({
  id: 'awgToDiameterMm',
  call: ({ gauge }) => awgToDiameterMm(gauge),
  symbols: {
    n: { tex: 'n', unit: '1', of: 'gauge', meaning: 'gauge number; 0 is 1/0, -3 is 4/0' },
  },
  results: [{ name: 'd', tex: 'd', unit: 'mm', meaning: 'diameter', expression: '0.127 * 92^((36 - n)/39)' }],
  source: published('ASTM B258', 'standard nominal diameters, the series by its exact ratio'),
  validity: ['gauges from 40.5 to -5.5 (6/0); stranded wire is named by its metal area'],
})
