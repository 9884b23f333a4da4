import { stackLayers } from '@strandwise/core/sleeve'
import { closed, type FormulaStep, type FormulaSymbol } from '../formula.ts'
import { derived } from '../sources.ts'

type Given = Parameters<typeof stackLayers>[0]

function symbolsOf(layer: Given['layers'][number], k: number): [string, FormulaSymbol<unknown>][] {
  return [
    [`d_${k}`, { tex: `d_{${k}}`, unit: 'mm', of: () => layer.recoveredInsideMm, meaning: `inside of layer ${k} after free recovery` }],
    [`w_${k}`, { tex: `w_{${k}}`, unit: 'mm', of: () => layer.recoveredWallMm, meaning: `wall of layer ${k} after free recovery` }],
    [`o_${k}`, { tex: `o_{${k}}`, unit: 'mm', of: () => layer.overlapEachSideMm, meaning: `reach of layer ${k} past what is beneath` }],
    [`s_${k}`, { tex: `s_{${k}}`, unit: '1', of: () => layer.longitudinalChange.low, meaning: `change of length of layer ${k}` }],
  ]
}

/** Core of a layer, at least its recovered inside, and its outside by kept volume. */
function stepsOf(k: number): FormulaStep[] {
  return [
    { name: `c_${k}`, tex: `c_{${k}}`, unit: 'mm', meaning: `what layer ${k} stands on`, expression: `max(D_${k - 1}, d_${k})` },
    { name: `D_${k}`, tex: `D_{${k}}`, unit: 'mm', meaning: `outside of layer ${k}`, expression: `sqrt(c_${k}^2 + 4 * (d_${k} + w_${k}) * w_${k})` },
  ]
}

/** The working of stackLayers. */
export const stackLayersFormula = closed<Parameters<typeof stackLayers>[0]>({
  id: 'stackLayers',
  call: stackLayers,
  symbols: (i) => ({
    D_0: { tex: 'D_0', unit: 'mm', of: 'coreMm', meaning: 'what the first layer covers' },
    L_j: { tex: 'L_j', unit: 'mm', of: 'jointMm', meaning: 'length of the bare joint' },
    ...Object.fromEntries(i.layers.flatMap((layer, at) => symbolsOf(layer, at + 1))),
  }),
  steps: (i) => i.layers.flatMap((_, at) => stepsOf(at + 1)),
  results: (i) => [
    { name: 'D_out', tex: 'D', unit: 'mm', meaning: 'outside of the whole', expression: `D_${i.layers.length}`, of: 'outsideMm' },
    ...i.layers.map((_, at) => ({
      name: `L_${at + 1}`,
      tex: `L_{${at + 1}}`,
      unit: 'mm',
      meaning: `length to cut of layer ${at + 1}`,
      expression: `(L_j + 2 * (${i.layers
        .slice(0, at + 1)
        .map((__, below) => `o_${below + 1}`)
        .join(' + ')}))/(1 + s_${at + 1})`,
      of: `layers.${at}.cutLengthMm`,
    })),
  ],
  source: derived('kept volume, layer by layer; overlaps in steps are trade practice'),
  validity: ['a layer that does not grip stands at its recovered inside and wall'],
})
