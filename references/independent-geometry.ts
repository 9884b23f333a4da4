import { remainingAreaMm2, strandedAreaMm2, tinAreaMm2, tinnedResistanceOhmPerM } from '../packages/core/src/conductor/index.ts'
import { barrelFill, compressionFraction, crimpHeightMm, pullShareOfConductor } from '../packages/core/src/crimp/index.ts'
import { chooseSleeve, cutLengthMm, fitSleeve, recoveredWallMm, stackLayers, steppedSleeve } from '../packages/core/src/sleeve/index.ts'
import { solderPartsMm3, solderVolumeMm3, solderWireLengthMm, strandVoidMm2 } from '../packages/core/src/solder/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'
import { digits, integral, root } from './numerics.ts'

/** Area of a circle by summing rings. */
const discMm2 = (diameterMm: number): number => integral((r) => 2 * Math.PI * r, 0, diameterMm / 2)
const quadrature = { relative: 1e-6, why: 'quadrature of the section, fine to a millionth' }
const solved = (title: string, unit: string, value: number, got: () => number): ReferenceCase => ({
  title,
  printed: digits(value),
  unit,
  got,
  allowed: quadrature,
})

/** Area between two touching circles and a common tangent, by quadrature between the contact points. */
function valleyMm2(r1: number, r2: number): number {
  const apart = r1 + r2
  // The line y = m x + c touches a circle of radius r at (a, 0) from above if c = r sqrt(1 + m^2) - m a.
  const slope = root((m) => r1 * Math.hypot(1, m) - (r2 * Math.hypot(1, m) - m * apart), -0.999, 0.999)
  const height = r1 * Math.hypot(1, slope)
  const foot = (centre: number, r: number) => centre - (r * slope) / Math.hypot(1, slope)
  const [from, to] = [foot(0, r1), foot(apart, r2)]
  const line = (x: number) => slope * x + height
  // Substitution x = r sin(angle), as the arcs are steep where the circles touch.
  const under = (r: number, low: number, high: number) => integral((angle) => (r * Math.cos(angle)) ** 2, Math.asin(low / r), Math.asin(high / r))
  return integral(line, from, to) - under(r1, from, r1) - under(r2, -r2, to - apart)
}

/** Length of a string round both circles. */
function stringMm(r1: number, r2: number): number {
  const n = 20_000
  const hull = (angle: number) => Math.max(r1, r2 + (r1 + r2) * Math.cos(angle))
  // The perimeter of a convex shape is the integral of its support function.
  return integral(hull, -Math.PI, Math.PI, n)
}

const lap = { overlapMm: 6, diametersMm: [1.6, 0.9], strandVoidMm2: 0.2 } as const
const solderMm3 = lap.overlapMm * (2 * valleyMm2(0.8, 0.45) + lap.strandVoidMm2)

/** Wall on a core from its volume, by summing rings. */
const ringMm2 = (insideMm: number, wallMm: number): number => integral((r) => 2 * Math.PI * r, insideMm / 2, insideMm / 2 + wallMm)
const wallOn = (coreMm: number, recoveredInsideMm: number, recoveredWallMmFree: number): number =>
  root((wall) => ringMm2(coreMm, wall) - ringMm2(recoveredInsideMm, recoveredWallMmFree), 0, 10)

const tube = {
  material: 'polyolefin',
  suppliedInsideMm: 6,
  recoveredInsideMm: 2,
  recoveredWallMm: 0.9,
  longitudinalChange: { low: -0.1, high: 0.05 },
} as const
const firstOutsideMm = 3.4 + 2 * wallOn(3.4, 2, 0.9)
const secondOutsideMm = firstOutsideMm + 2 * wallOn(firstOutsideMm, 2, 0.9)
const stacked = () => stackLayers({ coreMm: 3.4, jointMm: 12, layers: [tube, tube].map((one) => ({ ...one, overlapEachSideMm: 10 })) })
const stepped = () =>
  steppedSleeve({
    sleeve: tube,
    steps: [
      { diameterMm: 2.4, lengthMm: 15 },
      { diameterMm: 3.4, lengthMm: 12 },
    ],
  })

/** Tin on seven strands of 0.4 mm, 0.004 mm thick, as rings. */
const tinMm2 = 7 * (discMm2(0.4) - discMm2(0.392))
const copperMm2 = 7 * discMm2(0.392)
/** Area left of seven 0.5 mm strands: two broken, the others reduced by 0.03 mm all round. */
const leftMm2 = 5 * discMm2(0.44)

/** Height of a rectangle with cut corners that holds the metal, solved numerically. */
const heightMm = root((h) => 1.9 * h * 0.88 - (1.55 + 1.02 * 0.83), 0, 5)

export const reference: readonly Reference[] = [
  {
    source: 'sections of wires, solder, barrels and tubes by quadrature',
    clause: 'areas and volumes added up ring by ring and strip by strip',
    status: 'derived',
    cases: [
      solved('solder of a lap of 1.6 and 0.9 mm over 6 mm, voids of 0.2 mm2', 'mm3', solderMm3, () => solderVolumeMm3(lap)),
      solved('its fillets alone', 'mm3', lap.overlapMm * 2 * valleyMm2(0.8, 0.45), () => solderPartsMm3(lap).filletMm3),
      solved(
        'a skin of 0.04 mm round the pair: length of the string',
        'mm3',
        6 * 0.04 * stringMm(0.8, 0.45),
        () => solderPartsMm3({ ...lap, coatingMm: 0.04 }).coatingMm3,
      ),
      solved('1 mm solder wire with a tenth of flux for it', 'mm', solderMm3 / (discMm2(1) * 0.9), () =>
        solderWireLengthMm({ volumeMm3: solderVolumeMm3(lap), wireDiameterMm: 1, fluxVolumeFraction: 0.1 }),
      ),
      solved('voids of 1.5 mm2 in a round of 1.6 mm', 'mm2', discMm2(1.6) - 1.5, () => strandVoidMm2({ areaMm2: 1.5, diameterMm: 1.6 })),
      solved('19 strands of 0.25 mm', 'mm2', 19 * discMm2(0.25), () => strandedAreaMm2({ strandCount: 19, strandDiameterMm: 0.25 })),
      solved('tin on seven strands', 'mm2', tinMm2, () => tinAreaMm2({ strandCount: 7, strandDiameterMm: 0.4, tinThicknessMm: 0.004 })),
      solved('area left of seven strands, two broken, the others corroded', 'mm2', leftMm2, () =>
        remainingAreaMm2({ areaMm2: 7 * discMm2(0.5), strandCount: 7, brokenStrands: 2, corrodedDepthMm: 0.03 }),
      ),
      solved('copper and tin side by side at 20 C, resistivities 1.7241e-8 and the table of tin', 'S m', copperMm2, () => {
        const both = tinnedResistanceOhmPerM({ copperAreaMm2: copperMm2, tinAreaMm2: tinMm2, temperatureC: 20 })
        const tin = tinnedResistanceOhmPerM({ copperAreaMm2: 1e-12, tinAreaMm2: tinMm2, temperatureC: 20 })
        return (1 / both - 1 / tin) * 1.7241e-8 * 1e6
      }),
    ],
  },
  {
    source: 'tubes shrunk onto steps, volume of the wall found by trial',
    clause: 'tube of 2 mm and 0.9 mm wall when free',
    status: 'derived',
    cases: [
      solved('wall on 3.4 mm', 'mm', wallOn(3.4, 2, 0.9), () => recoveredWallMm({ recoveredWallMm: 0.9, recoveredInsideMm: 2, ontoMm: 3.4 })),
      solved('outside of the tube chosen for 5.1 mm', 'mm', 5.1 + 2 * wallOn(5.1, 2, 0.9), () =>
        Number(chooseSleeve({ largestMm: 5.1, smallestMm: 3, stock: [tube] })[0]?.outsideMm),
      ),
      solved('wall on 5.1 mm', 'mm', wallOn(5.1, 2, 0.9), () => recoveredWallMm({ recoveredWallMm: 0.9, recoveredInsideMm: 2, ontoMm: 5.1 })),
      solved('outside of the second of two layers', 'mm', secondOutsideMm, () => stacked().outsideMm),
      solved(
        'length to cut of the second layer: 12 mm and twice 20 mm, 10 % shorter when shrunk',
        'mm',
        root((cut) => cut - 0.1 * cut - 52, 0, 100),
        () => Number(stacked().layers[1]?.cutLengthMm),
      ),
      solved('largest outside over steps of 2.4 and 3.4 mm', 'mm', firstOutsideMm, () => stepped().outsideMm),
      solved(
        'length to cut of 32 mm that ends 5 % longer or 10 % shorter: the longest',
        'mm',
        root((cut) => cut - 0.1 * cut - 32, 0, 100),
        () => cutLengthMm({ jointMm: 12, overlapEachSideMm: 10, longitudinalChange: { low: -0.1, high: 0.05 } }),
      ),
      solved(
        'grip on 2.6 mm of a tube that shrinks to 2 mm: share left',
        '1',
        0.3,
        () => fitSleeve({ ...tube, largestMm: 5, smallestMm: 2.6 }).marginRecovered,
      ),
      solved('room over 5 mm in a tube of 6 mm: share', '1', 0.2, () => fitSleeve({ ...tube, largestMm: 5, smallestMm: 2.6 }).marginSupplied),
      solved('shrink left of the way from 6 to 2 mm', '1', 0.15, () => fitSleeve({ ...tube, largestMm: 5, smallestMm: 2.6 }).unresolvedOfRange),
    ],
  },
  {
    source: 'crimped sections by trial',
    clause: '1.02 mm2 of strands with 17 % squeezed out, 1.55 mm2 of barrel, 1.9 mm wide, 0.88 of a rectangle',
    status: 'derived',
    cases: [
      solved('height', 'mm', heightMm, () =>
        crimpHeightMm({ conductorAreaMm2: 1.02, barrelMetalAreaMm2: 1.55, compressionFraction: 0.17, crimpWidthMm: 1.9, shapeFactor: 0.88 }),
      ),
      solved('compression found again from that section', '1', 0.17, () =>
        compressionFraction({ looseAreaMm2: 1.02, crimpedAreaMm2: 1.9 * heightMm * 0.88 - 1.55 }),
      ),
      solved('fill of a 2 mm bore by strands of 1 and 0.75 mm2', '1', 1.75 / discMm2(2), () => barrelFill({ conductorAreasMm2: [1, 0.75], barrelInsideMm: 2 })),
      solved(
        'stress of 120 N in 0.82 mm2 of annealed copper over its lowest strength of 210 MPa',
        '1',
        120 / 0.82 / 210,
        () => pullShareOfConductor({ forceN: 120, areaMm2: 0.82, material: 'annealed-copper' }).high,
      ),
    ],
  },
]
