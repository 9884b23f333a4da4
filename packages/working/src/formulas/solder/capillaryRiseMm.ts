import { capillaryDefaults, capillaryRiseMm } from '@strandwise/core/solder'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of capillaryRiseMm. */
export const capillaryRiseMmFormula = closed<Parameters<typeof capillaryRiseMm>[0]>({
  id: 'capillaryRiseMm',
  call: capillaryRiseMm,
  symbols: {
    gamma: {
      tex: '\\gamma',
      unit: 'N/m',
      of: (i) => i.surfaceTensionNPerM ?? capillaryDefaults.surfaceTensionNPerM.value,
      meaning: 'surface tension of the solder',
    },
    theta: { tex: '\\theta', unit: 'rad', of: (i) => i.contactAngleRad ?? capillaryDefaults.contactAngleRad.value, meaning: 'contact angle' },
    rho: { tex: '\\rho', unit: 'kg/m³', of: 'densityKgPerM3', meaning: 'density of the solder' },
    s: { tex: 's', unit: 'mm', of: 'gapMm', meaning: 'width of the gap' },
  },
  results: (i) => [
    {
      name: 'h',
      tex: 'h',
      unit: 'mm',
      meaning: 'rise',
      expression: `${(i.shape ?? capillaryDefaults.shape.value) === 'round' ? 4 : 2} * 1000 * gamma * cos(theta)/(rho * 9.80665 * s/1000)`,
    },
  ],
  source: published("Jurin's law"),
  validity: ['how far solder wicks is set by where the copper is still hot, never by weight'],
})
