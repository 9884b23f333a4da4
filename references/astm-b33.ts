import { maximumTinnedResistivityOhmM } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

/** Span of diameters in mm and the mass resistivity at 20 C that the standard prints for it, in ohm g/m2. */
const rows = [
  [0.076, 0.28, '0.16454'],
  [0.28, 0.51, '0.16279'],
  [0.51, 2.6, '0.15940'],
  [2.6, 7.4, '0.15776'],
  [7.4, 11.7, '0.15695'],
] as const

/** Density of copper in conductor calculations, g/m3. */
const densityGPerM3 = 8.89e6

export const reference: Reference = {
  source: 'ASTM B33, Tinned Soft or Annealed Copper Wire',
  edition: '2004',
  clause: 'table 2, maximum resistivity',
  status: 'published',
  cases: rows.map(
    ([thinnest, thickest, printed]): ReferenceCase => ({
      title: `wire of ${thinnest} to ${thickest} mm: resistivity times 8.89 g/cm3`,
      printed,
      unit: 'ohm g/m2',
      got: () => maximumTinnedResistivityOhmM((thinnest + thickest) / 2) * densityGPerM3,
      looksUp: true,
    }),
  ),
}
