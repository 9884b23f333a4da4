import { wireSagMm } from '@strandwise/core/routing'
import type { Reference } from './compare.ts'

/** Sags of a hanging wire by the exact catenary; the model under check uses a parabola. */
export const reference: Reference = {
  source: 'Statics of a hanging wire: a cosh(x/a) - a with a = T/(m g)',
  clause: 'sag in the middle of a level span, worked out by hand',
  status: 'derived',
  notes: 'No printed figure was at hand. Half the span over a is x; cosh(x) - 1 is summed as x^2/2 + x^4/24 + x^6/720.',
  cases: [
    {
      title: '300 mm, 0.012 kg/m, 0.5 N: a = 4.2488 m, x = 0.035304',
      printed: '2.648',
      unit: 'mm',
      got: () => wireSagMm({ spanMm: 300, massKgPerM: 0.012, pullN: 0.5 }),
    },
    {
      title: '500 mm, 0.05 kg/m, 2 N: a = 4.0789 m, x = 0.061292',
      printed: '7.66',
      unit: 'mm',
      got: () => wireSagMm({ spanMm: 500, massKgPerM: 0.05, pullN: 2 }),
    },
    {
      title: '1000 mm, 0.1 kg/m, 0.980665 N, its own weight: a = 1 m, x = 0.5',
      printed: '127.63',
      unit: 'mm',
      got: () => wireSagMm({ spanMm: 1000, massKgPerM: 0.1, pullN: 0.980665 }),
      allowed: {
        relative: 0.021,
        why: 'the edge of the domain: the parabola gives 125, and the next terms of the true curve, x^2/12 + x^4/360, are 2.1 % of that',
      },
    },
  ],
}
