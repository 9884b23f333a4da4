import { awgToAreaMm2 } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of awgToAreaMm2. */
export const awgToAreaMm2Formula = closed<{ readonly gauge: number }>({
  id: 'awgToAreaMm2',
  call: ({ gauge }) => awgToAreaMm2(gauge),
  symbols: {
    n: { tex: 'n', unit: '1', of: 'gauge', meaning: 'gauge number; 0 is 1/0, -3 is 4/0' },
  },
  steps: [{ name: 'd', tex: 'd', unit: 'mm', meaning: 'diameter of the gauge', expression: '0.127 * 92^((36 - n)/39)' }],
  results: [{ name: 'A', tex: 'A', unit: 'mm²', meaning: 'area', expression: 'pi/4 * d^2' }],
  source: published('ASTM B258', 'standard nominal areas, from the exact diameter'),
  validity: ['gauges from 40.5 to -5.5 (6/0); stranded wire is named by its metal area'],
})
