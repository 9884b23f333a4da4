import type { SleeveMaterialName, SolderName } from '@strandwise/core/materials'
import { temperatureOrder } from '@strandwise/core/sleeve'
import { type Bar, bars } from '../../draw/bars.ts'
import { answered } from '../../question/answered.ts'
import { type QuestionModel, wordOf } from '../../question/question.ts'
import { writer } from '../../question/write.ts'

export interface TogetherFacts {
  readonly solders: Readonly<Record<string, { readonly solidusC: number; readonly liquidusC: number }>>
  readonly sleeves: Readonly<Record<string, { readonly fullRecoveryC: number | null; readonly continuousC: number | null }>>
  readonly insulations: Readonly<Record<string, { readonly shortC: number | null; readonly continuousC: number | null }>>
}

const figures = 3

/** Whether the sleeve remelts the solder or damages the insulation, and what would work. */
export const together: QuestionModel<TogetherFacts> = {
  answer: (inputs, { solders, sleeves, insulations }) =>
    answered({}, 'alloy', () => {
      const write = writer(inputs, figures)
      const [alloy, insulation, sleeve] = [wordOf(inputs, 'alloy'), wordOf(inputs, 'insulation'), wordOf(inputs, 'sleeve') as SleeveMaterialName]
      const degrees = (value: number | null | undefined): string => (value === null || value === undefined ? 'not known' : write(value, 'temperatureC'))
      const shrunkC = sleeves[sleeve]?.fullRecoveryC ?? null
      const known = (name: string, value: number | null | undefined, kind: Bar['kind']) =>
        value === null || value === undefined ? [] : [{ name, value, text: degrees(value), kind: kind ?? 'metal' }]
      const order = (one: string) => temperatureOrder({ sleeve, alloy: one as SolderName, insulation })
      const { remelts, spoilsInsulation } = order(alloy)
      const unknown = remelts === null || spoilsInsulation === null
      const bad = remelts === true || spoilsInsulation === true
      const said = [
        remelts === true ? 'shrinking the sleeve may melt the solder again' : '',
        spoilsInsulation === true ? 'shrinking the sleeve may spoil the insulation' : '',
      ]
      const good = Object.keys(solders).filter((one) => order(one).remelts === false)
      const cooler = Object.keys(sleeves).filter((one) => {
        const found = temperatureOrder({ sleeve: one as SleeveMaterialName, alloy: alloy as SolderName, insulation })
        return found.remelts === false && found.spoilsInsulation === false
      })
      return {
        parts: [
          {
            id: 'together',
            title: 'Do they go together',
            verdict: bad ? 'unsound' : unknown ? 'cannot tell' : 'sound',
            sentence: bad
              ? `No: ${said.filter((part) => part !== '').join(', and ')}.`
              : unknown
                ? 'A temperature is not known: try it on a scrap first.'
                : 'Yes: the solder stays solid and the insulation whole while the sleeve shrinks.',
            drawing: bars(
              'Temperatures on one scale',
              [
                { name: `${alloy} begins to melt`, value: solders[alloy]?.solidusC ?? null, text: degrees(solders[alloy]?.solidusC), kind: 'solder' as const },
                ...known('the insulation stands for a short while', insulations[insulation]?.shortC, 'insulation'),
                ...known('the insulation always stands', insulations[insulation]?.continuousC, 'insulation'),
              ],
              shrunkC === null ? undefined : { value: shrunkC, text: `sleeve shrunk at ${degrees(shrunkC)}` },
            ).svg,
            values: [
              { name: `${alloy} begins to melt, and is liquid`, text: `${degrees(solders[alloy]?.solidusC)}, ${degrees(solders[alloy]?.liquidusC)}` },
              { name: 'the sleeve is fully shrunk at', text: degrees(shrunkC) },
              {
                name: 'the insulation stands for a short while, and always',
                text: `${degrees(insulations[insulation]?.shortC)}, ${degrees(insulations[insulation]?.continuousC)}`,
              },
              { name: 'solders that stay solid under this sleeve', text: good.join(', ') || 'none' },
              { name: 'sleeves that go with both', text: cooler.map((one) => one.replaceAll('-', ' ')).join(', ') || 'none' },
            ],
            notes: [],
          },
        ],
        workings: [],
      }
    }),
}
