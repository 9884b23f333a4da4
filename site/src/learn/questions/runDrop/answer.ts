import { voltageDropV } from '@strandwise/core/circuit'
import { resistanceOhm } from '@strandwise/core/conductor'
import type { MetalName } from '@strandwise/core/materials'
import { bars } from '../../draw/bars.ts'
import { answered } from '../../question/answered.ts'
import { numberOf, type QuestionModel, wordOf } from '../../question/question.ts'
import { writer } from '../../question/write.ts'

export interface RunFacts {
  readonly sizesMm2: readonly number[]
}

const figures = 3

/** Resistance and drop of a run with its joints, and of neighbouring sizes. */
export const runDrop: QuestionModel<RunFacts> = {
  answer: (inputs, { sizesMm2 }) =>
    answered({ areaMm2: 'size', temperatureC: 'hot', currentA: 'current' }, 'size', () => {
      const write = writer(inputs, figures)
      const [areaMm2, currentA, allowedV] = [numberOf(inputs, 'size'), numberOf(inputs, 'current'), numberOf(inputs, 'drop')]
      const [outM, backM, joints] = [numberOf(inputs, 'out'), numberOf(inputs, 'back'), numberOf(inputs, 'joints')]
      const wire = { material: wordOf(inputs, 'metal') as MetalName, temperatureC: numberOf(inputs, 'hot') }
      const loop = (size: number) => {
        const given = {
          currentA,
          outResistanceOhm: resistanceOhm({ ...wire, areaMm2: size, lengthM: outM }),
          returnResistanceOhm: resistanceOhm({ ...wire, areaMm2: size, lengthM: backM }),
          jointsOhm: [joints],
        }
        return { given, dropV: voltageDropV(given) }
      }
      const { given, dropV } = loop(areaMm2)
      const supplyV = numberOf(inputs, 'supply')
      const sound = dropV <= allowedV
      const share = `${((100 * dropV) / supplyV).toPrecision(2)} % of the supply`
      const thinner = sizesMm2.findLast((size) => size < areaMm2 * 0.999)
      const thicker = sizesMm2.find((size) => size > areaMm2 * 1.001)
      const beside = (size: number | undefined, which: string) =>
        size === undefined
          ? []
          : [
              {
                name: `${write(size, 'areaMm2')}, the next ${which}`,
                text: `drops ${write(loop(size).dropV, 'voltageV')}${loop(size).dropV <= allowedV ? '' : ', too much'}`,
              },
            ]
      return {
        parts: [
          {
            id: 'drop',
            title: 'Drop of the run',
            verdict: sound ? 'sound' : 'unsound',
            drawing: bars(
              'Where the volts go',
              [
                { name: 'wire out', value: currentA * given.outResistanceOhm, text: write(currentA * given.outResistanceOhm, 'voltageV') },
                { name: 'wire back', value: currentA * given.returnResistanceOhm, text: write(currentA * given.returnResistanceOhm, 'voltageV') },
                { name: 'joints and contacts', value: currentA * joints, text: write(currentA * joints, 'voltageV'), kind: 'solder' },
                { name: 'together', value: dropV, text: write(dropV, 'voltageV') },
              ],
              { value: allowedV, text: `allowed ${write(allowedV, 'voltageV')}` },
            ).svg,
            sentence: `It drops ${write(dropV, 'voltageV')}, ${share}; ${write(allowedV, 'voltageV')} are allowed.`,
            values: [
              { name: 'wire out and back', text: write(given.outResistanceOhm + given.returnResistanceOhm, 'resistanceOhm') },
              { name: 'with its joints', text: write(given.outResistanceOhm + given.returnResistanceOhm + joints, 'resistanceOhm') },
              { name: 'left for the load', text: write(supplyV - dropV, 'voltageV') },
              ...beside(thinner, 'thinner'),
              ...beside(thicker, 'thicker'),
            ],
            notes: sound ? [] : ['Take the thicker size, shorten the run, or accept the drop knowingly.'],
          },
        ],
        workings: [
          { title: 'Resistance of the wire out', id: 'resistanceOhm', inputs: { ...wire, areaMm2, lengthM: outM } },
          { title: 'Drop of the loop', id: 'voltageDropV', inputs: given },
        ],
      }
    }),
}
