import { requireAboveUpTo, requireBetween } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'

// Far beyond any joint, and near enough that double precision still tells its heat from rounding.

const coldestC = -273.15
const hottestC = 3000

/** Ends of what heatJoint takes, both included; temperatures lie above absolute zero. */
export const heatLimits = /* @__PURE__ */ frozen({
  lapMm: [1e-3, 1e4],
  diameterMm: [1e-7, 1e3],
  surfaceMm2: [1e-9, 1e8],
  solderMm3: [0, 1e7],
  areaMm2: [1e-12, 1e4],
  stubMm: [0, 1e4],
  /** A clip nearer than this stands on the joint, not on the wire. */
  clipMm: [0.01, 1e4],
  sweptMm: [0, 1e4],
  filmWPerM2K: [0, 1e7],
  conductivityWPerMK: [1e-9, 1e12],
  factor: [1, 1000],
  densityKgPerM3: [1e-9, 1e6],
  specificHeatJPerKgK: [1e-9, 1e6],
  alloyDensityKgPerM3: [1e-3, 1e6],
  alloySpecificHeatJPerKgK: [0, 1e6],
  latentHeatJPerKg: [0, 1e8],
  resistanceKPerW: [1e-6, 1e9],
  /** Of a tip or a clip, which may be nothing. */
  smallResistanceKPerW: [0, 1e9],
  tipHeatCapacityJPerK: [0, 1e6],
  powerW: [1e-6, 1e6],
  airSpeedMPerS: [0, 1e4],
  pressurePa: [1, 1e9],
  tubeMm: [1e-4, 1e3],
  gripWPerM2K: [1e-3, 1e12],
  /** Range of a temperature that advice may vary. */
  leverC: [-273, hottestC],
  superheatK: [0, 1e4],
  /** A run no shorter than this. */
  timeS: [1e-9, 1e7],
  sampleS: [0, 1e8],
  observeS: [1e-9, 1e8],
  share: [0, 1],
  /** Finer than the first the run takes seconds; coarser than the last says nothing. */
  accuracy: [0.001, 10],
} as const satisfies Readonly<Record<string, readonly [number, number]>>)

/** A number within its limits. */
export function requireWithin(parameter: string, value: number, limit: keyof typeof heatLimits): number {
  const [low, high] = heatLimits[limit]
  return requireBetween(parameter, value, low, high)
}

/** A temperature above absolute zero that a joint may meet. */
export function requireJointTemperature(parameter: string, value: number): number {
  return requireAboveUpTo(parameter, value, coldestC, hottestC)
}
