import { flexLifeCycles, flexLifeDefaults } from '@strandwise/core/routing'
import { closed } from '../formula.ts'
import { fromMemory } from '../sources.ts'

/** The working of flexLifeCycles. */
export const flexLifeCyclesFormula = closed<Parameters<typeof flexLifeCycles>[0]>({
  id: 'flexLifeCycles',
  call: flexLifeCycles,
  symbols: {
    e: { tex: '\\varepsilon', unit: '1', of: 'strainAmplitude', meaning: 'strain amplitude' },
    e_f: {
      tex: '\\varepsilon_f',
      unit: '1',
      of: (i) => i.ductilityCoefficient ?? flexLifeDefaults.ductilityCoefficient,
      meaning: 'fatigue ductility coefficient',
    },
    c: { tex: 'c', unit: '1', of: (i) => i.ductilityExponent ?? flexLifeDefaults.ductilityExponent, meaning: 'fatigue ductility exponent' },
    s: { tex: 's', unit: '1', of: (i) => i.scatterFactor ?? flexLifeDefaults.scatterFactor, meaning: 'scatter' },
  },
  results: [
    { name: 'N', tex: 'N', unit: '1', meaning: 'cycles to the break', expression: '(e/e_f)^(1/c)/2', of: 'cycles' },
    { name: 'N_low', tex: 'N_{low}', unit: '1', meaning: 'low end', expression: '(e/e_f)^(1/c)/2/s', of: 'low' },
    { name: 'N_high', tex: 'N_{high}', unit: '1', meaning: 'high end', expression: '(e/e_f)^(1/c)/2 * s', of: 'high' },
  ],
  source: fromMemory('Strain-life law of Coffin and Manson'),
  validity: ['the plastic part of the law alone', 'a nick, solder or corrosion takes away more than the scatter'],
})
