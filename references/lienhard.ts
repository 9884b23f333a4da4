import { temperatureAfterC, thermalTimeConstantS } from '../packages/core/src/ampacity/index.ts'
import { criticalRadiusMm, heatFlowWPerM } from '../packages/core/src/heat/index.ts'
import type { Reference } from './compare.ts'
import { ball, lumpAfterC } from './lump.ts'

const source = 'Lienhard and Lienhard, A Heat Transfer Textbook'
/** Example 1.4: a bead of 1 mm, as a cylinder of two thirds of its diameter (same volume over surface). */
const bead = {
  areaMm2: (Math.PI / 4) * (2 / 3) ** 2,
  insulationThicknessMm: 0,
  insulationConductivityWPerMK: 1,
  conductorDensityKgPerM3: 9300,
  conductorSpecificHeatJPerKgK: 180,
  ambientC: 200,
  filmWPerM2K: 250,
}

export const reference: readonly Reference[] = [
  {
    source,
    clause: 'example 2.7, critical radius of a resistor lagged with 0.074 W/(m K) under 20 W/(m2 K)',
    status: 'published',
    cases: [
      { title: 'critical radius', printed: '0.0037', unit: 'm', got: () => criticalRadiusMm({ insulationConductivityWPerMK: 0.074, filmWPerM2K: 20 }) / 1000 },
    ],
  },
  {
    source,
    clause: 'example 2.8, radiation of the resistor at a first guess of 323 K in 308 K, emissivity 0.9',
    status: 'derived',
    cases: [
      {
        title: 'film coefficient of radiation',
        printed: '6.41',
        unit: 'W/(m2 K)',
        got: () => heatFlowWPerM({ surfaceC: 49.85, ambientC: 34.85, diameterMm: 3.6, emissivity: 0.9 }).radiationWPerM / (15 * Math.PI * 0.0036),
      },
    ],
  },
  {
    source,
    clause: 'example 1.4, thermocouple bead of 1 mm from 20 C into gas of 200 C, 200 - 180 exp(-t/tau)',
    status: 'derived',
    cases: [
      { title: 'time constant', printed: '1.116', unit: 's', got: () => thermalTimeConstantS(bead) },
      { title: 'after 1 s', printed: '126.5284', unit: 'C', got: () => temperatureAfterC({ ...bead, currentA: 0, timeS: 1, initialC: 20 }) },
      { title: 'after 5 s', printed: '197.9606', unit: 'C', got: () => temperatureAfterC({ ...bead, currentA: 0, timeS: 5, initialC: 20 }) },
    ],
  },
  {
    source,
    clause: 'as the heating of a joint without wires: example 1.4, p. 25',
    status: 'derived',
    notes: 'the curve 200 - 180 exp(-t/tau), tau = rho c D/(6 h) = 1.116 s, at one and three time constants',
    cases: [1, 3].map((constants) => ({
      title: `thermocouple bead of 1 mm (9300 kg/m3, 180 J/(kg K)) from 20 C in gas at 200 C and 250 W/(m2 K), after ${constants} time constants`,
      printed: (200 - 180 * Math.exp(-constants)).toFixed(3),
      unit: 'C',
      got: () => lumpAfterC({ ...ball(1, 9300, 180), filmWPerM2K: 250, startC: 20, streamC: 200 }, constants * 1.116),
      allowed: { absolute: 3e-3, why: 'what accuracy 0.01 promises' },
    })),
  },
]
