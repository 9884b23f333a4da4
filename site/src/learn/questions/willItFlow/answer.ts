import { type HeatVerdictInput, heatVerdict } from '@strandwise/core/heating'
import type { InsulationName, SolderName } from '@strandwise/core/materials'
import { solderVolumeMm3 } from '@strandwise/core/solder'
import { jointSide } from '../../../drawings/jointSide.ts'
import { answered } from '../../question/answered.ts'
import { numberOf, type QuestionModel, wordOf } from '../../question/question.ts'
import { writer } from '../../question/write.ts'

const figures = 3
const tipKPerW = 1.5
const levers = { 'wet-tip': 'wet the tip with fresh solder', flux: 'add flux', press: 'press firmly', nearer: 'hold the air nearer' } as const

/** Whether the joint wets, and how hot the insulation gets. */
export const willItFlow: QuestionModel<Record<string, never>> = {
  answer: (inputs) =>
    answered(
      {
        areaMm2: 'size',
        lapMm: 'overlap',
        insulationOutsideMm: 'outside',
        stubMm: 'stub',
        setC: 'hot',
        airC: 'hot',
        contactResistanceKPerW: 'contact',
        ambientC: 'air',
      },
      'hot',
      () => {
        const write = writer(inputs, figures)
        const areaMm2 = numberOf(inputs, 'size')
        const diameterMm = Math.sqrt((4 * areaMm2) / Math.PI)
        const lapMm = numberOf(inputs, 'overlap')
        const side = {
          areaMm2,
          stubMm: numberOf(inputs, 'stub'),
          insulation: wordOf(inputs, 'insulation') as InsulationName,
          insulationOutsideMm: numberOf(inputs, 'outside'),
        }
        const iron = wordOf(inputs, 'kind') === 'iron'
        const given: HeatVerdictInput = {
          ambientC: numberOf(inputs, 'air'),
          tool: iron
            ? {
                kind: 'iron',
                setC: numberOf(inputs, 'hot'),
                maximumW: numberOf(inputs, 'power'),
                tipResistanceKPerW: tipKPerW,
                contactResistanceKPerW: numberOf(inputs, 'contact'),
              }
            : { kind: 'hot-air', airC: numberOf(inputs, 'hot'), airSpeedMPerS: numberOf(inputs, 'stream') },
          joint: { lapMm, diameterMm: 2 * diameterMm, solderMm3: solderVolumeMm3({ overlapMm: lapMm, diametersMm: [diameterMm, diameterMm] }) },
          conductors: [side, side],
          alloy: wordOf(inputs, 'alloy') as SolderName,
        }
        const { verdict, ends, findings, moves } = heatVerdict(given)
        const { nominal, unfavourable } = ends
        const seconds = (value: number | null): string => (value === null ? 'not within the time' : `${value.toPrecision(2)} s`)
        const limit = findings.find(({ code }) => code === 'limit-passed' || code === 'limit-kept')
        const limitC = limit?.values.limitC
        const edges = [nominal, unfavourable, ends.favourable].map(({ result }) => Math.max(...result.insulationPeakC))
        const best = moves[0]
        return {
          parts: [
            {
              id: 'flow',
              title: 'Will it flow',
              verdict,
              sentence:
                unfavourable.wettedAtS === null
                  ? `Not surely: it wets ${nominal.wettedAtS === null ? 'only with a better contact' : `after ${seconds(nominal.wettedAtS)} as given, and not at a poor contact`}.`
                  : `It flows: wetted after ${seconds(nominal.wettedAtS)}, at a poor contact after ${seconds(unfavourable.wettedAtS)}.`,
              drawing: jointSide({
                kind: 'lap',
                conductorMm: diameterMm,
                outsideMm: side.insulationOutsideMm,
                jointMm: lapMm,
                stubMm: side.stubMm,
                barrelMm: side.insulationOutsideMm,
                layers: [],
                strandMm: 0,
                strands: [],
                housingHoleMm: null,
              }).svg,
              values: [
                { name: 'wetted, good to poor contact', text: [ends.favourable, nominal, unfavourable].map((end) => seconds(end.wettedAtS)).join(', ') },
                { name: 'insulation at its edge, at most', text: write(Math.round(Math.max(...edges)), 'temperatureC') },
                ...(typeof limitC === 'number' ? [{ name: 'what it stands for a short while', text: write(limitC, 'temperatureC') }] : []),
              ],
              notes: [
                ...(limit?.code === 'limit-passed'
                  ? [
                      'The edge of the insulation passes what it stands: it shrinks back or browns. Clip a heat sink on the bare wire, or leave a longer bare stretch.',
                    ]
                  : []),
                ...(best === undefined
                  ? []
                  : [`What helps most: ${levers[best.lever]}${best.wettedAtS === null ? '' : `, wetted after ${seconds(best.wettedAtS)} then`}.`]),
              ],
            },
          ],
          workings: [{ title: 'The joint as given', id: 'heatJoint', inputs: { ...given, toolOffS: nominal.toolOffS } }],
        }
      },
    ),
}
