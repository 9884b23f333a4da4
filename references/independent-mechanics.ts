import { packBundle } from '../packages/core/src/bundle/index.ts'
import { layFactor, massKgPerM } from '../packages/core/src/conductor/index.ts'
import { shearLagPeakRatio, shearLagPerMm, twistedJointOverlap, wrappedJointBondWidthMm, wrappedJointOverlap } from '../packages/core/src/joint/index.ts'
import { flexLifeCycles, freeSpanFrequencyHz, slackAfterCutBack } from '../packages/core/src/routing/index.ts'
import { capillaryRiseMm, lapStrengthN } from '../packages/core/src/solder/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'
import { digits, integral, root, solve } from './numerics.ts'

const close = { relative: 1e-6, why: 'solved numerically to a millionth' }
const solved = (title: string, unit: string, value: number, got: () => number, allowed = close): ReferenceCase => ({
  title,
  printed: digits(value),
  unit,
  got,
  allowed,
})

/** Helix length per axial length, by summing chords. */
function helixMmPerMm(diameterMm: number, pitchMm: number): number {
  const at = (t: number) => [(diameterMm / 2) * Math.cos(t), (diameterMm / 2) * Math.sin(t), (pitchMm * t) / (2 * Math.PI)] as const
  const n = 40_000
  let sum = 0
  for (let k = 0; k < n; k += 1) {
    const [a, b] = [at((2 * Math.PI * k) / n), at((2 * Math.PI * (k + 1)) / n)]
    sum += Math.hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2])
  }
  return sum / pitchMm
}

/** First root of a beam, k = L (m w^2/EI)^(1/4): integrates y'''' = k^4 y from one support and solves for the k that meets the other's conditions. */
function beamRoot(ends: 'pinned' | 'fixed'): number {
  const shoot = (start: readonly [number, number, number, number], k: number) => {
    let y = [...start]
    const n = 400
    const h = 1 / n
    const rate = (v: readonly number[]) => [v[1], v[2], v[3], k ** 4 * (v[0] as number)] as number[]
    const plus = (v: readonly number[], w: readonly number[], f: number) => v.map((value, j) => value + f * (w[j] as number))
    for (let step = 0; step < n; step += 1) {
      const a = rate(y)
      const b = rate(plus(y, a, h / 2))
      const c = rate(plus(y, b, h / 2))
      const d = rate(plus(y, c, h))
      y = y.map((value, j) => value + (h / 6) * ((a[j] as number) + 2 * (b[j] as number) + 2 * (c[j] as number) + (d[j] as number)))
    }
    return y as [number, number, number, number]
  }
  const miss = (k: number) => {
    // Two free initial conditions; the far end requires y = 0, and y'' = 0 (pinned) or y' = 0 (fixed).
    const [first, second] = ends === 'pinned' ? [shoot([0, 1, 0, 0], k), shoot([0, 0, 0, 1], k)] : [shoot([0, 0, 1, 0], k), shoot([0, 0, 0, 1], k)]
    const other = ends === 'pinned' ? 2 : 1
    return first[0] * (second[other] as number) - second[0] * (first[other] as number)
  }
  return ends === 'pinned' ? root(miss, 2.5, 4) : root(miss, 4, 5.5)
}
const frequencyHz = (ends: 'pinned' | 'fixed'): number => ((beamRoot(ends) / 0.25) ** 2 / (2 * Math.PI)) * Math.sqrt(1500e-6 / 0.011)

/** Peak over mean shear of a lap of two glued bars, by a ladder of springs. */
function ladderPeak(): number {
  const n = 400
  const dx = 6 / n
  // Strain of each bar per force; shear per slip.
  const bars = [1 / 110e3, 1 / 110e3] as const
  const slipStiffness = 10e3 * (1 / 0.1)
  // Unknown: slip at each rung. Its second difference is slip times (1/EA + 1/EA) G w/s; force 1 enters bar 1 at x = 0 and leaves bar 2 at x = L.
  const beta = slipStiffness * (bars[0] + bars[1])
  const matrix = Array.from({ length: n + 1 }, (_row, k) => {
    const row = new Array<number>(n + 1).fill(0)
    if (k === 0) {
      row[0] = -1 - (beta * dx * dx) / 2
      row[1] = 1
    } else if (k === n) {
      row[n] = -1 - (beta * dx * dx) / 2
      row[n - 1] = 1
    } else {
      row[k - 1] = 1
      row[k] = -2 - beta * dx * dx
      row[k + 1] = 1
    }
    return row
  })
  const right = new Array<number>(n + 1).fill(0)
  right[0] = -bars[0] * dx
  right[n] = -bars[1] * dx
  const slip = solve(matrix, right)
  const mean = slip.reduce((sum, value, k) => sum + value * (k === 0 || k === n ? 0.5 : 1), 0) / n
  return Math.max(...slip) / mean
}
const bars = { shearModulusMPa: 10e3, bondWidthMm: 1, layerMm: 0.1 }

/** Cycles to failure at this strain, by solving the strain law. */
const cyclesAt = (strain: number): number => root((logCycles) => strain - 0.3 * (2 * Math.exp(logCycles)) ** -0.6, 0, 40)
const twisted = () =>
  twistedJointOverlap({
    diametersMm: [1.1, 0.8],
    turns: 2,
    pitchMm: 5,
    filletWidthMm: 0.6,
    layerMm: 0.05,
    layerOhmM: 1.5e-7,
    resistivityOhmM: 1.7241e-8,
    filmOhmM2: 0,
    conductorsOhmPerM: [0.02, 0.04],
  })
const wrapped = () =>
  wrappedJointOverlap({
    coreDiameterMm: 1.1,
    wrapDiameterMm: 0.8,
    turns: 5,
    pitchMm: 1.2,
    filletWidthMm: 0.5,
    layerMm: 0.05,
    layerOhmM: 1.5e-7,
    resistivityOhmM: 1.7241e-8,
    filmOhmM2: 0,
    conductorsOhmPerM: [0.02, 0.04],
  })
/** Capillary rise: height at which the column's weight equals the pull along its edge. */
const riseMm = root((h) => 8400 * 9.80665 * (0.1e-3 * h * 1e-3) - 2 * 0.45 * Math.cos(0.5), 0, 1000)

export const reference: readonly Reference[] = [
  {
    source: 'lengths along a helix by chords',
    clause: 'strands, twisted and wrapped wires',
    status: 'derived',
    cases: [
      solved('lay of a layer 2.4 mm across, pitch 30 mm', '1', helixMmPerMm(2.4, 30), () => layFactor({ layerDiameterMm: 2.4, pitchMm: 30 })),
      solved('first wire of a twisted pair, 1.1 mm, 5 mm a turn', 'ohm/m', 0.02 * helixMmPerMm(1.1, 5), () => twisted().conductorsOhmPerM[0]),
      solved('wire of 0.8 mm wrapped on 1.1 mm, 1.2 mm a turn', 'ohm/m', 0.04 * helixMmPerMm(1.9, 1.2), () => wrapped().conductorsOhmPerM[1]),
      solved('fillet of 0.5 mm along that wrap, per length of joint', 'mm', 0.5 * helixMmPerMm(1.1, 1.2), () =>
        wrappedJointBondWidthMm({ coreDiameterMm: 1.1, pitchMm: 1.2, filletWidthMm: 0.5 }),
      ),
      solved(
        'copper of 1.5 mm2 with 2 % of lay, 8890 kg/m3',
        'kg/m',
        integral(() => 8890 * 1.5e-6 * 1.02, 0, 1, 2),
        () => massKgPerM({ areaMm2: 1.5, material: 'annealed-copper', layFactor: 1.02 }),
      ),
    ],
  },
  {
    source: 'beams, bars, strains and columns solved by trial',
    clause: 'shooting from one support, ladder of 400 rungs, bisection',
    status: 'derived',
    cases: [
      solved('free span of 250 mm, 1500 N mm2, 11 g/m, pinned', 'Hz', frequencyHz('pinned'), () =>
        freeSpanFrequencyHz({ spanMm: 250, stiffnessNMm2: 1500, massKgPerM: 0.011, ends: 'pinned' }),
      ),
      solved('the same, fixed', 'Hz', frequencyHz('fixed'), () => freeSpanFrequencyHz({ spanMm: 250, stiffnessNMm2: 1500, massKgPerM: 0.011, ends: 'fixed' })),
      solved(
        'peak shear of a lap of 6 mm over its mean, like bars of 1 mm2 of copper',
        '1',
        ladderPeak(),
        () =>
          shearLagPeakRatio({
            lengthMm: 6,
            perMm: shearLagPerMm({
              ...bars,
              conductors: [
                { modulusMPa: 110e3, areaMm2: 1 },
                { modulusMPa: 110e3, areaMm2: 1 },
              ],
            }),
          }),
        { relative: 1e-4, why: 'a ladder of 400 rungs, of second order in their distance' },
      ),
      solved(
        'cycles at a strain amplitude of 0.01, coefficient 0.3 and exponent -0.6',
        '1',
        Math.exp(cyclesAt(0.01)),
        () => flexLifeCycles({ strainAmplitude: 0.01 }).cycles,
      ),
      solved('rise of solder in a slit of 0.1 mm', 'mm', riseMm, () =>
        capillaryRiseMm({ gapMm: 0.1, densityKgPerM3: 8400, surfaceTensionNPerM: 0.45, contactAngleRad: 0.5, shape: 'slit' }),
      ),
      solved(
        'lap of 6 mm, 1.2 mm wide, 30 MPa: shear added up',
        'N',
        integral(() => 30 * 1.2, 0, 6, 2),
        () => Number(lapStrengthN({ alloy: 'Sn63Pb37', overlapMm: 6, bondWidthMm: 1.2, shearMPa: 30 }).shortTimeN),
      ),
    ],
  },
  {
    source: 'lengths of wire kept in a ledger',
    clause: '45 mm of slack, 70 mm cut off, 6 mm into each joint, 20 mm to stay',
    status: 'derived',
    cases: [
      {
        title: 'left with one joint',
        printed: '-31',
        unit: 'mm',
        got: () => slackAfterCutBack({ slackMm: 45, cutBackMm: 70, jointConsumesMm: 6, serviceSlackMm: 20 }).leftMm,
      },
      {
        title: 'to put in, with two joints',
        printed: '57',
        unit: 'mm',
        got: () => slackAfterCutBack({ slackMm: 45, cutBackMm: 70, jointConsumesMm: 6, serviceSlackMm: 20 }).insertMm,
      },
      {
        title: 'seven wires of 2 mm packed: largest reach of an outer wire from the centre',
        printed: '3',
        unit: 'mm',
        got: () => Math.max(...packBundle([2, 2, 2, 2, 2, 2, 2]).centresMm.map(({ xMm, yMm }) => Math.hypot(xMm, yMm))) + 1,
        allowed: { absolute: 1e-5, why: 'the search settles within a millionth of the bundle' },
      },
    ],
  },
]
