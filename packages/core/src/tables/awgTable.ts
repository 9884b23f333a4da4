import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** One whole gauge: sizes by the exact series, resistance of solid annealed copper at 20 °C as printed. */
export interface AwgRow {
  /** 0 is 1/0, -3 is 4/0. */
  readonly gauge: number
  readonly size: string
  readonly diameterMm: number
  readonly areaMm2: number
  readonly circularMils: number
  readonly resistanceOhmPer1000Ft: number
}

/**
 * American wire gauges 4/0 to 40: diameter and area by the exact series, and the classic resistance of solid annealed copper at 20 degC.
 * Sizes are derived; resistances are printed; those of 4/0 to 1 were read with three digits and completed from memory.
 *
 * @source ASTM B258 for the series; NBS Circular 31, Copper Wire Tables, for the resistances
 */
export const awgTable = /* @__PURE__ */ frozen({
  rows: [
    { gauge: -3, size: '4/0', diameterMm: 11.684, areaMm2: 107.2193, circularMils: 211600, resistanceOhmPer1000Ft: 0.04901 },
    { gauge: -2, size: '3/0', diameterMm: 10.4049, areaMm2: 85.02877, circularMils: 167806.43, resistanceOhmPer1000Ft: 0.0618 },
    { gauge: -1, size: '2/0', diameterMm: 9.26583, areaMm2: 67.43088, circularMils: 133076.55, resistanceOhmPer1000Ft: 0.07793 },
    { gauge: 0, size: '1/0', diameterMm: 8.25146, areaMm2: 53.47512, circularMils: 105534.5, resistanceOhmPer1000Ft: 0.09827 },
    { gauge: 1, size: '1', diameterMm: 7.34814, areaMm2: 42.4077, circularMils: 83692.66, resistanceOhmPer1000Ft: 0.1239 },
    { gauge: 2, size: '2', diameterMm: 6.54371, areaMm2: 33.63083, circularMils: 66371.3, resistanceOhmPer1000Ft: 0.1563 },
    { gauge: 3, size: '3', diameterMm: 5.82734, areaMm2: 26.67046, circularMils: 52634.83, resistanceOhmPer1000Ft: 0.197 },
    { gauge: 4, size: '4', diameterMm: 5.1894, areaMm2: 21.15064, circularMils: 41741.32, resistanceOhmPer1000Ft: 0.2485 },
    { gauge: 5, size: '5', diameterMm: 4.62129, areaMm2: 16.77322, circularMils: 33102.37, resistanceOhmPer1000Ft: 0.3133 },
    { gauge: 6, size: '6', diameterMm: 4.11538, areaMm2: 13.30177, circularMils: 26251.37, resistanceOhmPer1000Ft: 0.3951 },
    { gauge: 7, size: '7', diameterMm: 3.66485, areaMm2: 10.54878, circularMils: 20818.29, resistanceOhmPer1000Ft: 0.4982 },
    { gauge: 8, size: '8', diameterMm: 3.26364, areaMm2: 8.36556, circularMils: 16509.65, resistanceOhmPer1000Ft: 0.6282 },
    { gauge: 9, size: '9', diameterMm: 2.90636, areaMm2: 6.63419, circularMils: 13092.75, resistanceOhmPer1000Ft: 0.7921 },
    { gauge: 10, size: '10', diameterMm: 2.58819, areaMm2: 5.26115, circularMils: 10383.02, resistanceOhmPer1000Ft: 0.9989 },
    { gauge: 11, size: '11', diameterMm: 2.30485, areaMm2: 4.17229, circularMils: 8234.11, resistanceOhmPer1000Ft: 1.26 },
    { gauge: 12, size: '12', diameterMm: 2.05253, areaMm2: 3.30877, circularMils: 6529.95, resistanceOhmPer1000Ft: 1.588 },
    { gauge: 13, size: '13', diameterMm: 1.82783, areaMm2: 2.62398, circularMils: 5178.48, resistanceOhmPer1000Ft: 2.003 },
    { gauge: 14, size: '14', diameterMm: 1.62773, areaMm2: 2.08091, circularMils: 4106.72, resistanceOhmPer1000Ft: 2.525 },
    { gauge: 15, size: '15', diameterMm: 1.44953, areaMm2: 1.65023, circularMils: 3256.78, resistanceOhmPer1000Ft: 3.184 },
    { gauge: 16, size: '16', diameterMm: 1.29085, areaMm2: 1.3087, circularMils: 2582.74, resistanceOhmPer1000Ft: 4.016 },
    { gauge: 17, size: '17', diameterMm: 1.14953, areaMm2: 1.03784, circularMils: 2048.21, resistanceOhmPer1000Ft: 5.064 },
    { gauge: 18, size: '18', diameterMm: 1.02369, areaMm2: 0.82305, circularMils: 1624.3, resistanceOhmPer1000Ft: 6.385 },
    { gauge: 19, size: '19', diameterMm: 0.91162, areaMm2: 0.65271, circularMils: 1288.13, resistanceOhmPer1000Ft: 8.051 },
    { gauge: 20, size: '20', diameterMm: 0.81182, areaMm2: 0.51762, circularMils: 1021.53, resistanceOhmPer1000Ft: 10.15 },
    { gauge: 21, size: '21', diameterMm: 0.72295, areaMm2: 0.41049, circularMils: 810.11, resistanceOhmPer1000Ft: 12.8 },
    { gauge: 22, size: '22', diameterMm: 0.6438, areaMm2: 0.32553, circularMils: 642.45, resistanceOhmPer1000Ft: 16.14 },
    { gauge: 23, size: '23', diameterMm: 0.57332, areaMm2: 0.25816, circularMils: 509.49, resistanceOhmPer1000Ft: 20.36 },
    { gauge: 24, size: '24', diameterMm: 0.51056, areaMm2: 0.20473, circularMils: 404.04, resistanceOhmPer1000Ft: 25.67 },
    { gauge: 25, size: '25', diameterMm: 0.45467, areaMm2: 0.16236, circularMils: 320.42, resistanceOhmPer1000Ft: 32.37 },
    { gauge: 26, size: '26', diameterMm: 0.40489, areaMm2: 0.12876, circularMils: 254.1, resistanceOhmPer1000Ft: 40.81 },
    { gauge: 27, size: '27', diameterMm: 0.36057, areaMm2: 0.10211, circularMils: 201.51, resistanceOhmPer1000Ft: 51.47 },
    { gauge: 28, size: '28', diameterMm: 0.32109, areaMm2: 0.08098, circularMils: 159.81, resistanceOhmPer1000Ft: 64.9 },
    { gauge: 29, size: '29', diameterMm: 0.28594, areaMm2: 0.06422, circularMils: 126.73, resistanceOhmPer1000Ft: 81.83 },
    { gauge: 30, size: '30', diameterMm: 0.25464, areaMm2: 0.05093, circularMils: 100.5, resistanceOhmPer1000Ft: 103.2 },
    { gauge: 31, size: '31', diameterMm: 0.22676, areaMm2: 0.04039, circularMils: 79.7, resistanceOhmPer1000Ft: 130.1 },
    { gauge: 32, size: '32', diameterMm: 0.20194, areaMm2: 0.03203, circularMils: 63.21, resistanceOhmPer1000Ft: 164.1 },
    { gauge: 33, size: '33', diameterMm: 0.17983, areaMm2: 0.0254, circularMils: 50.13, resistanceOhmPer1000Ft: 206.9 },
    { gauge: 34, size: '34', diameterMm: 0.16014, areaMm2: 0.02014, circularMils: 39.75, resistanceOhmPer1000Ft: 260.9 },
    { gauge: 35, size: '35', diameterMm: 0.14261, areaMm2: 0.01597, circularMils: 31.52, resistanceOhmPer1000Ft: 329 },
    { gauge: 36, size: '36', diameterMm: 0.127, areaMm2: 0.01267, circularMils: 25, resistanceOhmPer1000Ft: 414.8 },
    { gauge: 37, size: '37', diameterMm: 0.1131, areaMm2: 0.01005, circularMils: 19.83, resistanceOhmPer1000Ft: 523.1 },
    { gauge: 38, size: '38', diameterMm: 0.10072, areaMm2: 0.00797, circularMils: 15.72, resistanceOhmPer1000Ft: 659.6 },
    { gauge: 39, size: '39', diameterMm: 0.08969, areaMm2: 0.00632, circularMils: 12.47, resistanceOhmPer1000Ft: 831.8 },
    { gauge: 40, size: '40', diameterMm: 0.07987, areaMm2: 0.00501, circularMils: 9.89, resistanceOhmPer1000Ft: 1049 },
  ],
  sizes: { status: 'derived', source: 'ASTM B258, the series by its exact ratio, before rounding to 0.1 mil' },
  provenance: {
    status: 'published',
    source: 'NBS Circular 31, Copper Wire Tables, complete wire table of standard annealed copper at 20 C',
    edition: '1914, 4th ed. 1956',
    clause: 'resistance column; Handbook 100, which follows it, starts from diameters rounded to 0.1 mil and so differs by up to 3 % in the finest sizes',
  },
} as const satisfies { readonly rows: readonly AwgRow[]; readonly sizes: Provenance; readonly provenance: Provenance })
