import { bundleCurrentA, steadyCurrentBandA } from '@strandwise/core/ampacity'
import { bars } from '../../draw/bars.ts'
import { answered, optionalNumber } from '../../question/answered.ts'
import { numberOf, type QuestionModel, wordOf } from '../../question/question.ts'
import { writer } from '../../question/write.ts'

export interface HereFacts {
  readonly insulations: Readonly<Record<string, { readonly limitC: number; readonly conductivityWPerMK: number }>>
  readonly sizesMm2: readonly number[]
}

const figures = 3
const roomC = 30
const correlations = ['churchill-chu', 'morgan'] as const

interface Place {
  readonly areaMm2: number
  readonly insulationThicknessMm: number
  readonly insulationConductivityWPerMK: number
}

/** Continuous current by the unfavourable still-air model; 0 if the air is at the limit. */
function currentA(wire: Place, ambientC: number, limitC: number, loadedWires: number): number {
  if (limitC <= ambientC) return 0
  if (loadedWires === 1) return steadyCurrentBandA({ ...wire, ambientC, limitC })?.low ?? 0
  return Math.min(...correlations.map((correlation) => bundleCurrentA({ ...wire, ambientC, limitC, loadedWires, correlation }) ?? 0))
}

/** Ampacity of a wire in its place. */
export const currentHere: QuestionModel<HereFacts> = {
  answer: (inputs, { insulations, sizesMm2 }) =>
    answered({ areaMm2: 'size', insulationThicknessMm: 'wall', ambientC: 'air', loadedWires: 'loaded' }, 'size', () => {
      const write = writer(inputs, figures)
      const insulation = insulations[wordOf(inputs, 'insulation')]
      if (insulation === undefined) throw new Error('the form has an insulation without a row')
      const limitC = optionalNumber(inputs, 'limit') ?? insulation.limitC
      const [ambientC, loaded] = [numberOf(inputs, 'air'), numberOf(inputs, 'loaded')]
      const wireOf = (areaMm2: number): Place => ({
        areaMm2,
        insulationThicknessMm: numberOf(inputs, 'wall'),
        insulationConductivityWPerMK: insulation.conductivityWPerMK,
      })
      const areaMm2 = numberOf(inputs, 'size')
      const here = currentA(wireOf(areaMm2), ambientC, limitC, loaded)
      const alone = currentA(wireOf(areaMm2), roomC, limitC, 1)
      const aloneHere = currentA(wireOf(areaMm2), ambientC, limitC, 1)
      const thicker = sizesMm2.find((size) => size > areaMm2 * 1.001)
      const thinner = sizesMm2.findLast((size) => size < areaMm2 * 0.999)
      const beside = (size: number | undefined, which: string) =>
        size === undefined
          ? []
          : [{ name: `${write(size, 'areaMm2')}, the next ${which}, here`, text: write(currentA(wireOf(size), ambientC, limitC, loaded), 'currentA') }]
      const among = loaded === 1 ? 'alone' : `among ${loaded} loaded wires`
      return {
        parts: [
          {
            id: 'current',
            title: 'Current in this place',
            verdict: here === 0 ? 'unsound' : 'sound',
            drawing: bars('Current of this wire', [
              { name: `alone in air of ${write(roomC, 'temperatureC')}`, value: alone, text: write(alone, 'currentA') },
              ...(loaded === 1 ? [] : [{ name: `alone in air of ${write(ambientC, 'temperatureC')}`, value: aloneHere, text: write(aloneHere, 'currentA') }]),
              { name: `${among}, in air of ${write(ambientC, 'temperatureC')}`, value: here, text: write(here, 'currentA'), kind: 'sleeve' },
            ]).svg,
            sentence:
              here === 0
                ? `None: the air of ${write(ambientC, 'temperatureC')} alone reaches the limit of ${write(limitC, 'temperatureC')}.`
                : `${write(areaMm2, 'areaMm2')} carries ${write(here, 'currentA')} continuously, ${among} in air of ${write(ambientC, 'temperatureC')}.`,
            values: [
              { name: 'limit of the insulation', text: write(limitC, 'temperatureC') },
              { name: `the same wire alone in air of ${write(roomC, 'temperatureC')}`, text: write(alone, 'currentA') },
              { name: 'left of that here', text: alone === 0 ? 'nothing' : `${Math.round((100 * here) / alone)} %` },
              ...(loaded === 1 ? [] : [{ name: 'alone in this air', text: write(aloneHere, 'currentA') }]),
              ...beside(thinner, 'thinner'),
              ...beside(thicker, 'thicker'),
            ],
            notes: [
              here === 0
                ? 'Take an insulation that stands more, or move the wire out of the heat.'
                : 'The current does not fall in proportion to the heat: about as the root of what is left to the limit.',
            ],
          },
        ],
        workings:
          here === 0
            ? []
            : [
                { title: 'The limits side by side', id: 'ambientFactor', inputs: { limitC, ambientC, referenceAmbientC: Math.min(roomC, limitC - 1) } },
                ...(loaded === 1
                  ? [{ title: 'This wire at its limit', id: 'steadyCurrentA', inputs: { ...wireOf(areaMm2), ambientC, limitC } }]
                  : [
                      {
                        title: 'The bundle at that current',
                        id: 'bundleTemperatureC',
                        inputs: { ...wireOf(areaMm2), ambientC, loadedWires: loaded, currentA: here },
                      },
                    ]),
              ],
      }
    }),
}
