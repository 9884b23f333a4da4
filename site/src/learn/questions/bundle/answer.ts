import { packBundle, tiedBundle } from '@strandwise/core/bundle'
import { minimumBendRadiusMm } from '@strandwise/core/routing'
import { circle, drawing, text } from '../../../drawings/svg.ts'
import { answered } from '../../question/answered.ts'
import { numberOf, type QuestionModel, wordOf } from '../../question/question.ts'
import { writer } from '../../question/write.ts'

const figures = 3
const loose = tiedBundle.widerAtMost
const most = 40
const width = 360

function section(diametersMm: readonly number[], packed: ReturnType<typeof packBundle>, words: string): string {
  const perMm = 150 / packed.diameterMm
  const [cx, cy] = [width / 2, 85]
  return drawing(
    width,
    190,
    `${diametersMm.length} wires in a circle of ${words}`,
    circle(cx, cy, (packed.diameterMm / 2) * perMm, 'hole'),
    ...packed.centresMm.map(({ xMm, yMm }, at) => circle(cx + xMm * perMm, cy + yMm * perMm, ((diametersMm[at] ?? 0) / 2) * perMm, 'metal')),
    text(cx, 182, `⌀ ${words}`),
  )
}

/** The bundle's diameter, its bend and its clamp. */
export const bundle: QuestionModel<Record<string, never>> = {
  answer: (inputs) => {
    const counts = [1, 2, 3].map((at) => [numberOf(inputs, `count${at}`), numberOf(inputs, `outside${at}`)] as const)
    const diametersMm = counts.flatMap(([count, outside]) => Array.from({ length: count }, () => outside))
    if (diametersMm.length > most) return { field: 'count1', read: `${diametersMm.length} wires in all`, allowed: `at most ${most}`, example: '7' }
    return answered({}, 'outside1', () => {
      const write = writer(inputs, figures)
      const packed = packBundle(diametersMm)
      const rule = wordOf(inputs, 'rule') as 'unsupported' | 'supported' | 'coaxial'
      const radius = { outsideDiameterMm: packed.diameterMm, rule }
      const clamp = Math.ceil(loose * packed.diameterMm)
      const metal = diametersMm.reduce((sum, d) => sum + d ** 2, 0) / packed.diameterMm ** 2
      const one = packBundle([...diametersMm, diametersMm[0] ?? 1]).diameterMm
      return {
        parts: [
          {
            id: 'bundle',
            title: 'The bundle',
            verdict: null,
            sentence: `${diametersMm.length} wires make ${write(packed.diameterMm, 'lengthMm')} across; bend it to ${write(minimumBendRadiusMm(radius), 'lengthMm')} or wider, and take a clamp of ${write(clamp, 'lengthMm')}.`,
            drawing: section(diametersMm, packed, write(packed.diameterMm, 'lengthMm')),
            values: [
              { name: `tied by hand, at most (${tiedBundle.provenance.status})`, text: write(loose * packed.diameterMm, 'lengthMm') },
              { name: 'the next clamp down', text: `${write(clamp - 1, 'lengthMm')}: pinches where the ties are` },
              { name: 'with one more wire of the first size', text: write(one, 'lengthMm') },
              { name: 'filled by the wires', text: `${Math.round(100 * metal)} %` },
            ],
            notes: ['The radius counts to the inside of the bend.'],
          },
        ],
        workings: [{ title: 'Bend radius', id: 'minimumBendRadiusMm', inputs: radius }],
      }
    })
  },
}
