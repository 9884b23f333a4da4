import { conductorTemperatureC, timeToTemperatureS } from '../packages/core/src/ampacity/index.ts'
import { finConductanceWPerK, insulationResistanceMKPerW } from '../packages/core/src/heat/index.ts'
import type { Reference } from './compare.ts'
import { lumpTimeToS } from './lump.ts'

const source = 'Sachdeva, Fundamentals of Engineering Heat and Mass Transfer'
const wall = insulationResistanceMKPerW({ conductorDiameterMm: 100, outsideDiameterMm: 250, conductivityWPerMK: 1 })
const film = 1 / (8 * Math.PI * 0.25)
/** The pipe as a wire: 1 A through the ohms per metre that give its heat. */
const pipe = {
  areaMm2: (Math.PI / 4) * 100 ** 2,
  insulationThicknessMm: 75,
  insulationConductivityWPerMK: 1,
  temperatureCoefficient20PerK: 0,
  ambientC: 20,
  filmWPerM2K: 8,
  currentA: 1,
}
const heatWPerM = 180 / (wall + film)

const slab = { storeJPerK: 0.4 * 0.4 * 0.005 * 9000 * 380, surfaceMm2: 2 * 0.4 * 0.4 * 1e6, filmWPerM2K: 90, startC: 250, streamC: 30 }

export const reference: readonly Reference[] = [
  {
    source,
    clause: 'example 3.18, p. 77, pipe at its critical radius, 200 C inside, as an open companion works it',
    status: 'derived',
    notes: "The companion notes that the book's own answer is wrong; the figures are the companion's.",
    cases: [
      {
        title: 'heat',
        printed: '589',
        unit: 'W/m',
        got: () => heatWPerM,
        allowed: { relative: 0.003, why: 'the companion takes pi as 3.14 and cuts to whole watts; recomputed it is 590.19' },
      },
      { title: 'outside', printed: '113.93', unit: 'C', got: () => 20 + heatWPerM * film },
      {
        title: 'inside again, from that heat by the balance',
        printed: '200',
        unit: 'C',
        got: () => conductorTemperatureC({ ...pipe, resistivity20OhmM: heatWPerM * pipe.areaMm2 * 1e-6 }),
      },
    ],
  },
  {
    source,
    clause: 'example 3.34, p. 117, fin of 10 mm under 5000 W/(m2 K), as an open companion works it',
    status: 'derived',
    cases: [
      {
        title: 'gain over the bare root',
        printed: '13',
        unit: '%',
        got: () => {
          const areaMm2 = (Math.PI / 4) * 100
          const Y = finConductanceWPerK({ conductivityWPerMK: 16, areaMm2, lossWPerMK: 5000 * Math.PI * 0.01, lengthMm: 100 })
          return 100 * (Y / (5000 * areaMm2 * 1e-6) - 1)
        },
      },
    ],
  },
  {
    source,
    clause: 'example 5.2, p. 164, copper plate of 5 mm from 250 to 90 C in 30 C, as an open companion works it',
    status: 'derived',
    notes: 'Both faces cool: a rod of 10 mm has the same volume for its surface.',
    cases: [
      {
        title: 'time',
        printed: '123.43',
        unit: 's',
        got: () =>
          timeToTemperatureS({
            areaMm2: (Math.PI / 4) * 100,
            insulationThicknessMm: 0,
            insulationConductivityWPerMK: 1,
            conductorDensityKgPerM3: 9000,
            conductorSpecificHeatJPerKgK: 380,
            ambientC: 30,
            filmWPerM2K: 90,
            currentA: 0,
            initialC: 250,
            wantedC: 90,
          }) ?? Number.NaN,
      },
    ],
  },
  {
    source,
    clause: 'as the heating of a joint without wires: example 5.2, p. 164',
    status: 'derived',
    notes: 'worked again from the given numbers by a companion to the book',
    cases: [
      {
        title: 'copper slab of 0.4 m by 0.4 m by 5 mm from 250 to 90 C in 30 C at 90 W/(m2 K)',
        printed: '123.43',
        unit: 's',
        got: () => lumpTimeToS(slab, 90),
      },
    ],
  },
]
