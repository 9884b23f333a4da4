import { bundleDiameterMm } from '@strandwise/core/bundle'
import type { Reference } from './compare.ts'

const truncated = { absolute: 0.001, why: 'the pages cut the figure off after three decimals' }
/** Bundle over wire diameter, 1 to 20 equal wires, as printed. */
const printed = [
  ...['1', '2', '2.154701', '2.414214', '2.701302', '3', '3', '3.304765', '3.613126', '3.813', '3.923804', '4.029', '4.236068', '4.328', '4.521357', '4.615'],
  ...['4.792', '4.863703', '4.863703', '5.122'],
]
const search = { absolute: 1e-4, why: 'the packing is found by a search of a few milliseconds; whole radii make the bundle as many millimetres wide' }

export const reference: readonly Reference[] = [
  {
    source: 'Best known packings of equal circles in a circle (Kravitz, Graham, Pirl, Melissen, Fodor)',
    clause: 'ratio of the radii, 1 to 20 circles',
    status: 'published',
    notes: '1 to 14 and 19 are proven to be the best; the others are the best known.',
    cases: printed.map((ratio, index) => ({
      title: `${index + 1} equal wire${index === 0 ? '' : 's'}: bundle over wire diameter`,
      printed: ratio,
      unit: '1',
      got: () => bundleDiameterMm(Array.from({ length: index + 1 }, () => 1.7)) / 1.7,
      ...(/^\d\.\d{3}$/.test(ratio)
        ? { allowed: truncated }
        : { allowed: { absolute: 1e-6, why: 'a closed form: the search settles within a millionth of it, and whole ratios are exact' } }),
    })),
  },
  {
    source: 'Best known packings of circles of radius 1, 2, 3 ... n in a circle',
    clause: 'radius of the container, n from 5 to 10',
    status: 'from memory',
    cases: ['9.001398', '11.057040', '13.462111', '16.221747', '19.233193', '22.000193'].map((radius, index) => ({
      title: `wires of radius 1 to ${index + 5}: radius of the bundle`,
      printed: radius,
      unit: 'mm',
      got: () => bundleDiameterMm(Array.from({ length: index + 5 }, (_one, k) => 2 * (k + 1))) / 2,
      allowed: search,
    })),
  },
]
