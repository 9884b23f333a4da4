import {
  awgToAreaMm2,
  circularMilsToMm2,
  mm2ToCircularMils,
  resistanceAtTemperatureOhm,
  resistanceOhm,
  resistivityOhmM,
  skinDepthMm,
  strandedAreaMm2,
} from '../packages/core/src/conductor/index.ts'
import type { Reference } from './compare.ts'

const mmPerInch = 25.4
const mPerFt = 0.3048
/** Scales a resistance from the standard metal to the book's resistivity. */
const withOhmM = (resistance: number, ohmM: number) => (resistance * ohmM) / resistivityOhmM('annealed-copper', 20)
const ohmCmilPerFt = (value: number) => (value * circularMilsToMm2(1) * 1e-6) / mPerFt
/** Area in mm2 of a round wire given in inches. */
const roundMm2 = (inches: number) => strandedAreaMm2({ strandCount: 1, strandDiameterMm: inches * mmPerInch })
/** Skin depth is proportional to the square root of resistivity. */
const skinM = (siemensPerM: number, frequencyHz: number) =>
  (skinDepthMm({ material: 'annealed-copper', temperatureC: 20, frequencyHz }) * Math.sqrt(1 / (siemensPerM * resistivityOhmM('annealed-copper', 20)))) / 1000

const seen = "output of the book's public worked companion, the printed page not seen; so not counted as published"

export const reference: readonly Reference[] = [
  {
    source: "Schultz, Grob's Basic Electronics",
    clause: 'chapter 11, examples 11-1, 11-2 and 11-4',
    status: 'derived',
    notes: seen,
    cases: [
      { title: '11-1, a wire 0.005 in across', printed: '25', unit: 'cmil', got: () => mm2ToCircularMils(roundMm2(0.005)) },
      {
        title: '11-2, 16 strands of No. 27',
        printed: '3224',
        unit: 'cmil',
        got: () => 16 * mm2ToCircularMils(awgToAreaMm2(27)),
        allowed: { absolute: 1, why: 'the book multiplies 201.5 cmil, itself rounded by up to 0.05, by 16' },
      },
      {
        title: '11-4, 100 ft of 509.5 cmil at 10.4 ohm cmil/ft',
        printed: '2.04',
        unit: 'ohm',
        got: () =>
          withOhmM(
            resistanceOhm({ areaMm2: circularMilsToMm2(509.5), lengthM: 100 * mPerFt, material: 'annealed-copper', temperatureC: 20 }),
            ohmCmilPerFt(10.4),
          ),
      },
    ],
  },
  {
    source: 'Beiser, Basic Mathematics for Electricity and Electronics',
    clause: 'problems 5.4 to 5.6',
    status: 'derived',
    notes: seen,
    cases: [
      { title: '5.4, a wire 0.06408 in across', printed: '4106', unit: 'cmil', got: () => mm2ToCircularMils(roundMm2(0.06408)) },
      { title: '5.5, resistance of No. 14 over No. 10', printed: '2.53', unit: '1', got: () => awgToAreaMm2(10) / awgToAreaMm2(14) },
      {
        title: '5.6, 1500 ft of 0.08 in at 10.4 ohm cmil/ft',
        printed: '2.44',
        unit: 'ohm',
        got: () =>
          withOhmM(resistanceOhm({ areaMm2: roundMm2(0.08), lengthM: 1500 * mPerFt, material: 'annealed-copper', temperatureC: 20 }), ohmCmilPerFt(10.4)),
      },
    ],
  },
  {
    source: 'Bird, Electrical Circuit Theory and Technology',
    clause: 'chapter 3, problems 7, 8, 9 and 13',
    status: 'derived',
    notes: seen,
    cases: [
      {
        title: '7, 1200 m of 12 mm cable at 1.7e-8 ohm m',
        printed: '0.180',
        unit: 'ohm',
        got: () => withOhmM(resistanceOhm({ areaMm2: roundMm2(12 / mmPerInch), lengthM: 1200, material: 'annealed-copper', temperatureC: 20 }), 1.7e-8),
      },
      {
        title: '8, 100 ohm at 0 C and 0.0043 per kelvin at 0 C, at 70 C',
        printed: '130.1',
        unit: 'ohm',
        got: () => resistanceAtTemperatureOhm({ resistanceOhm: 100, atC: 0, wantedC: 70, coefficientPerK: 0.0043, coefficientAtC: 0 }),
      },
      {
        title: '9, 27 ohm at 35 C and 0.0038 per kelvin at 0 C, at 0 C',
        printed: '23.83',
        unit: 'ohm',
        got: () => resistanceAtTemperatureOhm({ resistanceOhm: 27, atC: 35, wantedC: 0, coefficientPerK: 0.0038, coefficientAtC: 0 }),
      },
      {
        title: '13, 200 ohm at 20 C and 0.004 per kelvin at 0 C, at 90 C',
        printed: '252',
        unit: 'ohm',
        got: () => resistanceAtTemperatureOhm({ resistanceOhm: 200, atC: 20, wantedC: 90, coefficientPerK: 0.004, coefficientAtC: 0 }),
      },
    ],
  },
  {
    source: 'Robertson; Muthusubramanian and Salivahanan; Gupta (textbooks of electrical engineering)',
    clause: 'examples 1.18, 1.19 and 2.41',
    status: 'derived',
    notes: seen,
    cases: [
      {
        title: 'Robertson 1.18, 250 ohm at 15 C and 0.00428 per kelvin at 0 C, at 45 C',
        printed: '280.2',
        unit: 'ohm',
        got: () => resistanceAtTemperatureOhm({ resistanceOhm: 250, atC: 15, wantedC: 45, coefficientPerK: 0.00428, coefficientAtC: 0 }),
      },
      {
        title: 'Muthusubramanian 1.19, rod of 0.425 milliohm drawn from 5 to 1 mm, 0.00426 per kelvin at 0 C, from 15 to 50 C',
        printed: '0.3029',
        unit: 'ohm',
        got: () =>
          // Constant volume: length grows as area falls, so resistance grows with the square of the area ratio.
          resistanceAtTemperatureOhm({
            resistanceOhm: 0.000425 * (roundMm2(5) / roundMm2(1)) ** 2,
            atC: 15,
            wantedC: 50,
            coefficientPerK: 0.00426,
            coefficientAtC: 0,
          }),
      },
      {
        title: 'Gupta 2.41, 500 m of 0.7 ohm at 20 C and 0.0043 per kelvin: ohm/km at 36 C',
        printed: '1.49632',
        unit: 'ohm',
        got: () => resistanceAtTemperatureOhm({ resistanceOhm: 1.4, atC: 20, wantedC: 36, coefficientPerK: 0.0043 }),
      },
    ],
  },
  {
    source: 'Pozar, Microwave Engineering',
    clause: 'example 1.2, skin depth at 10 GHz',
    status: 'derived',
    notes: seen,
    cases: [
      { title: 'aluminium, 3.816e7 S/m', printed: '8.15e-7', unit: 'm', got: () => skinM(3.816e7, 1e10) },
      { title: 'copper, 5.813e7 S/m', printed: '6.60e-7', unit: 'm', got: () => skinM(5.813e7, 1e10) },
      { title: 'gold, 4.098e7 S/m', printed: '7.86e-7', unit: 'm', got: () => skinM(4.098e7, 1e10) },
      { title: 'silver, 6.173e7 S/m', printed: '6.41e-7', unit: 'm', got: () => skinM(6.173e7, 1e10) },
    ],
  },
  {
    source: 'Textbook of antennas and wave propagation',
    clause: 'example 2.22, copper of 5.8e7 S/m',
    status: 'derived',
    notes: seen,
    cases: [
      { title: 'skin depth at 60 Hz', printed: '0.0085316', unit: 'm', got: () => skinM(5.8e7, 60) },
      { title: 'skin depth at 100 MHz', printed: '6.60855e-6', unit: 'm', got: () => skinM(5.8e7, 1e8) },
    ],
  },
]
