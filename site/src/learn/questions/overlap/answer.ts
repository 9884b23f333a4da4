import { resistanceOhmPerM } from '@strandwise/core/conductor'
import { breakEvenOverlapMm, interfaceConductanceSPerM, lapJointResistanceOhm, transferLengthMm } from '@strandwise/core/joint'
import type { SolderName } from '@strandwise/core/materials'
import { lapStrengthN } from '@strandwise/core/solder'
import { levelDimension } from '../../../drawings/dimension.ts'
import { rect } from '../../../drawings/svg.ts'
import { answered } from '../../question/answered.ts'
import { numberOf, type QuestionModel, wordOf } from '../../question/question.ts'
import { besideRuler } from '../../question/ruler.ts'
import { writer } from '../../question/write.ts'

export interface OverlapFacts {
  readonly alloys: Readonly<Record<string, number>>
  readonly rule: { readonly low: number; readonly high: number }
}

const figures = 3

/** Two wires side by side, to scale. */
function picture(overlapMm: number, diameterMm: number, words: string): string {
  const tailMm = Math.max(overlapMm / 2, 2 * diameterMm)
  return besideRuler(overlapMm + 2 * tailMm, 2 * diameterMm + 2, `Two wires ${diameterMm.toFixed(2)} mm thick overlap by ${words}`, (perMm, x0, axis) =>
    [
      rect(x0, axis - diameterMm * perMm, (tailMm + overlapMm) * perMm, diameterMm * perMm, 'metal'),
      rect(x0 + tailMm * perMm, axis, (tailMm + overlapMm) * perMm, diameterMm * perMm, 'metal'),
      levelDimension(x0 + tailMm * perMm, x0 + (tailMm + overlapMm) * perMm, axis - diameterMm * perMm - 6, axis - diameterMm * perMm, words),
    ].join(''),
  )
}

/** A soldered overlap: resistance, break-even length, short-time strength. */
export const overlap: QuestionModel<OverlapFacts> = {
  answer: (inputs, { alloys, rule }) =>
    answered({ areaMm2: 'size', overlapMm: 'overlap', bondWidthMm: 'fillet', layerMm: 'layer' }, 'overlap', () => {
      const write = writer(inputs, figures)
      const [areaMm2, overlapMm, currentA, bondWidthMm] = [
        numberOf(inputs, 'size'),
        numberOf(inputs, 'overlap'),
        numberOf(inputs, 'current'),
        numberOf(inputs, 'fillet'),
      ]
      const alloy = wordOf(inputs, 'alloy')
      const one = resistanceOhmPerM({ areaMm2, material: 'annealed-copper', temperatureC: 20 })
      const layer = { bondWidthMm, layerMm: numberOf(inputs, 'layer'), layerOhmM: alloys[alloy] ?? Number.NaN }
      const interfaceSPerM = interfaceConductanceSPerM(layer)
      const pair = { conductorsOhmPerM: [one, one] as const, interfaceSPerM }
      const ohm = lapJointResistanceOhm({ ...pair, overlapMm })
      const plain = (one * overlapMm) / 1000
      const even = breakEvenOverlapMm(pair)
      const diameterMm = Math.sqrt((4 * areaMm2) / Math.PI)
      const strength = lapStrengthN({ alloy: alloy as SolderName, overlapMm, bondWidthMm })
      const enough = overlapMm >= rule.low * diameterMm
      const [lowMm, highMm] = [rule.low * diameterMm, rule.high * diameterMm]
      return {
        parts: [
          {
            id: 'overlap',
            title: 'The overlap',
            verdict: enough ? 'sound' : 'caution',
            sentence: `${write(overlapMm, 'lengthMm')} resist ${write(ohm, 'resistanceOhm')}: ${write(ohm * currentA, 'voltageV')} at ${write(currentA, 'currentA')}, ${((100 * ohm) / plain).toPrecision(2)} % of plain wire of that length.`,
            drawing: picture(overlapMm, diameterMm, write(overlapMm, 'lengthMm')),
            values: [
              { name: `rule of the trade, ${rule.low} to ${rule.high} wire diameters`, text: `${write(lowMm, 'lengthMm')} to ${write(highMm, 'lengthMm')}` },
              { name: 'breaks even with plain wire at', text: even === null ? 'no length' : write(even, 'lengthMm') },
              { name: 'transfer length', text: write(transferLengthMm(pair), 'lengthMm') },
              { name: 'pull that it stands once', text: `${Math.round(strength.shortTimeN)} N` },
              { name: 'pull for years', text: `${Math.round(strength.sustainedN)} N: hold the wire, not the joint` },
            ],
            notes: enough
              ? ['More length adds strength and next to nothing for the current.']
              : [`For the current it is enough; for strength take ${write(lowMm, 'lengthMm')} at least.`],
          },
        ],
        workings: [
          { title: 'What crosses from wire to wire', id: 'interfaceConductanceSPerM', inputs: layer },
          { title: 'The overlap', id: 'lapJointResistanceOhm', inputs: { ...pair, overlapMm } },
        ],
      }
    }),
}
