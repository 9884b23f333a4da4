import { conductorTemperatureC } from '@strandwise/core/ampacity'
import { solved } from '../formula.ts'
import { published } from '../sources.ts'
import { balance, balanceNotes, balanceTerms, balanceValidity } from './balanceTerms.ts'
import { wireSymbols } from './wireSymbols.ts'

/** The working of conductorTemperatureC. */
export const conductorTemperatureCFormula = solved<Parameters<typeof conductorTemperatureC>[0]>({
  id: 'conductorTemperatureC',
  call: conductorTemperatureC,
  name: 'theta_c',
  tex: '\\theta_c',
  unit: '°C',
  equationTex: balance.tex,
  equation: balance.plain,
  symbols: (i) => ({ I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'steady current' }, ...wireSymbols(i) }),
  solution: (i) => ({ value: conductorTemperatureC(i), terms: balanceTerms(i), notes: balanceNotes(i) }),
  source: published('Churchill and Chu 1975 or Morgan 1975, Churchill and Bernstein 1977', 'Stefan-Boltzmann law; Fourier in the wall'),
  validity: balanceValidity,
})
