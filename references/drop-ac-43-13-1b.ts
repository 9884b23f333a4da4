import { coilResistanceAtOhm, voltageDropV } from '../packages/core/src/circuit/index.ts'
import { faaAc4313 } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

const row = (runFt: number, gauge: string, ohmPerFt: number, printed: string): ReferenceCase => ({
  title: `20 A through ${runFt} ft of AWG ${gauge} at ${ohmPerFt} ohm/ft`,
  printed,
  unit: 'V',
  got: () => voltageDropV({ currentA: 20, outResistanceOhm: runFt * ohmPerFt, returnResistanceOhm: 0 }),
})

const source = 'FAA AC 43.13-1B, Acceptable Methods, Techniques, and Practices, aircraft inspection and repair'
const edition = '8 September 1998 with change 1 of 27 September 2001'

/** A run of 39 ft at 20 C, shortened so that the same copper at another temperature drops as much. */
const shortened = (temperatureC: number, printed: string): ReferenceCase => ({
  title: `39 ft at 20 C, shortened for copper at ${temperatureC} C`,
  printed,
  unit: 'ft',
  got: () => 39 / coilResistanceAtOhm({ resistanceOhm: 1, atC: 20, wantedC: temperatureC }),
  allowed: { relative: 1.5e-4, why: 'the circular rounds the zero-resistance temperature of copper to -234.5 C; a coefficient of 0.00393 gives -234.45 C' },
})

/** Largest gauge number of the circular's own wire that keeps a drop. */
function gaugeFor(currentA: number, runFt: number, allowedV: number): number {
  const drops = faaAc4313.wires.map(({ gauge, tinnedOhmPer1000Ft }) => ({
    gauge,
    dropV: voltageDropV({ currentA, outResistanceOhm: (runFt * tinnedOhmPer1000Ft) / 1000, returnResistanceOhm: 0 }),
  }))
  return Math.max(...drops.filter(({ dropV }) => dropV <= allowedV).map(({ gauge }) => gauge))
}

export const reference: readonly Reference[] = [
  {
    source,
    edition,
    clause: 'table 11-7, drop of the run and gauge that the chart gives',
    status: 'published',
    cases: [row(107, '6', 0.00044, '0.942'), row(90, '4', 0.00028, '0.504'), row(88, '12', 0.00202, '3.6'), row(100, '14', 0.00306, '6.12')],
  },
  {
    source,
    edition,
    clause: 'table 11-8, drop of the longest run that the chart gives',
    status: 'published',
    notes: 'The row of 19.5 ft prints .366 where the product is 0.4914: a misprint, not used.',
    cases: [row(39, '10', 0.00126, '0.98'), row(156, '10', 0.00126, '3.93'), row(273, '10', 0.00126, '6.88')],
  },
  {
    source,
    edition,
    clause: 'paragraph 11-68, example 1',
    status: 'published',
    notes:
      "Its tin-plated AWG 10 has 26 % more resistance than solid pure copper of that gauge, which would keep 1 V by a hair: a size by pure copper is not the circular's.",
    cases: [{ title: '20 A, continuous, over 50 ft within 1 V of 28 V', printed: '8', unit: 'AWG', got: () => gaugeFor(20, 50, 1) }],
  },
  {
    source,
    edition,
    clause: 'paragraph 11-66 (4), rule of the shortened run; no figure is printed, these follow from the rule',
    status: 'derived',
    cases: [shortened(60, '33.703'), shortened(100, '29.673'), shortened(150, '25.814')],
  },
]
