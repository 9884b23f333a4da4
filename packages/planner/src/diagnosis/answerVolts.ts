import type { Interval } from '@strandwise/core'
import { healthyOhm, restingSupplyV, supplyOhm, type TakenReading, warmthAt } from '../circuit/inner.ts'
import type { Finding } from '../facts/index.ts'
import { type AnswerContext, systemWith } from './answerContext.ts'
import { takenBy, verdictOf } from './locate.ts'
import { amount, intervalValue, measuredOf, say, spanOf } from './say.ts'
import { type System, sameSide, systemAtCurrent } from './system.ts'
import { faultAllowanceV, openShare, supplyAtRestV } from './systems.ts'

const withCurrent = 'Say which current flowed, or read it with a clamp.'
const finer = 'Use a finer range, or a larger known current.'

/** By itself at its own current; without one in its state, where the other readings bound it. */
function systemFor(context: AnswerContext, reading: TakenReading): System {
  if (reading.state === 'on' && reading.currentA !== null && reading.currentA.high > 0) return systemAtCurrent(context.chain, [reading], [])
  return systemWith(context, reading, reading.state === 'off' ? 'off' : 'on') as System
}

/** Finding on a drop along one lead, or the voltage between two places of it. */
export function answerDrop(context: AnswerContext, reading: TakenReading): Finding {
  const { chain, units } = context
  const span = spanOf(chain, reading)
  const values = { measured: measuredOf(reading) }
  const system = systemFor(context, reading)
  const { healthyV, allowedV } = takenBy(chain, system, reading.from, reading.to)
  const own = {
    measuredV: reading,
    healthyV,
    allowedV,
    readings: [reading.index],
    bounded: true,
  }
  const verdict = verdictOf(chain, system, own, reading.from, reading.to)
  const open = reading.low >= openShare * supplyAtRestV(chain, context.readings).low
  const all = {
    ...values,
    healthy: intervalValue('healthy', healthyV, 'V'),
    allowed: amount('acceptable', allowedV, 'V'),
  }
  if (open) return say(units, 'drop-open', 'sound', { values, names: { span } })
  if (reading.state === 'off' && verdict !== 'fails')
    return say(units, 'off-load-drop', 'cannot tell', {
      values,
      names: { span },
    })
  if (verdict === 'fails') return say(units, 'drop-fault', 'sound', { values: all, names: { span } })
  if (verdict === 'passes')
    return say(units, 'drop-in-order', 'sound', {
      values: all,
      names: { span },
    })
  return say(units, 'drop-cannot-tell', 'cannot tell', {
    values: all,
    names: { span, better: system.currentA === null ? withCurrent : finer },
  })
}

/** Finding on the source's voltage, against a sound supply at that current. */
function answerSupply({ chain, units, readings }: AnswerContext, reading: TakenReading): Finding {
  const nominal = restingSupplyV(chain.input)
  const sag = supplyOhm(chain.input)
  const current: Interval = reading.state === 'off' ? { low: 0, high: 0 } : (reading.currentA ?? { low: 0, high: chain.input.currentA })
  const rest = supplyAtRestV(chain, readings)
  const base = reading.state === 'on' && rest.read && reading.currentA !== null ? rest : nominal
  const expectedV = {
    low: base.low - current.high * sag.high,
    high: base.high - current.low * sag.low,
  }
  const saying = {
    values: {
      measured: measuredOf(reading),
      expected: intervalValue('expected', expectedV, 'V'),
    },
  }
  const allowance = faultAllowanceV(chain)
  if (reading.high < expectedV.low - allowance) return say(units, 'supply-weak', 'sound', saying)
  if (reading.low > expectedV.high + allowance) return say(units, 'supply-high', 'caution', saying)
  if (reading.low >= expectedV.low - allowance && reading.high <= expectedV.high + allowance) return say(units, 'supply-in-order', 'sound', saying)
  return say(units, 'supply-cannot-tell', 'cannot tell', saying)
}

/** The leads outside two places, as drops to measure. */
function outsideSpans({ chain }: AnswerContext, { from, to }: TakenReading): string {
  const last = chain.places.length - 1
  const spans = [...(from > 0 ? [[0, from] as const] : []), ...(to < last ? [[to, last] as const] : [])]
  return spans.map(([first, second]) => `the drop from ${chain.places[first]} to ${chain.places[second]}`).join(' and ')
}

/** Finding on the voltage between feed and return: the loss outside the two places. */
export function answerAcross(context: AnswerContext, reading: TakenReading): Finding {
  const { chain, units, readings } = context
  const last = chain.places.length - 1
  if (reading.from === 0 && reading.to === last) return answerSupply(context, reading)
  const system = systemWith(context, reading, reading.state === 'off' ? 'off' : 'on') as System
  const span = spanOf(chain, reading)
  const measured = measuredOf(reading)
  const sourceMost = system.bounds.most(0, last)
  const sourceLeast = system.bounds.least(0, last)
  const rest = supplyAtRestV(chain, readings)
  const mostA = system.of === 'off' ? 0 : (system.currentA?.high ?? chain.input.currentA)
  const read = Number.isFinite(sourceMost) && sourceLeast > 0
  const supplyV = read ? { low: sourceLeast, high: sourceMost } : { low: rest.low - mostA * supplyOhm(chain.input).high, high: rest.high }
  const lostV = {
    low: Math.max(0, supplyV.low - reading.high),
    high: Math.max(0, supplyV.high - reading.low),
  }
  const ohm = healthyOhm(chain, warmthAt(chain.input, mostA, { low: reading.airC, high: reading.airC }))
  const outside = [ohm(0, reading.from), ohm(reading.to, last)] as const
  const leastA = system.currentA?.low ?? 0
  const healthyV = {
    low: leastA * (outside[0].low + outside[1].low),
    high: mostA * (outside[0].high + outside[1].high),
  }
  const allowedV = healthyV.high + system.allowanceV
  const values = {
    measured,
    lost: intervalValue('lost', lostV, 'V'),
    healthy: intervalValue('healthy', healthyV, 'V'),
    allowed: amount('acceptable', allowedV, 'V'),
  }
  const fails = lostV.low > allowedV
  const where = read ? `Read ${outsideSpans(context, reading)}.` : 'Read the volts at the source first.'
  if (system.of === 'off') {
    const none = reading.high < (1 - openShare) * supplyV.low
    if (none)
      return say(units, 'dead-off-load', read ? 'sound' : 'cannot tell', {
        values: { measured },
        names: { span, where },
      })
    if (fails)
      return say(units, 'low-off-load', read ? 'sound' : 'cannot tell', {
        values,
        names: { span },
      })
    return say(units, 'alive-off-load', 'cannot tell', {
      values: { measured },
      names: { span },
    })
  }
  if (fails)
    return say(units, 'volts-lost', read ? 'sound' : 'cannot tell', {
      values,
      names: { span, where },
    })
  if (lostV.high <= allowedV) return say(units, 'volts-in-order', 'sound', { values, names: { span } })
  return say(units, 'volts-cannot-tell', 'cannot tell', {
    values,
    names: {
      span,
      better: read ? finer : 'Read the volts at the source at the same time.',
    },
  })
}

export const isAcross = ({ chain }: AnswerContext, { from, to }: TakenReading): boolean => !sameSide(chain, from, to)
