import { conductorDefaults, resistivityOhmM, tinnedResistanceOhmPerM } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of tinnedResistanceOhmPerM. */
export const tinnedResistanceOhmPerMFormula = closed<Parameters<typeof tinnedResistanceOhmPerM>[0]>({
  id: 'tinnedResistanceOhmPerM',
  call: tinnedResistanceOhmPerM,
  symbols: {
    A_cu: { tex: 'A_{Cu}', unit: 'mm²', of: 'copperAreaMm2', meaning: 'area of the copper' },
    rho_cu: {
      tex: '\\rho_{Cu}',
      unit: 'Ω m',
      of: (i) => resistivityOhmM('annealed-copper', i.temperatureC),
      meaning: 'resistivity of the copper at the temperature',
    },
    A_sn: { tex: 'A_{Sn}', unit: 'mm²', of: 'tinAreaMm2', meaning: 'area of the tin' },
    rho_sn: { tex: '\\rho_{Sn}', unit: 'Ω m', of: (i) => resistivityOhmM('tin', i.temperatureC), meaning: 'resistivity of the tin at the temperature' },
    K: { tex: 'K', unit: '1', of: (i) => i.layFactor ?? conductorDefaults.layFactor, meaning: 'length of a strand over length of the wire' },
  },
  results: [{ name: 'R', tex: "R'", unit: 'Ω/m', meaning: 'resistance of a metre', expression: 'K * 10^6/(A_cu/rho_cu + A_sn/rho_sn)' }],
  source: derived('conductances side by side'),
  validity: ['below the melting point of tin'],
})
