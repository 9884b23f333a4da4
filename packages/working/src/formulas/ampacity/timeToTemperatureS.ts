import { temperatureAfterC, timeToTemperatureS } from '@strandwise/core/ampacity'
import { solved } from '../formula.ts'
import { derived } from '../sources.ts'
import { warming, warmingTerms, warmingValidity } from './warmingTerms.ts'
import { capacityJPerMK, wireSymbols } from './wireSymbols.ts'

/** The working of timeToTemperatureS. */
export const timeToTemperatureSFormula = solved<Parameters<typeof timeToTemperatureS>[0]>({
  id: 'timeToTemperatureS',
  call: timeToTemperatureS,
  name: 't',
  tex: 't',
  unit: 's',
  equationTex: `${warming.tex},\\quad \\theta(t) = \\theta_w`,
  equation: `${warming.plain}, theta(t) = theta_w`,
  symbols: (i) => ({
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'current, steady from the start' },
    theta_0: { tex: '\\theta_0', unit: '°C', of: () => i.initialC ?? i.ambientC, meaning: 'temperature at the start' },
    theta_w: { tex: '\\theta_w', unit: '°C', of: 'wantedC', meaning: 'temperature asked for' },
    ...wireSymbols(i),
  }),
  solution: (i) => {
    const timeS = timeToTemperatureS(i)
    if (timeS === null)
      return { value: 0, terms: warmingTerms(i, i.wantedC, 'there'), notes: ['it never gets there: the temperature only tends to it, or moves away'] }
    return {
      value: timeS,
      terms: [
        { text: 'heat stored by a metre for each kelvin', tex: "C'", value: capacityJPerMK(i), unit: 'J/(m K)' },
        ...warmingTerms(i, i.wantedC, 'there'),
        {
          text: 'residual: temperature after that time less the one asked for',
          tex: '\\theta(t) - \\theta_w',
          value: temperatureAfterC({ ...i, timeS }) - i.wantedC,
          unit: 'K',
        },
      ],
    }
  },
  source: derived('one lump per metre, its resistance rising with it'),
  validity: warmingValidity,
})
