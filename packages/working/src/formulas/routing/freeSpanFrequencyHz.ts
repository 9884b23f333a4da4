import { freeSpanFrequencyHz } from '@strandwise/core/routing'
import { closed } from '../formula.ts'
import { fromMemory } from '../sources.ts'

/** The working of freeSpanFrequencyHz. */
export const freeSpanFrequencyHzFormula = closed<Parameters<typeof freeSpanFrequencyHz>[0]>({
  id: 'freeSpanFrequencyHz',
  call: freeSpanFrequencyHz,
  symbols: {
    k: { tex: 'k', unit: '1', of: (i) => (i.ends === 'pinned' ? Math.PI : 4.730040744862704), meaning: 'first root of the beam' },
    L: { tex: 'L', unit: 'mm', of: 'spanMm', meaning: 'free length between the supports' },
    B: { tex: 'EI', unit: 'N mm²', of: 'stiffnessNMm2', meaning: 'bending stiffness' },
    m: { tex: "m'", unit: 'kg/m', of: 'massKgPerM', meaning: 'mass per length' },
  },
  results: [{ name: 'f', tex: 'f', unit: 'Hz', meaning: 'lowest natural frequency', expression: 'k^2/(2 * pi) * 1000 * sqrt(B/m)/L^2' }],
  source: fromMemory('Euler-Bernoulli beam'),
  validity: ['stiffness alone, no pull and no sag'],
})
