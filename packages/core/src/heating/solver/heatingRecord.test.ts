import { expect, test } from 'vitest'
import type { HeatModel } from '../heatModel.ts'
import { newRecord, recordBody, recordJoint } from './heatingRecord.ts'

const model = {
  wires: [{}, {}],
  sampleTimesS: [3, 1, 2, 1],
  wettedRiseK: 30,
  melt: { solidusRiseK: 15, liquidusRiseK: 20, latentJ: 1 },
} as unknown as HeatModel
/** Straight through a step that begins at 4 s and lasts half a second. */
const straight = (from: number, to: number) => [4, 0.5, from, from + (to - from) / 3, to] as const

test('a run begins with nothing seen, and takes its samples in the order of time', () => {
  const record = newRecord(model)
  expect(record.samplesInOrder).toEqual([1, 3, 2, 0])
  expect([record.solidusAtS, record.wettedAtS, record.recoveredAtS, record.jointPeakK]).toEqual([null, null, null, 0])
  expect([...record.edgePeakOffK, ...record.limitAtS]).toEqual([-Infinity, -Infinity, Infinity, Infinity])
  expect(record.edgeK.map((list) => list.length)).toEqual([4, 4])
})

test.each([
  ['within the step', 20, 40, 4.25],
  ['with its last instant', 20, 30, 4.5],
  ['at its start', 30, 31, 4],
  ['not below', 20, 29.999, null],
  ['not by cooling from there', 30, 29, null],
] as const)('wetted %s, and only the first time counts', (_name, from, to, wanted) => {
  const record = newRecord(model)
  recordJoint(record, model, ...straight(from, to))
  if (wanted === null) expect(record.wettedAtS).toBeNull()
  else expect(record.wettedAtS).toBeCloseTo(wanted, 12)
  recordJoint(record, model, 9, 1, 20, 80 / 3, 40)
  expect(record.wettedAtS).toBeCloseTo(wanted ?? 9.5, 12)
})

test('the peak of a joint is the highest of all steps, crowns within them too', () => {
  const record = newRecord(model)
  recordJoint(record, model, ...straight(0, 10))
  expect(record.jointPeakK).toBe(10)
  // 10 + 16 x (1 - x)
  recordJoint(record, model, 4.5, 0.5, 10, 10 + 32 / 9, 10)
  expect(record.jointPeakK).toBeCloseTo(14, 12)
  recordJoint(record, model, ...straight(10, 5))
  expect(record.jointPeakK).toBeCloseTo(14, 12)
})

test.each([
  ['within the step', 10, 30, 4.25],
  ['with its last instant', 10, 20, 4.5],
  ['not below', 10, 19.999, null],
] as const)('the ring in a tube that grips melts %s', (_name, from, to, wanted) => {
  const record = newRecord(model)
  recordBody(record, model, ...straight(from, to))
  if (wanted === null) expect(record.ringMeltsAtS).toBeNull()
  else expect(record.ringMeltsAtS).toBeCloseTo(wanted, 12)
  recordBody(record, model, 9, 1, 10, 50 / 3, 30)
  expect(record.ringMeltsAtS).toBeCloseTo(wanted ?? 9.5, 12)
})
