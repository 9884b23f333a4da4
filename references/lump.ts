import { heatJoint } from '../packages/core/src/heating/index.ts'

/** A body at one temperature in a stream: heatJoint with wires that conduct nothing. */
interface Lump {
  readonly storeJPerK: number
  readonly surfaceMm2: number
  readonly filmWPerM2K: number
  readonly startC: number
  readonly streamC: number
}

const lapMm = 10_000
const metal = { densityKgPerM3: 1000, specificHeatJPerKgK: 1000, conductivityWPerMK: 1e-9 }

function run({ storeJPerK, surfaceMm2, filmWPerM2K, startC, streamC }: Lump, solidusC: number, sampleS: number) {
  const areaMm2 = (storeJPerK / (metal.densityKgPerM3 * metal.specificHeatJPerKgK * (lapMm / 1000))) * 1e6
  return heatJoint({
    ambientC: startC,
    tool: { kind: 'hot-air', airC: streamC, filmWPerM2K },
    joint: { lapMm, diameterMm: 1, surfaceMm2, solderMm3: 0, filmWPerM2K: 0, emissivity: 0 },
    conductors: [{ areaMm2, ...metal, stubMm: 1, stubFilmWPerM2K: 0, insulation: 'PVC', insulationOutsideMm: 1000, insulationFilmWPerM2K: 0 }],
    alloy: { solidusC, liquidusC: solidusC, densityKgPerM3: 1000, specificHeatJPerKgK: 0, latentHeatJPerKg: 0 },
    toolOffS: Math.max(2 * sampleS, 1e4),
    sampleTimesS: [sampleS],
    accuracy: 0.01,
  })
}

/** Time at which a lump reaches a temperature. A cooling body is mirrored into a heating one: only differences count here. */
export function lumpTimeToS(lump: Lump, wantedC: number): number {
  const upside = lump.streamC < lump.startC
  const of = (temperatureC: number): number => (upside ? lump.startC - temperatureC : temperatureC - lump.startC)
  return run({ ...lump, startC: 0, streamC: of(lump.streamC) }, of(wantedC), 1).solidusAtS ?? Number.NaN
}

/** Temperature after a time, in the same way. */
export function lumpAfterC(lump: Lump, timeS: number): number {
  const upside = lump.streamC < lump.startC
  const difference = Math.abs(lump.streamC - lump.startC)
  const rise = (run({ ...lump, startC: 0, streamC: difference }, 2 * difference, timeS).jointC[0] ?? Number.NaN) * (upside ? -1 : 1)
  return lump.startC + rise
}

/** Heat capacity and surface of a ball. */
export const ball = (diameterMm: number, densityKgPerM3: number, specificHeatJPerKgK: number): Pick<Lump, 'storeJPerK' | 'surfaceMm2'> => ({
  storeJPerK: ((Math.PI * diameterMm ** 3) / 6e9) * densityKgPerM3 * specificHeatJPerKgK,
  surfaceMm2: Math.PI * diameterMm ** 2,
})
