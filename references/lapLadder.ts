import { breakEvenOverlapMm, lapJointResistanceOhm, transferLengthMm } from '../packages/core/src/joint/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

const laps = [
  { r1: 0.0172, r2: 0.0172, g: 1e5, mm: 10, printed: '0.001114503646' },
  { r1: 0.0172, r2: 1e-9, g: 2e5, mm: 4, printed: '0.001272849623' },
  { r1: 0.0172, r2: 0.0172, g: 1e7, mm: 10, printed: '0.0001154926004' },
] as const

const like = { conductorsOhmPerM: [0.0172, 0.0172], interfaceSPerM: 1e5 } as const

/** Overlap joint by a finite-difference ladder of 40,000 intervals, accurate to 1e-7. */
export const reference: Reference = {
  source: 'overlap of two conductors: finite-difference ladder of 40,000 intervals',
  clause: 'resistance of three laps; break-even overlap of like wires; a solder lap of 1 mm2 wires',
  status: 'derived',
  cases: [
    ...laps.map(
      ({ r1, r2, g, mm, printed }): ReferenceCase => ({
        title: `r1 ${r1}, r2 ${r2} ohm/m, g ${g} S/m, ${mm} mm`,
        printed,
        unit: 'ohm',
        got: () => lapJointResistanceOhm({ overlapMm: mm, conductorsOhmPerM: [r1, r2], interfaceSPerM: g }),
      }),
    ),
    {
      title: 'break-even of like wires in half transfer lengths, root of x = coth x',
      printed: '1.1996786402577337',
      unit: '1',
      got: () => (breakEvenOverlapMm(like) ?? Number.NaN) / transferLengthMm(like) / 2,
      allowed: { relative: 1e-14, why: 'printed to the last digits of a double' },
    },
    {
      title: 'two 1 mm2 copper wires, solder 1 mm wide and 0.1 mm thick at 1.5e-7 ohm m: transfer length',
      printed: '0.66',
      unit: 'mm',
      got: () => transferLengthMm({ conductorsOhmPerM: [0.0172, 0.0172], interfaceSPerM: 6.7e7 }),
    },
  ],
}
