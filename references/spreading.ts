import { filletConductanceSPerM, interfaceConductanceSPerM, lapJointResistanceOhm, wireSpreadingOhmM } from '../packages/core/src/joint/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

/** Spreading resistance over resistivity, by finite volumes in the disc and by a boundary method: width over diameter, value. */
const spreading = [
  { widthOverDiameter: 0.02, printed: '1.505665' },
  { widthOverDiameter: 0.1, printed: '0.9934926' },
  { widthOverDiameter: 0.25, printed: '0.7025249' },
  { widthOverDiameter: 0.5, printed: '0.4843826' },
  { widthOverDiameter: 0.75, printed: '0.3594921' },
  { widthOverDiameter: 1, printed: '0.2737996' },
] as const

/** Laps of two round wires with a uniform strip along the surface, by two three-dimensional solutions. */
const laps = [
  { diametersMm: [1.13, 1.13], bondWidthMm: 0.565, layerMm: 0.1, overlapMm: 4.52, corrected: '5.883229e-05', solvedOhm: '5.8748e-05' },
  { diametersMm: [1.13, 1.13], bondWidthMm: 0.565, layerMm: 0.02, overlapMm: 1.13, corrected: '3.232806e-05', solvedOhm: '3.1314e-05' },
  { diametersMm: [1.78, 0.98], bondWidthMm: 0.5, layerMm: 0.1, overlapMm: 4, corrected: '4.7358e-05', solvedOhm: '4.7273e-05' },
] as const

/** Fillets between two equal round wires, by finite elements of the cross-section. */
const fillets = [
  { diameterMm: 1.13, gapMm: 0.1, bondWidthMm: 0.565, solderOhmM: 1.5e-7, corrected: '18339780', solvedSPerM: '18208000' },
  { diameterMm: 1.13, gapMm: 0.02, bondWidthMm: 0.565, solderOhmM: 1.5e-7, corrected: '30745430', solvedSPerM: '30900000' },
  { diameterMm: 0.8, gapMm: 0.08, bondWidthMm: 0.4, solderOhmM: 3.67e-7, corrected: '8610641', solvedSPerM: '8646400' },
] as const

const copperOhmM = 1.7241e-8
const solderOhmM = 1.5e-7

function lapOhm({ diametersMm, bondWidthMm, layerMm, overlapMm }: (typeof laps)[number]): number {
  const ohmPerM = (diameterMm: number): number => (copperOhmM * 4e6) / (Math.PI * diameterMm * diameterMm)
  const stripOhmM = 1 / interfaceConductanceSPerM({ bondWidthMm, layerMm, layerOhmM: solderOhmM })
  const inWires = diametersMm.reduce((sum, diameterMm) => sum + wireSpreadingOhmM({ resistivityOhmM: copperOhmM, diameterMm, bondWidthMm }), 0)
  return lapJointResistanceOhm({
    overlapMm,
    conductorsOhmPerM: [ohmPerM(diametersMm[0]), ohmPerM(diametersMm[1])],
    interfaceSPerM: 1 / (stripOhmM + inWires),
  })
}

const fillet = ({ diameterMm, gapMm, bondWidthMm, solderOhmM: solder }: (typeof fillets)[number]): number =>
  filletConductanceSPerM({ diameterMm, resistivityOhmM: copperOhmM, gapMm, bondWidthMm, solderOhmM: solder })

const seven = { relative: 3e-7, why: 'seven digits are printed' } as const

/** Spreading of the current inside the wires of a soldered overlap. */
export const reference: readonly Reference[] = [
  {
    source: 'spreading in round wires: closed form and field solutions',
    clause: 'strip along the surface at one potential; lap with it; fillet between like wires',
    status: 'derived',
    cases: [
      ...spreading.map(
        ({ widthOverDiameter, printed }): ReferenceCase => ({
          title: `spreading over resistivity, strip of ${widthOverDiameter} diameters`,
          printed,
          unit: '1',
          got: () => wireSpreadingOhmM({ resistivityOhmM: 1, diameterMm: 1, bondWidthMm: widthOverDiameter }),
          allowed: seven,
        }),
      ),
      ...laps.map(
        (lap): ReferenceCase => ({
          title: `lap of ${lap.diametersMm.join(' and ')} mm, strip ${lap.bondWidthMm} by ${lap.layerMm} mm, ${lap.overlapMm} mm: the corrected model`,
          printed: lap.corrected,
          unit: 'ohm',
          got: () => lapOhm(lap),
          allowed: seven,
        }),
      ),
      ...laps.map(
        (lap): ReferenceCase => ({
          title: `the same in three dimensions: ${lap.overlapMm} mm of ${lap.diametersMm[0]} mm, layer ${lap.layerMm} mm`,
          printed: lap.solvedOhm,
          unit: 'ohm',
          got: () => lapOhm(lap),
          allowed: { relative: 0.04, why: 'the model is one-dimensional: up to 4 % high from one wire diameter of overlap on' },
        }),
      ),
      ...fillets.map(
        (one): ReferenceCase => ({
          title: `fillet ${one.bondWidthMm} mm across ${one.diameterMm} mm wires ${one.gapMm} mm apart: the closed form`,
          printed: one.corrected,
          unit: 'S/m',
          got: () => fillet(one),
          allowed: seven,
        }),
      ),
      ...fillets.map(
        (one): ReferenceCase => ({
          title: `the same by finite elements: ${one.diameterMm} mm, ${one.gapMm} mm apart`,
          printed: one.solvedSPerM,
          unit: 'S/m',
          got: () => fillet(one),
          allowed: { relative: 0.015, why: 'current straight across and a fitted width of spreading: within 1.5 % of the field in this range' },
        }),
      ),
    ],
  },
]
