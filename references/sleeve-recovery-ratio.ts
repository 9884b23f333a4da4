import { recoveryRatio } from '@strandwise/core/sleeve'
import { sleeveSizes } from '@strandwise/core/tables'
import type { Reference } from './compare.ts'

type Row = { readonly nominal: string; readonly suppliedInsideMm: number; readonly recoveredInsideMm: number; readonly status: string }

/** The class prints one ratio for all its sizes, and each size is rounded by itself. */
function ratioCases(rows: readonly Row[], relative: number, why: string): Reference['cases'] {
  return rows
    .filter((row) => row.status === 'published')
    .map((row) => ({
      title: `size ${row.nominal}: ${row.suppliedInsideMm} mm supplied, ${row.recoveredInsideMm} mm recovered, ratio`,
      printed: '2',
      unit: '1',
      got: () => recoveryRatio(row),
      allowed: { relative, why },
    }))
}

export const reference: readonly Reference[] = [
  {
    source: 'SAE AS23053/5',
    edition: '2016',
    clause: 'dimension table, classes 1 and 2, sizes as makers declare them: ratio 2:1',
    status: 'published',
    notes: 'Sizes 3 and 4 are from memory and left out.',
    cases: ratioCases(
      sleeveSizes['AS23053/5'].rows,
      0.04,
      'inch sizes printed to a thousandth, the smallest being 0.031 in: half of the last digit twice is 4 %',
    ),
  },
  {
    source: 'Data sheet of flame-retardant cross-linked polyolefin sleeve, metric sizes',
    clause: 'size table: ratio 2:1',
    status: 'published',
    cases: ratioCases(sleeveSizes['metric 2:1'].rows, 0.02, 'sizes printed to a tenth of a millimetre, and halves rounded again: 9.5 mm to 4.8 mm is 1.98'),
  },
]
