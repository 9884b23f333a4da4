import { dropBudget, loadCurrentA, locateDrop, smallestSizeForDrop, voltageDropV } from '../packages/core/src/circuit/index.ts'
import {
  acceptanceReadings,
  contactPeakC,
  filmResistanceOhm,
  interfaceConductanceSPerM,
  lapCurrents,
  lapNetworkResistanceOhm,
  unlikeContact,
  wettedStrandsResistivityOhmM,
} from '../packages/core/src/joint/index.ts'
import { continuityProof, dropTestVerdict, fourWireResistanceOhm, twoWireProof } from '../packages/core/src/meter/index.ts'
import { fuseForWire, fuseOpeningS, prospectiveCurrentA, terminalCurrentA } from '../packages/core/src/protection/index.ts'
import { fuseBands } from '../packages/core/src/tables/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'
import { digits, root, solve } from './numerics.ts'

type Resistor = readonly [from: number, to: number, ohm: number]

/** Potentials of a network's nodes for currents fed into them; node 0 is at 0 V. */
function potentials(nodes: number, resistors: readonly Resistor[], fedA: Readonly<Record<number, number>>): readonly number[] {
  const matrix = Array.from({ length: nodes }, () => new Array<number>(nodes).fill(0))
  const add = (row: number, column: number, value: number) => {
    const line = matrix[row] as number[]
    line[column] = (line[column] as number) + value
  }
  for (const [from, to, ohm] of resistors) {
    add(from, from, 1 / ohm)
    add(to, to, 1 / ohm)
    add(from, to, -1 / ohm)
    add(to, from, -1 / ohm)
  }
  matrix[0] = [1, ...new Array<number>(nodes - 1).fill(0)]
  return solve(
    matrix,
    Array.from({ length: nodes }, (_node, k) => (k === 0 ? 0 : (fedA[k] ?? 0))),
  )
}

/** A lap as two chains of short pieces with rungs of solder between them, different solder per stretch, with 1 A fed into one end of the first wire. */
function ladder(r1: number, r2: number, stretches: readonly { readonly lengthMm: number; readonly gSPerM: number }[], pieces: number) {
  const lengthM = stretches.reduce((sum, { lengthMm }) => sum + lengthMm, 0) / 1000
  const dx = lengthM / pieces
  const gAt = (xM: number) => {
    let passed = 0
    for (const { lengthMm, gSPerM } of stretches) {
      passed += lengthMm / 1000
      if (xM <= passed + 1e-15) return gSPerM
    }
    return stretches.at(-1)?.gSPerM ?? 0
  }
  // Nodes are at the middle of each piece, so the chains end half a piece away.
  const first = (k: number) => 1 + k
  const second = (k: number) => 1 + pieces + k
  const resistors: Resistor[] = [[second(pieces - 1), 0, (r2 * dx) / 2]]
  for (let k = 0; k < pieces; k += 1) {
    const g = gAt((k + 0.5) * dx)
    if (g > 0) resistors.push([first(k), second(k), 1 / (g * dx)])
    if (k + 1 < pieces) resistors.push([first(k), first(k + 1), r1 * dx], [second(k), second(k + 1), r2 * dx])
  }
  const v = potentials(1 + 2 * pieces, resistors, { [first(0)]: 1 })
  const share = (k: number) => ((v[first(k)] as number) - (v[first(k + 1)] as number)) / (r1 * dx)
  return { ohm: (v[first(0)] as number) + (r1 * dx) / 2, share }
}
/** Richardson extrapolation of two meshes: the error is quadratic in the piece's length. */
const extrapolated = (of: (pieces: number) => number): number => (4 * of(120) - of(60)) / 3

const rungs = { relative: 2e-4, why: 'ladders of 60 and 120 pieces, extrapolated' }
const exact = { relative: 1e-9, why: 'the same circuit by its node equations' }
const solved = (title: string, unit: string, value: number, got: () => number, allowed = exact): ReferenceCase => ({
  title,
  printed: digits(value),
  unit,
  got,
  allowed,
})

const unlike = { conductorsOhmPerM: [0.0172, 0.043], interfaceSPerM: 2e6 } as const
const patchy = [
  { lengthMm: 2, gSPerM: 2e6 },
  { lengthMm: 2, gSPerM: 0 },
  { lengthMm: 2, gSPerM: 5e5 },
] as const

/** A round strand with its share of solder in a transverse field: potentials A r inside, B r + C/r in the solder, r outside, matched at both faces. */
function coatedStrandOhmM(strandOhmM: number, solderOhmM: number, share: number): number {
  const a = Math.sqrt(share)
  const [strandS, solderS] = [1 / strandOhmM, 1 / solderOhmM]
  const flux = (acrossS: number) => {
    const [, B = 0, C = 0] = solve(
      [
        [a, -a, -1 / a],
        [strandS, -solderS, solderS / a ** 2],
        [0, 1, 1],
      ],
      [0, 0, 1],
    )
    return solderS * (B - C) - acrossS
  }
  return 1 / root(flux, solderS, strandS)
}

/** Source, feed, joint, load and return as five resistors in series; node 0 is the source's negative pole. */
const chain = [0.031, 0.004, 0.052, 2.8, 0.035] as const
const chainV = potentials(
  6,
  chain.map((ohm, k): Resistor => [k === 4 ? 0 : 5 - k - 1 + 0, 5 - k, ohm]),
  { 5: 4 },
)
/** Current of a 60 W load at 12.4 V behind 0.12 ohm: the root with the higher voltage. */
const powerA = root((currentA) => (12.4 - 0.12 * currentA) * currentA - 60, 0, 12.4 / 0.24)
/** Two faces touching at four spots: spot resistances in parallel, in series with the cluster's. */
const spotMm = Math.sqrt((5 / 50 / Math.PI) * 1) / 2
const spotOhm = (rho1: number, rho2: number, radiusMm: number) => (rho1 + rho2) / (4 * radiusMm * 1e-3)
const contactOhm = spotOhm(1.15e-7, 6.4e-8, spotMm) / 4 + spotOhm(1.15e-7, 6.4e-8, 0.5) + 1e-12 / ((5 / 50) * 1e-6)
/** Temperature for a contact voltage by the Lorenz relation, solved numerically in kelvin. */
const peakC = root((c) => Math.sqrt(4 * 2.45e-8 * ((c + 273.15) ** 2 - 313.15 ** 2)) - 0.05, 41, 2000)
const contact = () =>
  unlikeContact({
    forceN: 5,
    faces: [
      { resistivityOhmM: 1.15e-7, hardnessMPa: 50, filmOhmM2: 1e-12 },
      { resistivityOhmM: 6.4e-8, hardnessMPa: 1500, filmOhmM2: 0 },
    ],
    spots: 4,
    clusterRadiusMm: 0.5,
    realAreaFactor: 1,
  }).resistanceOhm

const band = [
  { multiple: 1.1, shortestS: 360_000, longestS: null },
  { multiple: 1.35, shortestS: 0.75, longestS: 600 },
  { multiple: 2, shortestS: 0.15, longestS: 5 },
] as const
/** Time by linear interpolation on log-log axes, by bisection. */
function onLogPaper(multiple: number, from: readonly [number, number], to: readonly [number, number]): number {
  let [a, b] = [from, to]
  for (let n = 0; n < 80; n += 1) {
    const middle = [Math.sqrt(a[0] * b[0]), Math.sqrt(a[1] * b[1])] as const
    if (middle[0] > multiple) b = middle
    else a = middle
  }
  return a[1]
}

/** Current that brings a terminal to its limit, with heat proportional to I^2 and loss to the rise, solved numerically. */
const terminalA = root((currentA) => 60 + 85 * (currentA / 10) ** 2 - 105, 0, 20)
/** Sizes of a series; the first whose resistance keeps the drop. */
const ladderOfSizes = [0.5, 0.75, 1, 1.5, 2.5, 4, 6] as const
const sizeMm2 = ladderOfSizes.find((areaMm2) => 8 * ((2 * 5 * 1.7241e-8) / (areaMm2 * 1e-6)) <= 0.6) ?? Number.NaN

/** Share of its rating that a fuse keeps at 40 C, of 0.12 % lost per kelvin above 23 C. */
const hotShare = 1 - 0.0012 * (40 - 23)

export const reference: readonly Reference[] = [
  {
    source: 'laps as two chains of short wires with rungs of solder, node by node',
    clause: '6 mm of 0.0172 and 0.043 ohm/m, 2e6 S/m',
    status: 'derived',
    cases: [
      solved(
        'share of the first wire after a third of the lap',
        '1',
        extrapolated((n) => ladder(0.0172, 0.043, [{ lengthMm: 6, gSPerM: 2e6 }], n).share(n / 3 - 1)),
        () => lapCurrents({ ...unlike, overlapMm: 6, atMm: [2] })[0]?.firstShare ?? Number.NaN,
        rungs,
      ),
      solved(
        'resistance with the middle third dry and the last third poor',
        'ohm',
        extrapolated((n) => ladder(0.0172, 0.043, patchy, n).ohm),
        () =>
          lapNetworkResistanceOhm({
            conductorsOhmPerM: [0.0172, 0.043],
            stretches: patchy.map(({ lengthMm, gSPerM }) => ({ lengthMm, interfaceSPerM: gSPerM })),
          }),
        rungs,
      ),
      solved('layer of 0.1 mm solder 0.6 mm wide with a film of 2e-12 ohm m2: slabs in series', 'S/m', 1 / ((1.5e-7 * 1e-4 + 2e-12) / 0.6e-3), () =>
        interfaceConductanceSPerM({ bondWidthMm: 0.6, layerMm: 0.1, layerOhmM: 1.5e-7, filmOhmM2: 2e-12 }),
      ),
      solved('spots side by side in a patch, with a film', 'ohm', contactOhm, contact),
      solved('strands in solder, three quarters copper: a strand in its shell', 'ohm m', coatedStrandOhmM(1.7241e-8, 1.5e-7, 0.75), () =>
        wettedStrandsResistivityOhmM({ resistivityOhmM: 1.7241e-8, solderOhmM: 1.5e-7, copperShare: 0.75 }),
      ),
      solved('film of 1e-11 ohm m2 on 0.02 mm2', 'ohm', 1e-11 / 0.02e-6, () => filmResistanceOhm({ filmOhmM2: 1e-11, areaMm2: 0.02 })),
      solved('spot of a contact with 50 mV between parts at 40 C', 'C', peakC, () => contactPeakC({ contactV: 0.05, bulkC: 40 })),
    ],
  },
  {
    source: 'circuits and instruments by their node equations',
    clause: 'five resistors in a row, loads, offsets and accuracies carried through',
    status: 'derived',
    cases: [
      solved('drop of wires and joints, all but the load', 'V', (chainV[5] as number) - 4 * 2.8, () =>
        voltageDropV({ currentA: 4, outResistanceOhm: 0.031 + 0.052, returnResistanceOhm: 0.035, jointsOhm: [0.004] }),
      ),
      solved('share of the third resistor', '1', (4 * 0.052) / (chainV[5] as number), () => {
        const { shares } = dropBudget({ currentA: 4, elements: chain.map((resistanceOhm, k) => ({ name: String(k), resistanceOhm })) })
        return shares[2]?.share ?? Number.NaN
      }),
      solved('the joint found from voltages along the way, 0.052 ohm', 'ohm', 0.052, () => {
        const along = [5, 4, 3, 2].map((node) => ({ name: String(node), voltageV: chainV[node] as number }))
        return locateDrop({ currentA: 4, points: along }).stretches[2]?.resistanceOhm ?? Number.NaN
      }),
      solved('60 W at 12.4 V through 0.12 ohm', 'A', powerA, () => loadCurrentA({ supplyV: 12.4, seriesOhm: 0.12, load: { kind: 'power', powerW: 60 } })),
      solved(
        'short at the far end: 12.6 V, 0.02 and 0.118 ohm',
        'A',
        potentials(2, [[0, 1, 0.138]], { 1: 12.6 / 0.138 })[1] as number,
        () => prospectiveCurrentA({ supplyV: 12.6, sourceOhm: 0.02, loopOhm: 0.118 }) * 0.138,
      ),
      solved('smallest metric size for 8 A over 5 m and back within 0.6 V at 20 C', 'mm2', sizeMm2, () =>
        Number(
          smallestSizeForDrop({
            series: 'IEC 60228',
            currentA: 8,
            outLengthM: 5,
            returnLengthM: 5,
            allowedDropV: 0.6,
            material: 'annealed-copper',
            temperatureC: 20,
          })?.areaMm2,
        ),
      ),
      solved('four wires, 1.7 milliohm at 3 A with 8 microvolt of thermal voltage, both directions', 'ohm', 0.0017, () =>
        fourWireResistanceOhm({ forwardV: 3 * 0.0017 + 8e-6, reversedV: -3 * 0.0017 + 8e-6, currentA: 3 }),
      ),
      solved('the same in one direction keeps the offset', 'ohm', 0.0017 + 8e-6 / 3, () => fourWireResistanceOhm({ forwardV: 3 * 0.0017 + 8e-6, currentA: 3 })),
      solved('two leads of 0.2 ohm, reading 0.5 ohm within 0.5 % and 3 digits of 0.01: largest drop at 4 A', 'V', 4 * (0.5 - 0.2 + 0.0025 + 0.03), () =>
        Number(
          twoWireProof({
            readingOhm: 0.5,
            meter: { percentOfReading: 0.5, counts: 3, resolutionOhm: 0.01, leadOhm: 0.2, leadUncertaintyOhm: 0 },
            currentA: 4,
            allowedDropV: 1,
          }).dropHighV,
        ),
      ),
      solved('drop of 8 mV within 0.5 mV at 2 A, at the working 4 A: largest', 'V', (4 / 2) * 0.0085, () =>
        Number(dropTestVerdict({ measuredV: 0.008, uncertaintyV: 0.0005, testA: 2, workingA: 4, allowedDropV: 1 }).dropHighV),
      ),
      solved('a tone below 20 to 40 ohm, at 0.25 A: largest drop', 'V', 0.25 * 40, () =>
        Number(continuityProof({ toneBelowOhm: { low: 20, high: 40 }, toned: true, currentA: 0.25, allowedDropV: 1 }).dropHighV),
      ),
      solved(
        'largest reading, leads taken off, that may still be a joint of 5 ohm',
        'ohm',
        root((reading) => reading - (0.005 * (reading + 0.2) + 0.03 + 0.1) - 5, 5, 6),
        () =>
          Number(
            acceptanceReadings({
              acceptanceOhm: 5,
              handMeter: { percentOfReading: 0.5, counts: 3, resolutionOhm: 0.01, leadOhm: 0.2, leadUncertaintyOhm: 0.1 },
            })[0]?.failsAboveOhm,
          ),
      ),
    ],
  },
  {
    source: 'fuses and terminals by trial',
    clause: 'halving a line on doubly logarithmic paper; heat balance of a terminal',
    status: 'derived',
    cases: [
      solved('slow edge at 1.6 times the rating, between 600 s at 1.35 and 5 s at 2', 's', onLogPaper(1.6, [1.35, 600], [2, 5]), () =>
        Number(fuseOpeningS({ ratedA: 10, band, currentA: 16 }).longestS),
      ),
      solved('fast edge there', 's', onLogPaper(1.6, [1.35, 0.75], [2, 0.15]), () => Number(fuseOpeningS({ ratedA: 10, band, currentA: 16 }).shortestS)),
      solved('fuse weakened by a tenth: the same line at 16/0.9', 's', onLogPaper(16 / 9, [1.35, 600], [2, 5]), () =>
        Number(fuseOpeningS({ ratedA: 10, ambientFactor: 0.9, band, currentA: 16 }).longestS),
      ),
      solved(
        'smallest blade for 4.2 A in 40 C that spares a wire of 16 A, by trial of all ratings',
        'A',
        Number(fuseBands['ISO 8820-3'].ratingsA.find((rated) => rated * hotShare * 0.75 >= 4.2 && 1.35 * rated * hotShare <= 16)),
        () => Number(fuseForWire({ loadA: 4.2, wireA: 16, ambientC: 40, series: 'ISO 8820-3', loadFraction: 0.75, ambientLossPerK: 0.0012 }).ratedA),
      ),
      solved('terminal of 10 A at 20 C and 105 C at most, in 60 C', 'A', terminalA, () =>
        terminalCurrentA({ ratedCurrentA: 10, ratedAmbientC: 20, limitC: 105, ambientC: 60 }),
      ),
    ],
  },
]
