import { conductorTemperatureC, steadyCurrentA, temperatureAfterC, timeToTemperatureS, wireState } from '../packages/core/src/ampacity/index.ts'
import {
  churchillBernsteinNusselt,
  criticalRadiusMm,
  finConductanceWPerK,
  heatFlowWPerM,
  insulationResistanceMKPerW,
  naturalConvectionNusselt,
} from '../packages/core/src/heat/index.ts'
import type { Reference } from './compare.ts'
import { ball, lumpAfterC, lumpTimeToS } from './lump.ts'

const steady = { temperatureCoefficient20PerK: 0 } as const
/** Dutta 3.8: wire of 2.6 mm, rubber of 1.3 mm, 0.00422 ohm/m at its temperature. */
const rubber = {
  ...steady,
  areaMm2: Math.PI * 1.3 ** 2,
  resistivity20OhmM: 0.00422 * Math.PI * 1.3e-3 ** 2,
  insulationThicknessMm: 1.3,
  insulationConductivityWPerMK: 0.14,
  ambientC: 30,
  filmWPerM2K: 15,
}
const rubberA = () => steadyCurrentA({ ...rubber, limitC: 90 }) ?? Number.NaN
/** Dutta 3.2: heating coil, 1000 W at 220 V. */
const coil = {
  ...steady,
  areaMm2: (Math.PI / 4) * 0.574 ** 2,
  resistivity20OhmM: 4.167 * (Math.PI / 4) * 0.574e-3 ** 2,
  insulationThicknessMm: 0,
  insulationConductivityWPerMK: 1,
  conductorDensityKgPerM3: 8920,
  conductorSpecificHeatJPerKgK: 384,
  ambientC: 21,
  filmWPerM2K: 100,
  currentA: 1000 / 220,
}
/** Singh 12.10: 80 W over 5 m of cable, 3 mm in 8 mm. */
const cable = {
  ...steady,
  areaMm2: (Math.PI / 4) * 9,
  resistivity20OhmM: (16 / 5 / 5) * (Math.PI / 4) * 9e-6,
  insulationThicknessMm: 2.5,
  insulationConductivityWPerMK: 0.16,
  ambientC: 40,
  filmWPerM2K: 15,
  currentA: 5,
}
const thin = { insulationConductivityWPerMK: 0.12, filmWPerM2K: 35 }
/** Heat loss per kelvin of a 1 mm radius wire insulated to another radius. */
const lagged = (radiusMm: number) =>
  1 /
  (insulationResistanceMKPerW({ conductorDiameterMm: 2, outsideDiameterMm: 2 * radiusMm, conductivityWPerMK: 0.12 }) + 1 / (35 * 2 * Math.PI * radiusMm * 1e-3))
/** Reynolds number at which the cross-flow correlation gives this Nusselt number. */
function reynoldsFor(nusselt: number, prandtl: number): number {
  let [low, high] = [0, 1e6]
  for (let n = 0; n < 80; n += 1) {
    const middle = 0.5 * (low + high)
    if (churchillBernsteinNusselt({ reynolds: middle, prandtl }) < nusselt) low = middle
    else high = middle
  }
  return low
}
/** Brodkey 12.16: 0.1 W from a wire of 24 um, 250 diameters long, 30 K hotter. */
const hotWireNu = 0.1 / (Math.PI * 24e-6 * 250 * 24e-6 * 30) / (0.03305 / 24e-6)

export const reference: readonly Reference[] = [
  {
    source: 'Dutta, Heat Transfer: Principles and Applications',
    clause: 'example 3.8, p. 68, rubber-covered wire of 2.6 mm, 90 C in 30 C, as an open companion works it',
    status: 'derived',
    cases: [
      { title: 'largest current', printed: '54.04', unit: 'A', got: rubberA },
      { title: 'outside of the rubber', printed: '80.3', unit: 'C', got: () => wireState({ ...rubber, currentA: rubberA() }).surfaceC },
    ],
  },
  {
    source: 'Dutta, Heat Transfer: Principles and Applications',
    clause: 'example 3.2, p. 54, heating coil to 63 % of its rise, as an open companion works it',
    status: 'derived',
    cases: [
      {
        title: 'time',
        printed: '4.9',
        unit: 's',
        got: () => timeToTemperatureS({ ...coil, wantedC: 21 + 0.63 * (conductorTemperatureC(coil) - 21) }) ?? Number.NaN,
      },
    ],
  },
  {
    source: 'Singh, Engineering Thermodynamics',
    clause: 'example 12.10, p. 491, cable of 8 mm with 16 W/m, recomputed',
    status: 'derived',
    notes: 'The printed answer of 125.12 C comes from a wrong total resistance and is not used; the companion, which rounds an area, has 98.28 C.',
    cases: [
      { title: 'where metal and insulation meet', printed: '98.0517', unit: 'C', got: () => conductorTemperatureC(cable) },
      { title: 'critical radius', printed: '10.67', unit: 'mm', got: () => criticalRadiusMm({ insulationConductivityWPerMK: 0.16, filmWPerM2K: 15 }) },
    ],
  },
  {
    source: 'Engineering Thermodynamics: A Computer Approach',
    clause: 'example 15.13, p. 811, wire of 1 mm radius lagged to 1.8 mm, as an open companion works it',
    status: 'derived',
    cases: [
      { title: 'critical thickness', printed: '2.429', unit: 'mm', got: () => criticalRadiusMm(thin) - 1 },
      {
        title: 'gain from the lag to the critical radius',
        printed: '11.666',
        unit: '%',
        got: () => 100 * (lagged(criticalRadiusMm(thin)) / lagged(1.8) - 1),
      },
    ],
  },
  {
    source: 'Moran, Shapiro, Munson and DeWitt, Introduction to Thermal Systems Engineering',
    clause: 'example 16.8, p. 390, glass bead of 12.5 mm, 360 s in air of 20 C, as an open companion works it',
    status: 'derived',
    notes: 'As a cylinder of two thirds of the diameter.',
    cases: [
      {
        title: 'temperature',
        printed: '40',
        unit: 'C',
        got: () =>
          temperatureAfterC({
            areaMm2: (Math.PI / 4) * ((2 / 3) * 12.5) ** 2,
            insulationThicknessMm: 0,
            insulationConductivityWPerMK: 1,
            conductorDensityKgPerM3: 2225,
            conductorSpecificHeatJPerKgK: 835,
            ambientC: 20,
            filmWPerM2K: 25,
            currentA: 0,
            initialC: 225,
            timeS: 360,
          }),
      },
    ],
  },
  {
    source: 'Brodkey and Hershey, Transport Phenomena: A Unified Approach',
    clause: 'example 12.16, p. 624, hot wire of 24 um, as an open companion works it',
    status: 'derived',
    cases: [
      {
        title: 'Reynolds number',
        printed: '107.7',
        unit: '1',
        got: () => reynoldsFor(hotWireNu, 0.703),
        allowed: { relative: 1e-3, why: 'the companion stops its search at 0.1 %' },
      },
    ],
  },
  {
    source: 'Som, Introduction to Heat Transfer',
    clause: 'example 8.7, p. 378, pipe of 200 mm, its own Rayleigh number, recomputed by Churchill and Chu',
    status: 'derived',
    notes: 'The companions take a power of Pr alone instead of 0.559/Pr; their Nusselt number is not used.',
    cases: [{ title: 'Nusselt number', printed: '41.81696', unit: '1', got: () => naturalConvectionNusselt({ rayleigh: 37318116.98, prandtl: 0.7 }) }],
  },
  {
    source: 'Som, Introduction to Heat Transfer',
    clause: 'example 1.11, p. 15, pipe of 80 mm, 60 C in 20 C, film 6.5 W/(m2 K) and emissivity 0.8, as an open companion works it',
    status: 'derived',
    cases: [
      {
        title: 'heat by film and radiation',
        printed: '121.587',
        unit: 'W/m',
        got: () => 6.5 * Math.PI * 0.08 * 40 + heatFlowWPerM({ surfaceC: 60, ambientC: 20, diameterMm: 80, emissivity: 0.8 }).radiationWPerM,
        allowed: { absolute: 0.0045, why: 'the source takes sigma as 5.67e-8 and 0 C as 273 K: 0.004 W/m of 56 by radiation' },
      },
    ],
  },
  {
    source: 'Dwivedi, Heat and Mass Transfer',
    clause: 'example 3.6, p. 89, copper rod of 6 x 500 mm held at 100 C at both ends, as an open companion works it',
    status: 'derived',
    notes: 'By symmetry two fins of half the length with an insulated end.',
    cases: [
      {
        title: 'heat drawn from both ends',
        printed: '9.76',
        unit: 'W',
        got: () => 2 * 70 * finConductanceWPerK({ conductivityWPerMK: 330, areaMm2: (Math.PI / 4) * 36, lossWPerMK: 30 * Math.PI * 0.006, lengthMm: 250 }),
      },
    ],
  },
  {
    source: 'Dutta, Heat Transfer: Principles and Applications',
    clause: 'as the heating of a joint without wires: example 3.2, p. 54',
    status: 'derived',
    notes: 'worked again from the given numbers by a companion to the book',
    cases: [
      {
        title: 'heating wire of 0.574 mm (8920 kg/m3, 384 J/(kg K)) at 100 W/(m2 K): 63 % of its rise',
        printed: '4.9',
        unit: 's',
        got: () =>
          lumpTimeToS(
            { storeJPerK: (8920 * 384 * Math.PI * 0.574 ** 2) / 4e6, surfaceMm2: Math.PI * 0.574 * 1000, filmWPerM2K: 100, startC: 21, streamC: 121 },
            21 + 63,
          ),
      },
    ],
  },
  {
    source: 'Moran, Shapiro, Munson and DeWitt, Introduction to Thermal Systems Engineering',
    clause: 'as the heating of a joint without wires: example 16.8, p. 390',
    status: 'derived',
    notes: 'worked again from the given numbers by a companion to the book',
    cases: [
      {
        title: 'glass bead of 12.5 mm (2225 kg/m3, 835 J/(kg K)) from 225 C for 360 s in 20 C at 25 W/(m2 K)',
        printed: '40',
        unit: 'C',
        got: () => lumpAfterC({ ...ball(12.5, 2225, 835), filmWPerM2K: 25, startC: 225, streamC: 20 }, 360),
      },
    ],
  },
]
