import { continuityProof, dropTestVerdict, twoWireProof } from '@strandwise/core/meter'
import { intervals } from '../../draw/intervals.ts'
import { answered, optionalNumber } from '../../question/answered.ts'
import { type AskedWorking, type InputProblem, numberOf, type QuestionModel, wordOf } from '../../question/question.ts'
import { writer } from '../../question/write.ts'

const figures = 3
const missing = (field: string, example: string): InputProblem => ({ field, read: 'nothing', allowed: 'what the meter showed', example })
const words = { passes: 'It passes', fails: 'It fails', 'cannot tell': 'It proves nothing' } as const
const verdicts = { passes: 'sound', fails: 'unsound', 'cannot tell': 'cannot tell' } as const

/** A reading as an interval of drop at the working current, against the allowed drop. */
export const readingProves: QuestionModel<Record<string, never>> = {
  answer: (inputs) => {
    const write = writer(inputs, figures)
    const common = { currentA: numberOf(inputs, 'current'), allowedDropV: numberOf(inputs, 'allowed') }
    const way = wordOf(inputs, 'way')
    const [readingOhm, measuredV, testA] = [optionalNumber(inputs, 'ohms'), optionalNumber(inputs, 'volts'), optionalNumber(inputs, 'test')]
    if (way === 'ohms' && readingOhm === undefined) return missing('ohms', '0.4 Ω')
    if (way === 'drop' && measuredV === undefined) return missing('volts', '12 mV')
    if (way === 'drop' && !(testA !== undefined && testA > 0)) return missing('test', '0.5 A')
    const meter = {
      percentOfReading: numberOf(inputs, 'percent'),
      counts: numberOf(inputs, 'counts'),
      resolutionOhm: numberOf(inputs, 'step'),
      leadOhm: numberOf(inputs, 'leads'),
      leadUncertaintyOhm: numberOf(inputs, 'step'),
    }
    return answered(
      { resolutionOhm: 'step', readingOhm: 'ohms', 'toneBelowOhm.low': 'beepsBelow', 'toneBelowOhm.high': 'silentAbove', toneBelowOhm: 'silentAbove' },
      'way',
      () => {
        const asked: Readonly<Record<string, AskedWorking>> = {
          ohms: { title: 'The reading at the working current', id: 'twoWireProof', inputs: { readingOhm, meter, ...common } },
          drop: {
            title: 'The drop at the working current',
            id: 'dropTestVerdict',
            inputs: { measuredV, uncertaintyV: numberOf(inputs, 'voltError'), testA, workingA: common.currentA, allowedDropV: common.allowedDropV },
          },
          beep: {
            title: 'What the beep says',
            id: 'continuityProof',
            inputs: {
              toneBelowOhm: { low: numberOf(inputs, 'beepsBelow'), high: numberOf(inputs, 'silentAbove') },
              toned: wordOf(inputs, 'beeped') === 'yes',
              ...common,
            },
          },
        }
        const working = asked[way]
        if (working === undefined) throw new Error(`no way is called ${way}`)
        const run = { ohms: twoWireProof, drop: dropTestVerdict, beep: continuityProof }[way as 'ohms' | 'drop' | 'beep'] as (
          i: never,
        ) => ReturnType<typeof continuityProof>
        const digitV = meter.resolutionOhm * common.currentA
        const { verdict, dropLowV, dropHighV } = run(working.inputs as never)
        const low = write(Math.max(0, dropLowV), 'voltageV')
        const span = dropHighV === null ? `at least ${low}` : `between ${low} and ${write(dropHighV, 'voltageV')}`
        return {
          parts: [
            {
              id: 'proof',
              title: 'What it proves',
              verdict: verdicts[verdict],
              sentence: `${words[verdict]}: the joint drops ${span} at ${write(common.currentA, 'currentA')}; ${write(common.allowedDropV, 'voltageV')} are allowed.`,
              drawing: intervals(
                'The drop that this reading allows, against the limit',
                [
                  { name: 'this reading', low: Math.max(0, dropLowV), high: dropHighV ?? Math.max(2 * dropLowV, 2 * common.allowedDropV), text: span },
                  ...(way === 'ohms' ? [{ name: 'one last digit', low: 0, high: digitV, text: write(digitV, 'voltageV') }] : []),
                ],
                { value: common.allowedDropV, text: `allowed ${write(common.allowedDropV, 'voltageV')}` },
              ).svg,
              values: [
                { name: 'allowed resistance of the joint', text: write(common.allowedDropV / common.currentA, 'resistanceOhm') },
                ...(way === 'ohms' ? [{ name: 'one last digit of the meter, at the working current', text: write(digitV, 'voltageV') }] : []),
              ],
              notes:
                verdict === 'cannot tell'
                  ? ['Measure the volts over the joint while the load runs: that reads milliohms with any meter that shows millivolts.']
                  : way === 'beep'
                    ? ['A beep tells an open wire from a whole one, and nothing about how good the joint is.']
                    : [],
            },
          ],
          workings: [working],
        }
      },
    )
  },
}
