import { resistanceOhm } from '@strandwise/core/conductor'
import { acceptanceResistanceOhm } from '@strandwise/core/joint'
import { bars } from '../../draw/bars.ts'
import { answered } from '../../question/answered.ts'
import { numberOf, type QuestionModel } from '../../question/question.ts'
import { writer } from '../../question/write.ts'

const figures = 3
const pvcWPerMK = 0.17
const by = { temperature: 'the heat of the joint', drop: 'the drop that you allow', 'plain-wire': 'plain wire of its length' } as const

/** The limits of a joint and of its stretches in millivolts. */
export const dropLimit: QuestionModel<Record<string, never>> = {
  answer: (inputs) =>
    answered({ areaMm2: 'size', ambientC: 'air', limitC: 'limit', jointLengthMm: 'long', insulationThicknessMm: 'wall' }, 'size', () => {
      const write = writer(inputs, figures)
      const areaMm2 = numberOf(inputs, 'size')
      const side = { areaMm2, insulationThicknessMm: numberOf(inputs, 'wall'), insulationConductivityWPerMK: pvcWPerMK }
      const [currentA, testA] = [numberOf(inputs, 'current'), numberOf(inputs, 'test')]
      const site = {
        currentA,
        ambientC: numberOf(inputs, 'air'),
        conductors: [side, side] as const,
        jointLengthMm: numberOf(inputs, 'long'),
        limitC: numberOf(inputs, 'limit'),
        allowedDropV: numberOf(inputs, 'allowed'),
        plainWireMultiple: numberOf(inputs, 'times'),
      }
      const { resistanceOhm: limitOhm, governedBy, candidates } = acceptanceResistanceOhm(site)
      const stretch = (lengthM: number): number => resistanceOhm({ areaMm2, lengthM, material: 'annealed-copper', temperatureC: 20 })
      const at = (ohm: number): string => `${write(ohm * testA, 'voltageV')} at ${write(testA, 'currentA')}`
      return {
        parts: [
          {
            id: 'limit',
            title: 'Limit of the joint',
            verdict: null,
            sentence: `At ${write(testA, 'currentA')} the joint may show ${write(limitOhm * testA, 'voltageV')} at most; ${by[governedBy]} decides.`,
            drawing: bars(
              `What the joint may show at ${write(testA, 'currentA')}`,
              candidates.map(({ limit, resistanceOhm: ohm }) => ({
                name: `by ${by[limit]}`,
                value: ohm * testA,
                text: write(ohm * testA, 'voltageV'),
                kind: limit === governedBy ? ('sleeve' as const) : ('metal' as const),
              })),
            ).svg,
            values: [
              { name: 'as a resistance', text: write(limitOhm, 'resistanceOhm') },
              { name: `at the working current of ${write(currentA, 'currentA')}`, text: write(limitOhm * currentA, 'voltageV') },
              ...candidates.map(({ limit, resistanceOhm: ohm }) => ({ name: `by ${by[limit]}`, text: at(ohm) })),
            ],
            notes: ['Put the tips on the wire close to the joint, on both sides: a reading from farther holds the wire as well.'],
          },
          {
            id: 'stretches',
            title: 'Each stretch, when sound',
            verdict: null,
            sentence: `Feed ${at(stretch(numberOf(inputs, 'out')))}, return ${at(stretch(numberOf(inputs, 'back')))}.`,
            values: [{ name: 'a metre of this wire', text: at(stretch(1)) }],
            notes: ['A stretch that shows much more than this holds the fault.'],
          },
        ],
        workings: [
          { title: 'The limits of the joint', id: 'acceptanceResistanceOhm', inputs: site },
          { title: 'The feed', id: 'resistanceOhm', inputs: { areaMm2, lengthM: numberOf(inputs, 'out'), material: 'annealed-copper', temperatureC: 20 } },
        ],
      }
    }),
}
