import { slackAfterCutBack, slackDefaults } from '@strandwise/core/routing'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

type Given = Parameters<typeof slackAfterCutBack>[0]

/** True if the service slack remains with one joint. */
const enough = (i: Given): boolean => i.slackMm - i.cutBackMm - i.jointConsumesMm >= (i.serviceSlackMm ?? slackDefaults.serviceSlackMm)

/** The working of slackAfterCutBack. */
export const slackAfterCutBackFormula = closed<Parameters<typeof slackAfterCutBack>[0]>({
  id: 'slackAfterCutBack',
  call: slackAfterCutBack,
  symbols: {
    s: { tex: 's', unit: 'mm', of: 'slackMm', meaning: 'slack before the cut' },
    c: { tex: 'c', unit: 'mm', of: 'cutBackMm', meaning: 'wire that is cut off' },
    j: { tex: 'j', unit: 'mm', of: 'jointConsumesMm', meaning: 'wire that one joint uses up' },
    n: { tex: 'n', unit: '1', of: (i) => i.jointsIfInserted ?? slackDefaults.jointsIfInserted, meaning: 'joints where a piece goes in' },
    w: { tex: 'w', unit: 'mm', of: (i) => i.serviceSlackMm ?? slackDefaults.serviceSlackMm, meaning: 'slack that must stay' },
  },
  results: (i) => [
    { name: 'l', tex: 'l', unit: 'mm', meaning: 'slack left with one joint', expression: 's - c - j', of: 'leftMm' },
    { name: 'L', tex: 'L', unit: 'mm', meaning: 'length to put in', expression: enough(i) ? '0 * s' : 'c + w - s + n * j', of: 'insertMm' },
  ],
  source: derived('lengths added up'),
  validity: ['slack left is that of one joint; below 0 it is missing'],
})
