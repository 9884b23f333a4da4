import {
  altitudeFactor,
  bundleCurrentA,
  bundleStates,
  bundleTemperatureC,
  conductorTemperatureBandC,
  dutyCurrentA,
  effectiveAmbientC,
  nonAdiabaticFactor,
  temperatureOverStepsC,
} from '../packages/core/src/ampacity/index.ts'
import { areaMm2ToAwg, awgToAreaMm2, awgToDiameterMm, identifyWire, nearestAwg, parseAwg } from '../packages/core/src/conductor/index.ts'
import { rayleighNumber } from '../packages/core/src/heat/index.ts'
import { tipContactKPerW } from '../packages/core/src/heating/index.ts'
import { fuseProtectsWire } from '../packages/core/src/protection/index.ts'
import { wireVerdict } from '../packages/core/src/verdict/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'
import { digits, integral, root } from './numerics.ts'
import { lossWPerM, rayleighOf } from './remake/air.ts'

/** One insulated wire in still air, from the published equations: Churchill and Chu, Sutherland, radiation to the air's temperature. */
const wire = { areaMm2: 1, conductorDiameterMm: 1.28, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30 } as const
const outsideM = 2.48e-3
const ohmPerM = (c: number) => (1.7241e-8 / 1e-6) * (1 + 0.00393 * (c - 20))
const insulationKmPerW = Math.log(2.48 / 1.28) / (2 * Math.PI * 0.17)

/** Conductor temperature of one wire at a current: solves for the surface at which loss equals heat. */
function aloneC(currentA: number, ambientC: number): number {
  const conductor = (surface: number) => surface + lossWPerM(surface, outsideM, { ambientC }) * insulationKmPerW
  const surface = root((s) => lossWPerM(s, outsideM, { ambientC }) - currentA ** 2 * ohmPerM(conductor(s)), ambientC + 1e-9, 500)
  return conductor(surface)
}
/** Centre temperature of n loaded wires packed in the middle of a bundle: uniform heat in the core, then conduction through the filling. */
function centreC(currentA: number, n: number, bundleM: number, ambientC: number): number {
  const coreM = Math.min(n === 1 ? outsideM : outsideM * Math.sqrt(n / 0.8), bundleM)
  const fill = 0.2
  const heat = (centre: number) => n * currentA ** 2 * ohmPerM(centre)
  const surface = (centre: number) => root((s) => lossWPerM(s, bundleM, { ambientC }) - heat(centre), ambientC + 1e-9, 900)
  return root((c) => c - (surface(c) + heat(c) / (4 * Math.PI * fill) + (heat(c) * Math.log(bundleM / coreM)) / (2 * Math.PI * fill)), ambientC + 0.01, 600)
}
/** Loaded wires packed alone: the core is the bundle. */
const bundleC = (currentA: number, n: number, bundleM: number, ambientC: number): number =>
  Math.max(centreC(currentA, n, bundleM, ambientC), centreC(currentA, n, outsideM * Math.sqrt(n / 0.8), ambientC), aloneC(currentA, ambientC))

/** First-order system stepped through cycles until periodic: peak rise for 1 A^2. */
function cyclePeak(onS: number, offS: number, tauS: number): number {
  let rise = 0
  let peak = 0
  const steps = 4000
  for (let cycle = 0; cycle < 60; cycle += 1) {
    for (const [seconds, target] of [
      [onS, 1],
      [offS, 0],
    ] as const) {
      const h = seconds / steps
      for (let k = 0; k < steps; k += 1) {
        const half = rise + ((target - rise) * h) / (2 * tauS)
        rise += ((target - half) * h) / tauS
      }
      if (target === 1) peak = rise
    }
  }
  return peak
}

/** A bare wire with constant film through two loads, by a fourth-order Runge-Kutta method. */
const stepped = { areaMm2: 0.5, conductorDiameterMm: 0.8, insulationThicknessMm: 0, insulationConductivityWPerMK: 1, ambientC: 20, filmWPerM2K: 30 } as const
const bare = { conductorDensityKgPerM3: 8890, conductorSpecificHeatJPerKgK: 385 } as const
function afterSteps(steps: readonly { readonly currentA: number; readonly timeS: number }[]): number {
  const storeJPerMK = 0.5e-6 * 8890 * 385
  const rate = (c: number, currentA: number) =>
    (currentA ** 2 * (1.7241e-8 / 0.5e-6) * (1 + 0.00393 * (c - 20)) - 30 * Math.PI * 0.8e-3 * (c - 20)) / storeJPerMK
  let c = 20
  for (const { currentA, timeS } of steps) {
    const n = 2000
    const h = timeS / n
    for (let k = 0; k < n; k += 1) {
      const a = rate(c, currentA)
      const b = rate(c + (h / 2) * a, currentA)
      const d = rate(c + (h / 2) * b, currentA)
      const e = rate(c + h * d, currentA)
      c += (h / 6) * (a + 2 * b + 2 * d + e)
    }
  }
  return c
}
const loads = [
  { currentA: 12, timeS: 20 },
  { currentA: 4, timeS: 15 },
] as const

/** AWG diameters: 39 equal ratios from 0.460 in (4/0) to 0.005 in (36). */
const gaugeMm = (gauge: number): number => {
  let inches = 0.005
  const ratio = Math.exp(Math.log(92) / 39)
  for (let k = 36; k > gauge; k -= 1) inches *= ratio
  return inches * 25.4
}

/** Whole gauge whose diameter is the nearest, by ratio. */
function nearestOf(areaMm2: number): number {
  const mm = Math.sqrt((4 * areaMm2) / Math.PI)
  const apart = (gauge: number) => Math.abs(Math.log(gaugeMm(gauge) / mm))
  return Array.from({ length: 40 }, (_one, k) => k - 3).reduce((best, gauge) => (apart(gauge) < apart(best) ? gauge : best))
}

/** Relative density of the standard atmosphere: integrates pressure upwards at a lapse of 6.5 K per kilometre. */
function densityRatio(altitudeM: number): number {
  const kelvin = (h: number) => 288.15 - 0.0065 * h
  const logPressure = -integral((h) => (9.80665 * 28.9644e-3) / (8.31432 * kelvin(h)), 0, altitudeM)
  return (Math.exp(logPressure) * 288.15) / kelvin(altitudeM)
}

/** Times of wire and fuse at one current, with constant adiabatic heating of the wire. */
const band = [
  { multiple: 1.35, shortestS: 0.75, longestS: 600 },
  { multiple: 2, shortestS: 0.15, longestS: 5 },
  { multiple: 6, shortestS: 0.03, longestS: 0.1 },
] as const

const apart = { relative: 1e-4, why: 'the same equations written apart, sought by bisection; air by its published fits' }
const solved = (title: string, unit: string, value: number, got: () => number, allowed: ReferenceCase['allowed'] = apart): ReferenceCase => ({
  title,
  printed: digits(value),
  unit,
  got,
  ...(allowed === undefined ? {} : { allowed }),
})

export const reference: readonly Reference[] = [
  {
    source: 'one wire and a bundle in still air, the balance written apart from the published equations',
    clause: '1 mm2, 0.6 mm wall of 0.17 W/(m K), 30 C, Churchill and Chu',
    status: 'derived',
    cases: [
      solved('conductor at 15 A: the hotter of the two correlations', 'C', aloneC(15, 30), () => conductorTemperatureBandC({ ...wire, currentA: 15 }).high),
      solved('Rayleigh number of 2.48 mm at 60 C in 30 C', '1', rayleighOf(60, 30, outsideM), () => rayleighNumber(60, 30, outsideM, 101325)),
      solved(
        'centre of five loaded wires in a bundle of 12 mm, 7 A each',
        'C',
        bundleC(7, 5, 12e-3, 30),
        () => bundleTemperatureC({ ...wire, currentA: 7, loadedWires: 5, bundleOutsideMm: 12 }).centreC,
      ),
      solved(
        'centre of those five packed by themselves',
        'C',
        centreC(7, 5, outsideM * Math.sqrt(5 / 0.8), 30),
        () => bundleStates({ ...wire, currentA: 7, loadedWires: 5, bundleOutsideMm: 12 })[1].centreC,
        { relative: 5e-3, why: 'the library packs five wires as they lie best, not at 0.8 of the circle' },
      ),
      solved(
        'the wire judged at 15 A and 80 C: its temperature',
        'C',
        aloneC(15, 30),
        () => wireVerdict({ wire, limitC: 80, hottestC: 30, currentA: 15 }).conductorC?.high ?? Number.NaN,
      ),
      solved(
        'current of each of them at 80 C',
        'A',
        root((a) => bundleC(a, 5, 12e-3, 30) - 80, 1, 20),
        () => Number(bundleCurrentA({ ...wire, limitC: 80, loadedWires: 5, bundleOutsideMm: 12 })),
      ),
      solved(
        'air in which one wire alone would be as hot',
        'C',
        root((a) => aloneC(7, a) - bundleC(7, 5, 12e-3, 30), 0, 200),
        () => effectiveAmbientC({ ...wire, currentA: 7, loadedWires: 5, bundleOutsideMm: 12 }),
      ),
    ],
  },
  {
    source: 'standard atmosphere by integrating the pressure upwards',
    clause: 'ISO 2533: 288.15 K, 6.5 K a kilometre; current kept by laminar free convection: fourth root of the density',
    status: 'derived',
    cases: [solved('current kept at 3048 m, convection alone', '1', densityRatio(3048) ** 0.25, () => altitudeFactor({ altitudeM: 3048 }))],
  },
  {
    source: 'slab of solder under a tip, layer on layer',
    clause: 'flat of 2 x 2 mm, 0.1 mm more of Sn63Pb37 at 50 W/(m K)',
    status: 'derived',
    cases: [
      solved(
        'resistance added',
        'K/W',
        integral(() => 1 / (50 * 4e-6), 0, 1e-4, 10),
        () => {
          const wetted = (bridgeMm: number) => tipContactKPerW({ diameterMm: 2.4, tipWidthMm: 2, bridgeMm, solderWPerMK: 50 }).wettedKPerW
          return wetted(0.3) - wetted(0.2)
        },
      ),
    ],
  },
  {
    source: 'loads in time stepped through',
    clause: 'one time constant, or a bare wire under a constant film',
    status: 'derived',
    cases: [
      solved('30 s on and 90 s off, 60 s: current for the peak of 10 A', 'A', 10 / Math.sqrt(cyclePeak(30, 90, 60)), () =>
        dutyCurrentA({ onS: 30, offS: 90, timeConstantS: 60, steadyA: 10 }),
      ),
      solved('0.5 mm2, 12 A for 20 s, then 4 A for 15 s', 'C', afterSteps(loads), () =>
        Number(temperatureOverStepsC({ ...stepped, ...bare, steps: loads }).endsC.at(-1)),
      ),
      solved(
        'eps squared of the simplified standard form, 1.5 mm2 and 1 s, X 0.29, Y 0.06: terms added up',
        '1',
        1 + 0.29 * (1 / 1.5) ** 0.5 + 0.06 / 1.5,
        () => nonAdiabaticFactor({ areaMm2: 1.5, timeS: 1, xMm2PerS: 0.29, yMm2PerS: 0.06 }) ** 2,
      ),
      solved(
        'seconds that 0.5 mm2 takes to 160 C over those of the slow edge, where they come closest',
        '1',
        Math.min(
          ...Array.from({ length: 4001 }, (_step, k) => {
            const currentA = 10 * 1.35 * (6 / 1.35) ** (k / 4000)
            const multiple = currentA / 10
            const [from, to] = multiple <= 2 ? ([band[0], band[1]] as const) : ([band[1], band[2]] as const)
            const slope = Math.log(to.longestS / from.longestS) / Math.log(to.multiple / from.multiple)
            const fuseS = from.longestS * (multiple / from.multiple) ** slope
            return wireTimeS(currentA, 160) / fuseS
          }),
        ),
        () => {
          const { worst } = fuseProtectsWire({ ratedA: 10, band, wire: { ...stepped, ...bare }, limitC: 160, prospectiveA: 60 })
          return Number(worst.wireS) / Number(worst.fuseLongestS)
        },
        { relative: 0.02, why: 'the closest point is looked for on another grid of currents' },
      ),
      solved(
        'that time of the wire over its closed form at the same current',
        '1',
        1,
        () => {
          const { worst } = fuseProtectsWire({ ratedA: 10, band, wire: { ...stepped, ...bare }, limitC: 160, prospectiveA: 60 })
          return Number(worst.wireS) / wireTimeS(worst.currentA, 160)
        },
        { relative: 1e-3, why: 'the library solves the heating in time by its own steps' },
      ),
    ],
  },
  {
    source: 'American wire gauge by 39 equal ratios',
    clause: '0.460 in for 4/0, 0.005 in for 36',
    status: 'derived',
    cases: [
      solved('diameter of 18', 'mm', gaugeMm(18), () => awgToDiameterMm(18)),
      solved('diameter of 2/0', 'mm', gaugeMm(-1), () => awgToDiameterMm(-1)),
      solved('gauge of the area of 14', '1', 14, () => areaMm2ToAwg((Math.PI / 4) * gaugeMm(14) ** 2)),
      solved('diameter of the size written 4/0', 'mm', 0.46 * 25.4, () => awgToDiameterMm(parseAwg('4/0'))),
      solved('whole gauge nearest to 1.6 mm2, by trial of all', '1', nearestOf(1.6), () => nearestAwg(1.6)),
      solved('area of the gauge that 19 strands of 0.0372 in make: 6', 'mm2', (Math.PI / 4) * gaugeMm(6) ** 2, () => {
        const strandDiameterMm = { low: 0.0371 * 25.4, high: 0.0373 * 25.4 }
        return Number(identifyWire({ strandCount: 19, strandDiameterMm }).find(({ standard }) => standard === 'AWG')?.areaMm2)
      }),
      solved('area of 22', 'mm2', (Math.PI / 4) * gaugeMm(22) ** 2, () => awgToAreaMm2(22)),
    ],
  },
]

/** Time in which the bare wire with its film reaches a temperature. */
function wireTimeS(currentA: number, limitC: number): number {
  const storeJPerMK = 0.5e-6 * 8890 * 385
  const ohm20 = 1.7241e-8 / 0.5e-6
  const lossWPerMK = 30 * Math.PI * 0.8e-3
  // C dT/dt = a + b T, with T the rise over 20 C.
  const a = currentA ** 2 * ohm20
  const b = currentA ** 2 * ohm20 * 0.00393 - lossWPerMK
  const rise = limitC - 20
  const inner = 1 + (b * rise) / a
  return inner <= 0 ? Number.POSITIVE_INFINITY : (storeJPerMK / b) * Math.log(inner)
}
