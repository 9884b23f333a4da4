import { steadyCurrentA } from '@strandwise/core/ampacity'
import { solved } from '../formula.ts'
import { published } from '../sources.ts'
import { balance, balanceNotes, balanceTerms, balanceValidity } from './balanceTerms.ts'
import { wireSymbols } from './wireSymbols.ts'

/** The working of steadyCurrentA. */
export const steadyCurrentAFormula = solved<Parameters<typeof steadyCurrentA>[0]>({
  id: 'steadyCurrentA',
  call: steadyCurrentA,
  name: 'I',
  tex: 'I',
  unit: 'A',
  equationTex: balance.tex,
  equation: balance.plain,
  symbols: (i) => ({ theta_c: { tex: '\\theta_c', unit: '°C', of: 'limitC', meaning: 'temperature that the conductor may reach' }, ...wireSymbols(i) }),
  solution: (i) => {
    const currentA = steadyCurrentA(i)
    if (currentA === null) return { value: 0, terms: [], notes: ['no current is allowed: air or sun alone reach the limit'] }
    return { value: currentA, terms: balanceTerms({ ...i, currentA }), notes: balanceNotes({ ...i, currentA }) }
  },
  source: published('Churchill and Chu 1975 or Morgan 1975, Churchill and Bernstein 1977', 'Stefan-Boltzmann law; Fourier in the wall'),
  validity: balanceValidity,
})
