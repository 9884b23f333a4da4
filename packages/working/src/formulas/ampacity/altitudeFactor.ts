import { altitudeFactor } from '@strandwise/core/ampacity'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of altitudeFactor. */
export const altitudeFactorFormula = closed<Parameters<typeof altitudeFactor>[0]>({
  id: 'altitudeFactor',
  call: altitudeFactor,
  symbols: {
    h: { tex: 'h', unit: 'm', of: 'altitudeM', meaning: 'geopotential altitude' },
  },
  results: [{ name: 'F', tex: 'F', unit: '1', meaning: 'factor on the current', expression: '(1 - 0.0065 * h/288.15)^((9.80665/(287.05287 * 0.0065) - 1)/4)' }],
  source: derived('ISO 2533, standard atmosphere', 'film coefficient as the square root of density, current as its fourth root'),
  validity: ['0 to 11,000 m', 'laminar convection alone, so it derates too much: a verdict takes the air pressure in the heat balance'],
})
