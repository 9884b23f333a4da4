import { timeToTemperatureS } from '../packages/core/src/ampacity/index.ts'
import { finConductanceWPerK, heatFlowWPerM } from '../packages/core/src/heat/index.ts'
import { acceptanceResistanceOhm, type JointSide } from '../packages/core/src/joint/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

const source = 'Incropera and DeWitt, Fundamentals of Heat and Mass Transfer'
const rods = [
  ['copper', 398, '8.3', '0.19'],
  ['aluminium', 180, '5.6', '0.13'],
  ['stainless steel', 14, '1.6', '0.04'],
] as const

/** Endless rod of 5 mm under 100 W/(m2 K). */
const rod = (conductivityWPerMK: number) => finConductanceWPerK({ conductivityWPerMK, areaMm2: (Math.PI / 4) * 25, lossWPerMK: 100 * Math.PI * 0.005 })

/** Length from which a rod counts as infinite: 2.65/m, with k A/Y = 1/m. */
const endlessM = (conductivityWPerMK: number) => (2.65 * conductivityWPerMK * (Math.PI / 4) * 25e-6) / rod(conductivityWPerMK)

/** A bare rod of 5 mm with negligible resistance compared with the joint. */
function jointRod(conductivityWPerMK: number): JointSide {
  const conductorDiameterMm = 5
  const bare = { areaMm2: (Math.PI / 4) * conductorDiameterMm ** 2, conductorDiameterMm, insulationThicknessMm: 0, insulationConductivityWPerMK: 1 }
  return { ...bare, conductivityWPerMK, resistivity20OhmM: 1e-30, temperatureCoefficient20PerK: 0, filmWPerM2K: 100 }
}

/** A joint of two such rods at 100 C loses twice the heat of one; at 1 A its resistance equals that heat. */
function heatIntoRod(metal: string, conductivityWPerMK: number, printed: string): ReferenceCase {
  return {
    title: `${metal}, k ${conductivityWPerMK}, 5 mm, base 100 C, air 25 C, h 100: heat into one very long rod`,
    printed,
    unit: 'W',
    got: () =>
      acceptanceResistanceOhm({
        currentA: 1,
        ambientC: 25,
        conductors: [jointRod(conductivityWPerMK), jointRod(conductivityWPerMK)],
        jointLengthMm: 1,
        limitC: 100,
      }).resistanceOhm / 2,
  }
}

export const reference: readonly Reference[] = [
  {
    source,
    clause: 'example 3.9, endless rods of 5 mm, 100 C in air of 25 C',
    status: 'from memory',
    cases: rods.flatMap(([name, k, heat, length]): readonly ReferenceCase[] => [
      { title: `${name}, heat drawn`, printed: heat, unit: 'W', got: () => 75 * rod(k) },
      { title: `${name}, length past which it is endless`, printed: length, unit: 'm', got: () => endlessM(k) },
    ]),
  },
  {
    source,
    clause: 'example 5.1, thermocouple bead of 0.706 mm in gas of 200 C',
    status: 'from memory',
    notes: 'As a cylinder of two thirds of the diameter.',
    cases: [
      {
        title: 'time from 25 to 199 C',
        printed: '5.2',
        unit: 's',
        got: () =>
          timeToTemperatureS({
            areaMm2: (Math.PI / 4) * ((2 / 3) * 0.706) ** 2,
            insulationThicknessMm: 0,
            insulationConductivityWPerMK: 1,
            conductorDensityKgPerM3: 8500,
            conductorSpecificHeatJPerKgK: 400,
            ambientC: 200,
            filmWPerM2K: 400,
            currentA: 0,
            initialC: 25,
            wantedC: 199,
          }) ?? Number.NaN,
      },
    ],
  },
  {
    source,
    clause: 'example 9.4, pipe of 100 mm at 165 C in a room of 23 C',
    status: 'from memory',
    cases: [
      {
        title: 'radiation, emissivity 0.85, in whole kelvins as the book works: 438 and 296 K',
        printed: '441',
        unit: 'W/m',
        got: () => heatFlowWPerM({ surfaceC: 164.85, ambientC: 22.85, diameterMm: 100, emissivity: 0.85 }).radiationWPerM,
      },
    ],
  },
  {
    source,
    clause: 'example 3.9 as a joint between two such rods',
    status: 'from memory',
    cases: [heatIntoRod('copper', 398, '8.3'), heatIntoRod('aluminium alloy', 180, '5.6'), heatIntoRod('stainless steel', 14, '1.6')],
  },
]
