import { describe, expect, test } from 'vitest'
import type { HeatModel, HeatSource, HeatTube } from '../heatModel.ts'
import { beginning, ending, findPassing, happen, type Passing } from './heatingEvents.ts'
import { newRecord } from './heatingRecord.ts'
import { type Lump, newLump } from './lump.ts'
import { type HeatingStep, newStep } from './stepState.ts'

const point = { solidusRiseK: 160, liquidusRiseK: 160, latentJ: 3 }
const range = { solidusRiseK: 160, liquidusRiseK: 190, latentJ: 3 }
const film = { coefficientsWPerM2K: Float64Array.of(0), lowRiseK: 0, highRiseK: 1 }
const iron: HeatSource = { kind: 'iron', setRiseK: 340, maximumW: 40, resistanceKPerW: 5 } // at its limit below 140 K
const heavy: HeatSource = { kind: 'heavy-iron', setRiseK: 340, maximumW: 40, tipResistanceKPerW: 2, contactResistanceKPerW: 3, capacityJPerK: 0.4 } // below 260 K
const tube: HeatTube = {
  kind: 'tube',
  airRiseK: 330,
  film,
  stillFilmWPerM2K: 0,
  emissivity: 0,
  outsideM2: 1e-4,
  capacityJPerK: 0.3,
  recoveryRiseK: 100,
  gripped: false,
  tightWPerK: 0.05,
  gapM: 0,
  gapAir: film,
  gapM2: 0,
  gapEmissivity: 0,
}

const modelOf = (source: HeatSource) => ({ source, wires: [], sampleTimesS: [], melt: point }) as unknown as HeatModel
const none: Passing = { kind: 'none', share: 2, bound: 0 }

/** A lump that stands in a phase. */
function lump(melt: typeof point | null, riseK: number, phase: Lump['phase'] = 'solid', share = 0): Lump {
  return Object.assign(newLump(0.05, melt, riseK), { phase, share })
}

const stands = ({ phase, melt }: Lump): boolean => phase === 'melting' && melt?.liquidusRiseK === melt?.solidusRiseK

/** A solved step in which all that moves goes straight to these values: a rise, or on a plateau a share, while the rise stands. */
function straight(source: HeatSource, joint: Lump, jointTo: number, body: Lump | null = null, bodyTo = 0, limited = false): HeatingStep {
  const step = newStep(modelOf(source), joint, body, limited, [])
  const from = stands(joint) ? joint.share : joint.riseK
  step.jointMoves1 = from + (jointTo - from) / 3
  step.jointMoves2 = jointTo
  step.joint1 = stands(joint) ? joint.riseK : step.jointMoves1
  step.joint2 = stands(joint) ? joint.riseK : jointTo
  if (body !== null) {
    const at = stands(body) ? body.share : body.riseK
    step.bodyMoves1 = at + (bodyTo - at) / 3
    step.bodyMoves2 = bodyTo
    step.body1 = stands(body) ? body.riseK : step.bodyMoves1
    step.body2 = stands(body) ? body.riseK : bodyTo
  }
  return step
}

function found(step: HeatingStep): Passing {
  const passing: Passing = { kind: 'limited', share: 0, bound: 7 }
  findPassing(step, passing)
  return passing
}

describe('the first event of a step', () => {
  test('none where nothing is passed', () => {
    expect(found(straight({ kind: 'none' }, lump(point, 20), 100))).toMatchObject({ kind: 'none', share: 2 })
    expect(found(straight({ kind: 'none' }, lump(null, 20), 1000)).kind).toBe('none')
  })

  test.each<[string, HeatingStep, Passing['kind'], number, number]>([
    ['the solidus from below', straight({ kind: 'none' }, lump(range, 150), 170), 'joint-up', 0.5, 160],
    ['the liquidus of a range', straight({ kind: 'none' }, lump(range, 185, 'melting', 0.8), 195), 'joint-up', 0.5, 190],
    ['the last of a plateau', straight({ kind: 'none' }, lump(point, 160, 'melting', 0.9), 1.1), 'joint-up', 0.5, 1],
    ['the first of a plateau, going back', straight({ kind: 'none' }, lump(point, 160, 'melting', 0.1), -0.3), 'joint-down', 0.25, 0],
    ['the liquidus from above', straight({ kind: 'none' }, lump(range, 200, 'liquid', 1), 180), 'joint-down', 0.5, 190],
    ['the end of the step exactly', straight({ kind: 'none' }, lump(range, 150), 160), 'joint-up', 1, 160],
    ["a tube's ring at its melting point", straight(tube, lump(null, 20), 30, lump(point, 150), 170), 'recovered', 0, 100],
    ['the recovery of a tube', straight(tube, lump(null, 20), 30, lump(point, 90), 110), 'recovered', 0.5, 100],
    ['the ring under a loose tube', straight({ ...tube, recoveryRiseK: 300 }, lump(null, 20), 30, lump(point, 150), 170), 'body-up', 0.5, 160],
    ['the last of a ring', straight({ ...tube, recoveryRiseK: 300 }, lump(null, 20), 30, lump(point, 160, 'melting', 0.9), 1.1), 'body-up', 0.5, 1],
    ['the first of a ring', straight({ ...tube, recoveryRiseK: 300 }, lump(null, 20), 30, lump(point, 160, 'melting', 0.1), -0.1), 'body-down', 0.5, 0],
    ['its freezing', straight({ ...tube, recoveryRiseK: 300 }, lump(null, 20), 30, lump(range, 195, 'liquid', 1), 185), 'body-down', 0.5, 190],
    ['the limit of an iron, on the way up', straight(iron, lump(null, 130), 150, null, 0, true), 'freed', 0.5, 140],
    ['the limit of an iron, on the way down', straight(iron, lump(null, 150), 130), 'limited', 0.5, 140],
    ["a heavy tip's own limit, whatever the joint does", straight(heavy, lump(null, 130), 150, lump(null, 250), 270, true), 'freed', 0.5, 260],
    ["a heavy tip's limit, as it is drained", straight(heavy, lump(null, 200), 210, lump(null, 270), 250), 'limited', 0.5, 260],
  ])('%s', (_name, step, kind, share, bound) => {
    const passing = found(step)
    expect(passing.kind).toBe(kind)
    expect(passing.share).toBeCloseTo(share, 12)
    expect(passing.bound).toBeCloseTo(bound, 12)
    const [from, to] = [beginning(step, passing.kind), ending(step, passing.kind)]
    if (share > 0) expect((bound - from) / (to - from)).toBeCloseTo(share, 12)
  })

  test('what is passed the other way is no event', () => {
    expect(found(straight(iron, lump(null, 150), 130, null, 0, true)).kind).toBe('none')
    expect(found(straight(iron, lump(null, 130), 150)).kind).toBe('none')
    expect(found(straight({ ...tube, gripped: true }, lump(null, 20), 30, lump(null, 90), 110)).kind).toBe('none')
    expect(found(straight({ ...iron, maximumW: Infinity }, lump(null, 130), 150)).kind).toBe('none')
  })

  test('of two the earlier; of two at once the one that is looked for first', () => {
    expect(found(straight(iron, lump(range, 130), 170, null, 0, true))).toMatchObject({ kind: 'freed', bound: 140 })
    expect(found(straight({ ...iron, maximumW: 30 }, lump(range, 150), 195, null, 0, true))).toMatchObject({ kind: 'joint-up', bound: 160 })
    expect(found(straight({ ...iron, maximumW: 36 }, lump(range, 150), 170, null, 0, true))).toMatchObject({ kind: 'joint-up', bound: 160 })
    expect(found(straight({ ...tube, recoveryRiseK: 160 }, lump(range, 150), 170, lump(point, 150), 170)).kind).toBe('recovered')
  })
})

describe('what an event changes', () => {
  const happened = (step: HeatingStep, passing: Passing, record = newRecord(step.model), nowS = 7) => {
    happen(step, record, passing, nowS)
    return record
  }
  const up: Passing = { kind: 'joint-up', share: 0.5, bound: 160 }

  test('the joint comes to its solidus, then to its liquidus; the first time of each is kept', () => {
    const step = straight({ kind: 'none' }, lump(range, 150), 170)
    const record = happened(step, up)
    expect(step.joint).toMatchObject({ phase: 'melting', riseK: 160, share: 0 })
    expect([record.solidusAtS, record.liquidusAtS]).toEqual([7, null])
    happened(step, { ...up, bound: 190 }, record, 8)
    expect(step.joint).toMatchObject({ phase: 'liquid', riseK: 190, share: 1 })
    expect([record.solidusAtS, record.liquidusAtS]).toEqual([7, 8])
    happened(step, { ...up, kind: 'joint-down', bound: 190 }, record, 9)
    expect([step.joint.phase, record.resolidifiedAtS]).toEqual(['melting', null])
    happened(step, { ...up, bound: 190 }, record, 10)
    expect([record.solidusAtS, record.liquidusAtS]).toEqual([7, 8])
  })

  test('it freezes: the last time counts, and melting anew takes it back', () => {
    const step = straight({ kind: 'none' }, lump(point, 160, 'melting', 0.2), -0.1)
    const record = happened(step, { kind: 'joint-down', share: 0.5, bound: 0 })
    expect(step.joint).toMatchObject({ phase: 'solid', share: 0, riseK: 160 })
    expect(record.resolidifiedAtS).toBe(7)
    step.joint.phase = 'liquid'
    happened(step, { kind: 'joint-down', share: 0.5, bound: 160 }, record, 9)
    expect(record.resolidifiedAtS).toBeNull()
  })

  test('it stands exactly on the bound, whatever rounding left', () => {
    const step = straight({ kind: 'none' }, lump(range, 159.999_999), 170)
    happened(step, up)
    expect(step.joint.riseK).toBe(160)
    const last = straight({ kind: 'none' }, lump(range, 189.999_999, 'melting', 0.999_999), 170)
    happened(last, { ...up, kind: 'joint-down', bound: 160 })
    expect(last.joint).toMatchObject({ phase: 'solid', riseK: 160, share: 0 })
  })

  test('a ring melts and freezes in its tube; only its melting is told', () => {
    const step = straight({ ...tube, recoveryRiseK: 300 }, lump(null, 20), 30, lump(point, 150), 170)
    const record = happened(step, { ...up, kind: 'body-up' })
    expect(step.body).toMatchObject({ phase: 'melting', riseK: 160 })
    expect(record.ringMeltsAtS).toBeNull()
    happened(step, { ...up, kind: 'body-up', bound: 1 }, record, 8)
    expect(step.body).toMatchObject({ phase: 'liquid', share: 1 })
    expect(record.ringMeltsAtS).toBe(8)
    happened(step, { ...up, kind: 'body-down' }, record, 9)
    expect(step.body?.phase).toBe('melting')
    happened(step, { ...up, kind: 'body-up', bound: 1 }, record, 10)
    expect(record.ringMeltsAtS).toBe(8)
    happened(step, { ...up, kind: 'body-down' }, record, 11)
    happened(step, { ...up, kind: 'body-down', bound: 0 }, record, 12)
    expect(step.body).toMatchObject({ phase: 'solid', share: 0 })
  })

  test('a tube recovers: it grips, and its ring lies on the joint, molten as far as its heat goes', () => {
    const cold = straight(tube, lump(null, 20), 30, lump(point, 90), 110)
    const record = happened(cold, { kind: 'recovered', share: 0.5, bound: 100 })
    expect(cold.source).toEqual({ ...tube, gripped: true })
    expect(cold.body).toMatchObject({ riseK: 100, melt: null })
    expect(cold.joint).toMatchObject({ phase: 'solid', melt: point })
    expect([record.recoveredAtS, record.solidusAtS, record.liquidusAtS]).toEqual([7, null, null])
    const hot = straight(tube, lump(null, 170), 171, lump(point, 160, 'melting', 0.5), 0.6)
    const some = happened(hot, { kind: 'recovered', share: 0.5, bound: 0.5 })
    expect(hot.joint.phase).toBe('melting')
    expect(hot.joint.share).toBeCloseTo((0.05 * 10 + 1.5) / 3, 12)
    expect([some.recoveredAtS, some.solidusAtS, some.liquidusAtS]).toEqual([7, 7, null])
    const liquid = straight(tube, lump(null, 200), 201, lump(point, 170, 'liquid', 1), 180)
    const all = happened(liquid, { kind: 'recovered', share: 0.5, bound: 170 })
    expect([all.solidusAtS, all.liquidusAtS]).toEqual([7, 7])
    // It has recovered once for all.
    happened(liquid, { kind: 'recovered', share: 0.5, bound: 180 }, all, 9)
    expect(all.recoveredAtS).toBe(7)
  })

  test('the heater comes off its limit and back', () => {
    const step = straight(iron, lump(null, 130), 150, null, 0, true)
    happened(step, { kind: 'freed', share: 0.5, bound: 140 })
    expect(step.limited).toBe(false)
    happened(step, { kind: 'limited', share: 0.5, bound: 140 })
    expect(step.limited).toBe(true)
    happened(step, none)
    expect(step.limited).toBe(true)
  })
})
