import { temperatureAfterC, timeToTemperatureS } from '@strandwise/core/ampacity'
import { solved } from '../formula.ts'
import { derived } from '../sources.ts'
import { warming, warmingTerms, warmingValidity } from './warmingTerms.ts'
import { capacityJPerMK, wireSymbols } from './wireSymbols.ts'

/** The working of temperatureAfterC. */
export const temperatureAfterCFormula = solved<Parameters<typeof temperatureAfterC>[0]>({
  id: 'temperatureAfterC',
  call: temperatureAfterC,
  name: 'theta',
  tex: '\\theta(t)',
  unit: '°C',
  equationTex: warming.tex,
  equation: warming.plain,
  symbols: (i) => ({
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'current, steady from the start' },
    t: { tex: 't', unit: 's', of: 'timeS', meaning: 'time since it was switched on' },
    theta_0: { tex: '\\theta_0', unit: '°C', of: () => i.initialC ?? i.ambientC, meaning: 'temperature at the start' },
    ...wireSymbols(i),
  }),
  solution: (i) => {
    const endC = temperatureAfterC(i)
    const back = endC === (i.initialC ?? i.ambientC) ? null : timeToTemperatureS({ ...i, wantedC: endC })
    return {
      value: endC,
      terms: [
        { text: 'heat stored by a metre for each kelvin', tex: "C'", value: capacityJPerMK(i), unit: 'J/(m K)' },
        ...warmingTerms(i, endC, 'at the end'),
        ...(back === null ? [] : [{ text: 'residual: time to that temperature less the time given', tex: 't(\\theta) - t', value: back - i.timeS, unit: 's' }]),
      ],
    }
  },
  source: derived('one lump per metre, its resistance rising with it'),
  validity: warmingValidity,
})
