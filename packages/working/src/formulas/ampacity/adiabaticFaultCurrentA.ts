import { adiabaticFaultCurrentA } from '@strandwise/core/ampacity'
import { adiabatic } from '@strandwise/core/tables'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

/** The working of adiabaticFaultCurrentA. */
export const adiabaticFaultCurrentAFormula = closed<Parameters<typeof adiabaticFaultCurrentA>[0]>({
  id: 'adiabaticFaultCurrentA',
  call: adiabaticFaultCurrentA,
  symbols: {
    K: { tex: 'K', unit: 'A s^0.5/mm²', of: (i) => adiabatic.metals[i.material].kFactor, meaning: 'constant of the metal' },
    beta: { tex: '\\beta', unit: '°C', of: (i) => adiabatic.metals[i.material].betaC, meaning: 'offset of the metal' },
    S: { tex: 'S', unit: 'mm²', of: 'areaMm2', meaning: 'area of the conductor' },
    t: { tex: 't', unit: 's', of: 'timeS', meaning: 'time until it is switched off' },
    theta_i: { tex: '\\theta_i', unit: '°C', of: 'initialC', meaning: 'temperature at the start' },
    theta_f: { tex: '\\theta_f', unit: '°C', of: 'finalC', meaning: 'temperature at the end' },
  },
  results: [{ name: 'I', tex: 'I', unit: 'A', meaning: 'short-circuit current', expression: 'K * S * sqrt(log1p((theta_f - theta_i)/(theta_i + beta))/t)' }],
  source: published('IEC 60949:1988; IEC 60364-5-54', 'annex A'),
  validity: ['up to about 5 s; longer it is the safe side', 'no heat leaves the metal'],
})
