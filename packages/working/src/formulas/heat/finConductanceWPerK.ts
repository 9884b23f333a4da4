import { finConductanceWPerK, finDefaults } from '@strandwise/core/heat'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

type Given = Parameters<typeof finConductanceWPerK>[0]

function expressionFor(i: Given): string {
  const endless = 'sqrt(k * A * 10^-6 * G)'
  if (i.lengthMm === undefined) return endless
  const reach = 'tanh(sqrt(G/(k * A * 10^-6)) * L/1000)'
  if ((i.end ?? finDefaults.end) === 'insulated') return `${endless} * ${reach}`
  return i.lossWPerMK === 0 ? 'k * A * 10^-6/(L/1000)' : `${endless}/${reach}`
}

/** The working of finConductanceWPerK. */
export const finConductanceWPerKFormula = closed<Parameters<typeof finConductanceWPerK>[0]>({
  id: 'finConductanceWPerK',
  call: finConductanceWPerK,
  symbols: (i) => ({
    k: { tex: 'k', unit: 'W/(m K)', of: 'conductivityWPerMK', meaning: 'conductivity of the metal' },
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area of the metal' },
    G: { tex: "G'", unit: 'W/(m K)', of: 'lossWPerMK', meaning: 'heat lost by each metre for each kelvin' },
    ...(i.lengthMm === undefined ? {} : { L: { tex: 'L', unit: 'mm', of: 'lengthMm', meaning: 'length of the fin' } }),
  }),
  results: (i) => [{ name: 'Y', tex: 'Y', unit: 'W/K', meaning: 'heat drawn from the hot end for each kelvin', expression: expressionFor(i) }],
  source: published('Sukhatme, Heat Transfer; Incropera and DeWitt', 'fins of constant section'),
  validity: ['the wire is as hot throughout its section; the loss goes with the rise'],
})
