import { requireAboveUpTo, requireBetween } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'

// Well beyond any real joint, yet within what double precision resolves.

const coldestC = -273.15
const hottestC = 3000

/** Accepted ranges of heatJoint's inputs, ends included; temperatures are above absolute zero. */
export const heatLimits = /* @__PURE__ */ frozen({
  lapMm: [1e-3, 1e4],
  diameterMm: [1e-7, 1e3],
  surfaceMm2: [1e-9, 1e8],
  solderMm3: [0, 1e7],
  areaMm2: [1e-12, 1e4],
  stubMm: [0, 1e4],
  /** A clip closer than this would sit on the joint. */
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
  /** Resistance of a tip or clip; may be 0. */
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
  /** Length of a run. */
  timeS: [1e-9, 1e7],
  sampleS: [0, 1e8],
  observeS: [1e-9, 1e8],
  share: [0, 1],
  /** Below the first value a run takes seconds; above the second the result means nothing. */
  accuracy: [0.001, 10],
} as const satisfies Readonly<Record<string, readonly [number, number]>>)

/** Requires a number within its limits. */
export function requireWithin(parameter: string, value: number, limit: keyof typeof heatLimits): number {
  const [low, high] = heatLimits[limit]
  return requireBetween(parameter, value, low, high)
}

/** Requires a temperature above absolute zero, within the model's limits. */
export function requireJointTemperature(parameter: string, value: number): number {
  return requireAboveUpTo(parameter, value, coldestC, hottestC)
}
