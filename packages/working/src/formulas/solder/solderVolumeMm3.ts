import { solderVolumeDefaults, solderVolumeMm3 } from '@strandwise/core/solder'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of solderVolumeMm3. */
export const solderVolumeMm3Formula = closed<Parameters<typeof solderVolumeMm3>[0]>({
  id: 'solderVolumeMm3',
  call: solderVolumeMm3,
  symbols: {
    L: { tex: 'L', unit: 'mm', of: 'overlapMm', meaning: 'length of the lap' },
    d_1: { tex: 'd_1', unit: 'mm', of: 'diametersMm.0', meaning: 'diameter of the first wire' },
    d_2: { tex: 'd_2', unit: 'mm', of: 'diametersMm.1', meaning: 'diameter of the second wire' },
    f: { tex: 'f', unit: '1', of: (i) => i.valleyFill ?? solderVolumeDefaults.valleyFill, meaning: 'filled share of the valleys' },
    A_v: { tex: 'A_v', unit: 'mm²', of: (i) => i.strandVoidMm2 ?? solderVolumeDefaults.strandVoidMm2, meaning: 'voids between the strands of both wires' },
  },
  steps: [
    { name: 'r_1', tex: 'r_1', unit: 'mm', meaning: 'radius of the first wire', expression: 'd_1/2' },
    { name: 'r_2', tex: 'r_2', unit: 'mm', meaning: 'radius of the second wire', expression: 'd_2/2' },
    { name: 'a', tex: 'a', unit: 'rad', meaning: 'angle to the foot of the common tangent', expression: 'acos((r_1 - r_2)/(r_1 + r_2))' },
    {
      name: 'A_f',
      tex: 'A_f',
      unit: 'mm²',
      meaning: 'one valley up to the common tangent',
      expression: '(r_1 + r_2) * sqrt(r_1 * r_2) - (r_1^2 * a + r_2^2 * (pi - a))/2',
    },
  ],
  results: [{ name: 'V', tex: 'V', unit: 'mm³', meaning: 'volume of solder', expression: 'L * (2 * f * A_f + A_v)' }],
  source: derived('plane geometry of two touching circles and their common tangents'),
  validity: ['two round wires side by side'],
})
