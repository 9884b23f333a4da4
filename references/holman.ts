import { bundleTemperatureC, conductorTemperatureC, timeToTemperatureS } from '../packages/core/src/ampacity/index.ts'
import { churchillBernsteinNusselt, criticalRadiusMm, insulationResistanceMKPerW } from '../packages/core/src/heat/index.ts'
import type { Reference } from './compare.ts'
import { ball, lumpTimeToS } from './lump.ts'

/** Example 2-6: 3 mm wire of 0.7 micro-ohm m, independent of temperature, in a bath. */
const wire = {
  areaMm2: (Math.PI / 4) * 9,
  conductorDiameterMm: 3,
  resistivity20OhmM: 7e-7,
  temperatureCoefficient20PerK: 0,
  insulationThicknessMm: 0,
  insulationConductivityWPerMK: 19,
  ambientC: 110,
  filmWPerM2K: 4000,
  currentA: 200,
}
/** Example 2-5: heat loss of a 50 mm pipe at 200 C in 20 C air with a film of 3 W/(m2 K), insulated to a radius. */
const lagged = (radiusMm: number) =>
  180 /
  (insulationResistanceMKPerW({ conductorDiameterMm: 50, outsideDiameterMm: 2 * radiusMm, conductivityWPerMK: 0.17 }) +
    1 / (3 * 2 * Math.PI * (radiusMm / 1000)))
const Nu = () => churchillBernsteinNusselt({ reynolds: (50 * 3.94e-5) / 1.67e-5, prandtl: 0.706 })

export const reference: readonly Reference[] = [
  {
    source: 'Holman, Heat Transfer',
    edition: '10th',
    clause: 'example 2-5, critical radius of insulation 0.17 W/(m K) under 3 W/(m2 K)',
    status: 'from memory',
    cases: [
      { title: 'critical radius', printed: '0.0567', unit: 'm', got: () => criticalRadiusMm({ insulationConductivityWPerMK: 0.17, filmWPerM2K: 3 }) / 1000 },
      {
        title: 'heat at the critical radius',
        printed: '105.7',
        unit: 'W/m',
        got: () => lagged(criticalRadiusMm({ insulationConductivityWPerMK: 0.17, filmWPerM2K: 3 })),
      },
      { title: 'heat of the bare pipe', printed: '84.8', unit: 'W/m', got: () => lagged(25) },
    ],
  },
  {
    source: 'Holman, Heat Transfer',
    clause: 'example 2-6, wire of 3 mm with 200 A in a bath of 110 C',
    status: 'from memory',
    cases: [
      { title: 'surface', printed: '215', unit: 'C', got: () => conductorTemperatureC(wire) },
      {
        title: 'centre, conductivity 19 W/(m K)',
        printed: '231.6',
        unit: 'C',
        got: () => bundleTemperatureC({ ...wire, loadedWires: 1, bundleOutsideMm: 3, bundleConductivityWPerMK: 19 }).centreC,
        allowed: { absolute: 0.1, why: 'the book goes on from a resistance rounded to 0.099 ohm, 0.03 % of a rise of 122 K, and a surface rounded to 215 C' },
      },
    ],
  },
  {
    source: 'Holman, Heat Transfer',
    clause: 'example 4-1, ball of 50 mm from 450 to 150 C in air of 100 C',
    status: 'from memory',
    notes: 'A cylinder of two thirds of the diameter has the same volume for its surface, and cools in the same time.',
    cases: [
      {
        title: 'time',
        printed: '5819',
        unit: 's',
        got: () =>
          timeToTemperatureS({
            areaMm2: (Math.PI / 4) * (100 / 3) ** 2,
            insulationThicknessMm: 0,
            insulationConductivityWPerMK: 1,
            conductorDensityKgPerM3: 7800,
            conductorSpecificHeatJPerKgK: 460,
            ambientC: 100,
            filmWPerM2K: 10,
            currentA: 0,
            initialC: 450,
            wantedC: 150,
          }) ?? Number.NaN,
        allowed: { relative: 5e-4, why: 'the book works the logarithm by four digits; recomputed it is 5818.3 s' },
      },
    ],
  },
  {
    source: 'Holman, Heat Transfer',
    clause: 'example 6-8, wire of 0.0394 mm in 50 m/s: recomputed by Churchill and Bernstein',
    status: 'derived',
    cases: [
      { title: 'Nusselt number', printed: '5.596', unit: '1', got: Nu },
      { title: 'heat over 25 K', printed: '11.88', unit: 'W/m', got: () => Nu() * 0.02704 * Math.PI * 25 },
    ],
  },
  {
    source: 'Holman, Heat Transfer',
    edition: '10th',
    clause: 'as the heating of a joint without wires: example 4-1',
    status: 'from memory',
    cases: [
      {
        title: 'steel ball of 50 mm (7800 kg/m3, 460 J/(kg K)) from 450 to 150 C in 100 C at 10 W/(m2 K)',
        printed: '5819',
        unit: 's',
        got: () => lumpTimeToS({ ...ball(50, 7800, 460), filmWPerM2K: 10, startC: 450, streamC: 100 }, 150),
        allowed: { relative: 5e-4, why: 'the recalled figure was reached with a time constant rounded to four digits' },
      },
    ],
  },
]
