import { type FuseKind, wireVerdict } from '@strandwise/core/verdict'
import { bars } from '../../draw/bars.ts'
import { answered, optionalNumber } from '../../question/answered.ts'
import { type AnswerPart, numberOf, type QuestionModel, wordOf } from '../../question/question.ts'
import { writer } from '../../question/write.ts'

const figures = 3
const pvcWPerMK = 0.17

/** The fuse that carries the load and protects the wire. */
export const fuse: QuestionModel<Record<string, never>> = {
  answer: (inputs) =>
    answered({ areaMm2: 'size', insulationThicknessMm: 'wall', ratedA: 'fitted', limitC: 'limit', hottestC: 'air', currentA: 'current' }, 'size', () => {
      const write = writer(inputs, figures)
      const [currentA, limitC, fittedA] = [numberOf(inputs, 'current'), numberOf(inputs, 'limit'), optionalNumber(inputs, 'fitted')]
      const wire = { areaMm2: numberOf(inputs, 'size'), insulationThicknessMm: numberOf(inputs, 'wall'), insulationConductivityWPerMK: pvcWPerMK }
      const given = { wire, limitC, hottestC: numberOf(inputs, 'air'), currentA, loadedWires: numberOf(inputs, 'loaded') }
      const kind = wordOf(inputs, 'kind') as FuseKind
      const found = wireVerdict({ ...given, fuse: { kind } })
      const { fuseToFitA, largestFuseA, smallestFuseA, continuousA, fuseSeries } = found
      const amperes = (value: number | null): string => (value === null ? 'none' : write(value, 'currentA'))
      const choose: AnswerPart = {
        id: 'fuse',
        title: 'The fuse to fit',
        verdict: fuseSeries === null ? 'cannot tell' : fuseToFitA === null ? 'unsound' : 'sound',
        sentence:
          fuseSeries === null
            ? 'The operating times of this kind are not held here: go by its maker’s curve and the limits below.'
            : fuseToFitA === null
              ? `None: no fuse of ${fuseSeries} carries ${write(currentA, 'currentA')} and guards this wire.`
              : `Fit ${amperes(fuseToFitA)} (${fuseSeries}).`,
        drawing: bars('Load, fuse and wire on one scale of current', [
          { name: 'load', value: currentA, text: write(currentA, 'currentA'), kind: 'insulation' },
          ...(fuseToFitA === null ? [] : [{ name: 'fuse to fit', value: fuseToFitA, text: write(fuseToFitA, 'currentA'), kind: 'sleeve' as const }]),
          ...(largestFuseA === null ? [] : [{ name: 'largest fuse that guards the wire', value: largestFuseA, text: write(largestFuseA, 'currentA') }]),
          ...(continuousA === null ? [] : [{ name: 'wire, continuously', value: continuousA.low, text: write(continuousA.low, 'currentA') }]),
        ]).svg,
        values: [
          { name: 'what the wire carries here continuously', text: continuousA === null ? 'nothing' : write(continuousA.low, 'currentA') },
          { name: 'smallest that leaves the load a quarter in hand', text: amperes(smallestFuseA) },
          { name: 'largest that guards the wire', text: amperes(largestFuseA) },
        ],
        notes: [
          ...(largestFuseA === null
            ? []
            : [`One step above ${amperes(largestFuseA)} lets the wire pass its limit before it opens; one below the smallest may open with the load running.`]),
          ...(fuseToFitA === null && fuseSeries !== null ? ['Take a thicker wire, or one whose insulation stands more heat.'] : []),
        ],
      }
      const fitted = fittedA === undefined ? null : wireVerdict({ ...given, fuse: { kind, ratedA: fittedA } })
      const judged = fitted?.findings.filter(({ topic }) => topic === 'fuse') ?? []
      const parts: readonly AnswerPart[] =
        fitted === null || fittedA === undefined
          ? []
          : [
              {
                id: 'fitted',
                title: 'The fuse that is fitted',
                verdict: judged[0]?.verdict ?? 'cannot tell',
                sentence: `${write(fittedA, 'currentA')}: ${judged.map(({ code }) => code.replace(/^fuse-/, '').replaceAll('-', ' ')).join('; ') || 'nothing found'}.`,
                values: [],
                notes: [],
              },
            ]
      return {
        parts: [choose, ...parts],
        workings:
          continuousA === null ? [] : [{ title: 'What the wire carries, alone', id: 'steadyCurrentA', inputs: { ...wire, ambientC: given.hottestC, limitC } }],
      }
    }),
}
