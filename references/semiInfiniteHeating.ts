import { heatJoint } from '../packages/core/src/heating/index.ts'
import type { Reference } from './compare.ts'

const storeJPerK = 0.0622384
const copper = { densityKgPerM3: 8890, specificHeatJPerKgK: 385, conductivityWPerMK: 391 }
const areaMm2 = 1
const toolRiseK = 327
const timesS = [0.1, 0.3, 1, 2] as const

/** A lump between two bare lossless copper wires, heated through a resistance; risesK at its edge and 5 mm along. */
function rises(resistanceKPerW: number, accuracy: number) {
  const lapMm = (storeJPerK / (2 * (areaMm2 / 1e6) * copper.densityKgPerM3 * copper.specificHeatJPerKgK)) * 1000
  const side = {
    areaMm2,
    ...copper,
    diameterMm: 1.2,
    stubMm: 5,
    stubFilmWPerM2K: 0,
    insulation: 'PVC',
    insulationOutsideMm: 1.2,
    insulationFilmWPerM2K: 0,
  } as const
  const result = heatJoint({
    ambientC: 23,
    tool: { kind: 'iron', setC: 23 + toolRiseK, tipResistanceKPerW: 0, contactResistanceKPerW: resistanceKPerW },
    joint: { lapMm, diameterMm: 2.4, solderMm3: 0, filmWPerM2K: 0, emissivity: 0 },
    conductors: [side, side],
    alloy: 'Sn63Pb37',
    toolOffS: 2,
    sampleTimesS: timesS,
    accuracy,
  })
  return { joint: result.jointC.map((c) => c - 23), edge: (result.edgeC[0] ?? []).map((c) => c - 23) }
}

/** Printed rises in K: of the joint, and 5 mm along the wire. */
const printed = [
  {
    resistanceKPerW: 6,
    roots: 'complex',
    joint: ['60.82446339', '130.7084667', '223.1798934', '260.6113763'],
    edge: ['9.18319908', '51.09668013', '146.9446413', '201.0808005'],
  },
  {
    resistanceKPerW: 60,
    roots: 'real',
    joint: ['6.72393738', '16.91875011', '41.41565928', '64.52158554'],
    edge: ['0.97502943', '6.20110404', '25.17721654', '46.29191271'],
  },
] as const

/** A lump on semi-infinite rods: closed form in erfc by Laplace transform. */
export const reference: Reference = {
  source: 'closed form of a lump on two half-infinite rods behind a resistance',
  clause: 'two tails of 1 mm2 copper, 0.0622384 J/K, tool 327 K above; checked against a numerical inversion',
  status: 'derived',
  cases: [1, 0.01].flatMap((accuracy) =>
    printed.flatMap(({ resistanceKPerW, roots, ...lists }) =>
      (['joint', 'edge'] as const).flatMap((place) =>
        lists[place].map((value, k) => ({
          title: `${resistanceKPerW} K/W (${roots} roots), ${place === 'joint' ? 'lump' : '5 mm along'}, ${timesS[k]} s, accuracy ${accuracy}`,
          printed: value,
          unit: 'K',
          got: () => rises(resistanceKPerW, accuracy)[place][k] ?? Number.NaN,
          allowed: { absolute: 0.3 * accuracy, why: 'what this accuracy promises of temperatures' },
        })),
      ),
    ),
  ),
}
