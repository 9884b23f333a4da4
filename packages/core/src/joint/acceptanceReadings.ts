import { DomainError, requireNotNegative, requirePositive } from '../errors/index.ts'
import { readingDefaults } from '../meter/index.ts'

/** Instruments at hand; uncertaintyV is a half width, testA the test current. */
export interface AcceptanceInstruments {
  readonly handMeter?: {
    readonly percentOfReading: number
    readonly counts: number
    readonly resolutionOhm: number
    readonly leadOhm?: number
    readonly leadUncertaintyOhm?: number
  }
  readonly fourWire?: { readonly testA: number; readonly uncertaintyV: number }
  readonly dropTest?: { readonly testA: number; readonly uncertaintyV: number }
}

/** What one instrument can prove of a joint's limit, with lead resistance removed. */
export interface AcceptanceReading {
  readonly instrument: 'hand-meter' | 'four-wire' | 'drop-test'
  /** Largest reading that proves the joint good; null if not even 0 does. */
  readonly passesUpToOhm: number | null
  /** Smallest reading that proves it bad; null if none does. */
  readonly failsAboveOhm: number | null
  /** True if a perfect joint passes whatever the instrument's error: the limit is at least twice that error. */
  readonly tells: boolean
}

/**
 * What a hand meter, a four-wire reading and a drop test can prove of a joint's acceptance limit.
 *
 * Between the pass and fail readings the answer is "cannot tell". A hand meter can seldom prove a good joint; a drop at a large current can.
 *
 * @equation pass: (R - r0 p - b)/(1 + p); fail: (R + r0 p + b)/(1 - p); b = n q + u, or U/I
 * @symbol R - acceptanceOhm - ohm - largest resistance that is accepted
 * @symbol p - handMeter.percentOfReading - % - of the reading (as a share in the equation)
 * @symbol n - handMeter.counts - 1 - last digits added by the meter's accuracy
 * @symbol q - handMeter.resolutionOhm - ohm - size of one count
 * @symbol r0 - handMeter.leadOhm - ohm - reading with the tips held together
 * @symbol u - handMeter.leadUncertaintyOhm - ohm - half width of that null
 * @symbol I - fourWire.testA - A - current during the reading; the drop test's is dropTest.testA
 * @symbol U - fourWire.uncertaintyV - V - half width of the voltage; the drop test's is dropTest.uncertaintyV
 * @symbol pass - result - ohm - largest reading that proves the joint, one row an instrument
 * @domain acceptanceOhm: above 0
 * @domain optional handMeter.percentOfReading: at least 0
 * @domain optional handMeter.counts: at least 0
 * @domain optional handMeter.resolutionOhm: at least 0
 * @domain optional handMeter.leadOhm: at least 0
 * @domain optional handMeter.leadUncertaintyOhm: at least 0
 * @domain optional fourWire.testA: above 0
 * @domain optional fourWire.uncertaintyV: at least 0
 * @domain optional dropTest.testA: above 0
 * @domain optional dropTest.uncertaintyV: at least 0
 * @throws DomainError outside the domain, and where no instrument is given
 * @example
 * acceptanceReadings({ acceptanceOhm: 0.0002, handMeter: { percentOfReading: 0.5, counts: 3, resolutionOhm: 0.1, leadOhm: 0.2, leadUncertaintyOhm: 0.1 }, fourWire: { testA: 1, uncertaintyV: 0.00001 }, dropTest: { testA: 10, uncertaintyV: 0.0005 } }) // [{ instrument: "hand-meter", passesUpToOhm: null, failsAboveOhm: 0.40322, tells: false }, { instrument: "four-wire", passesUpToOhm: 0.00019, failsAboveOhm: 0.00021, tells: true }, { instrument: "drop-test", passesUpToOhm: 0.00015, failsAboveOhm: 0.00025, tells: true }]
 * @source derived from readingInterval and dropTestVerdict, solved for the reading
 */
export function acceptanceReadings(i: AcceptanceInstruments & { readonly acceptanceOhm: number }): readonly AcceptanceReading[] {
  const R = requirePositive('acceptanceOhm', i.acceptanceOhm)
  const rows: AcceptanceReading[] = []
  const meter = i.handMeter
  if (meter !== undefined) {
    const p = requireNotNegative('handMeter.percentOfReading', meter.percentOfReading) / 100
    const digits = requireNotNegative('handMeter.counts', meter.counts) * requireNotNegative('handMeter.resolutionOhm', meter.resolutionOhm)
    const r0 = requireNotNegative('handMeter.leadOhm', meter.leadOhm ?? readingDefaults.leadOhm)
    const u = requireNotNegative('handMeter.leadUncertaintyOhm', meter.leadUncertaintyOhm ?? readingDefaults.leadUncertaintyOhm)
    rows.push(row('hand-meter', R, p, r0 * p + digits + u))
  }
  for (const [instrument, field, test] of [
    ['four-wire', 'fourWire', i.fourWire],
    ['drop-test', 'dropTest', i.dropTest],
  ] as const) {
    if (test === undefined) continue
    const U = requireNotNegative(`${field}.uncertaintyV`, test.uncertaintyV)
    rows.push(row(instrument, R, 0, U / requirePositive(`${field}.testA`, test.testA)))
  }
  if (rows.length === 0) throw new DomainError('handMeter', undefined, 'at least one of handMeter, fourWire and dropTest', undefined, 'missing')
  return rows
}

/** least is the error at a reading of 0; at a reading of r the error is least + r p. */
function row(instrument: AcceptanceReading['instrument'], R: number, p: number, least: number): AcceptanceReading {
  const passes = (R - least) / (1 + p)
  const fails = (R + least) / (1 - p)
  return {
    instrument,
    passesUpToOhm: passes >= 0 ? passes : null,
    failsAboveOhm: fails > 0 && fails < Infinity ? fails : null,
    tells: passes >= least,
  }
}
