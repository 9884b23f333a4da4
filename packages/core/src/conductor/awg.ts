import { requireBetween } from '../errors/index.ts'

/** No. 36 is 0.005 in, in mm (ASTM B258). */
const gauge36DiameterMm = 0.127
/** From No. 36 to No. 4/0 the diameter grows 92 times in 39 equal steps (ASTM B258). */
const stepsRatio = 92
const steps = 39
const stepsFrom = 36

/** Range of whole gauges, No. 40 to No. 6/0, extended by half a gauge so that both round to a whole one; thicker wire is sized by area. */
const finestGauge = 40.5
const thickestGauge = -5.5
/** The same range as areas in mm2. */
const finestAreaMm2 = 0.0045
const thickestAreaMm2 = 191

/**
 * Diameter of a solid round wire by its American wire gauge, fractional gauges too.
 *
 * @equation d = 0.127 * 92^((36 - n)/39)
 * @symbol n - gauge - 1 - gauge number; 0 is 1/0, -1 is 2/0, -3 is 4/0, -5 is 6/0
 * @symbol d - result - mm - diameter, not rounded
 * @domain gauge: from -5.5 to 40.5
 * @throws DomainError outside the domain
 * @example
 * awgToDiameterMm(10) // 2.5882
 * @source ASTM B258, standard nominal diameters: the series by its exact ratio, before rounding to 0.1 mil
 */
export function awgToDiameterMm(gauge: number): number {
  requireBetween('gauge', gauge, thickestGauge, finestGauge)
  return gauge36DiameterMm * stepsRatio ** ((stepsFrom - gauge) / steps)
}

/**
 * Cross-section of a solid round wire by its American wire gauge, fractional gauges too.
 *
 * @equation A = pi/4 * (0.127 * 92^((36 - n)/39))^2
 * @symbol n - gauge - 1 - gauge number; 0 is 1/0, -1 is 2/0, -3 is 4/0, -5 is 6/0
 * @symbol A - result - mm2 - area
 * @domain gauge: from -5.5 to 40.5
 * @throws DomainError outside the domain
 * @example
 * awgToAreaMm2(18) // 0.82305
 * @source ASTM B258, standard nominal cross-sectional areas: from the exact diameter
 */
export function awgToAreaMm2(gauge: number): number {
  return (Math.PI / 4) * (gauge36DiameterMm * stepsRatio ** ((stepsFrom - requireBetween('gauge', gauge, thickestGauge, finestGauge)) / steps)) ** 2
}

/**
 * Gauge number of a cross-section, as a fraction where it falls between two gauges.
 *
 * @equation n = 36 - 39 * ln(d/0.127)/ln(92), d = sqrt(4 A/pi)
 * @symbol A - areaMm2 - mm2 - area of the conductor; of a stranded one, the sum of its strands
 * @symbol n - result - 1 - gauge number; below 0 is 2/0 and thicker
 * @domain areaMm2: from 0.0045 to 191
 * @throws DomainError outside the domain
 * @example
 * areaMm2ToAwg(1) // 17.160
 * @source ASTM B258, the series solved for the gauge
 */
export function areaMm2ToAwg(areaMm2: number): number {
  requireBetween('areaMm2', areaMm2, finestAreaMm2, thickestAreaMm2)
  return stepsFrom - (steps / 2) * (Math.log((4 * areaMm2) / (Math.PI * gauge36DiameterMm ** 2)) / Math.log(stepsRatio))
}

/**
 * Whole gauge nearest to a cross-section, in gauge number (ratio of areas), not in area.
 *
 * @equation n = round(36 - 39 * ln(d/0.127)/ln(92)), d = sqrt(4 A/pi)
 * @symbol A - areaMm2 - mm2 - area of the conductor
 * @symbol n - result - 1 - whole gauge number; 0 is 1/0, -3 is 4/0
 * @domain areaMm2: from 0.0045 to 191
 * @throws DomainError outside the domain
 * @example
 * nearestAwg(2.5) // 13
 * @source ASTM B258, the series solved for the gauge
 */
export function nearestAwg(areaMm2: number): number {
  // Adding 0 turns a -0 from rounding into gauge 0.
  return Math.round(areaMm2ToAwg(areaMm2)) + 0
}
