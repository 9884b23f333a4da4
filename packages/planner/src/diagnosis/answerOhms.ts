import { sound, type TakenReading } from '../circuit/inner.ts'
import type { Finding } from '../facts/index.ts'
import { type AnswerContext, isLoad, systemWith } from './answerContext.ts'
import { takenBy, verdictOf } from './locate.ts'
import { amount, intervalValue, measuredOf, say, spanOf } from './say.ts'
import { type System, sameSide } from './system.ts'

/** Finding on resistance along one lead of the dead circuit. */
function answerSeries(context: AnswerContext, reading: TakenReading): Finding {
  const { chain, units, systems } = context
  const system = systemWith(context, reading, 'dead') as System
  const currentA = chain.input.currentA
  const { healthyV, allowedV } = takenBy(chain, system, reading.from, reading.to)
  const measuredV = {
    low: reading.low * currentA,
    high: reading.overRange ? Number.POSITIVE_INFINITY : reading.high * currentA,
  }
  const verdict = verdictOf(chain, system, { measuredV, healthyV, allowedV, readings: [reading.index], bounded: true }, reading.from, reading.to)
  const names = { span: spanOf(chain, reading) }
  const values = {
    measured: measuredOf(reading),
    healthy: intervalValue('healthy', { low: healthyV.low / currentA, high: healthyV.high / currentA }, 'Ω'),
    allowed: amount('acceptable', allowedV / currentA, 'Ω'),
  }
  if (systems.some(({ yielding }) => yielding.includes(reading.index))) return say(units, 'ohms-yield', 'caution', { values, names })
  if (measuredV.low >= chain.input.supplyV)
    return say(units, 'ohms-open', 'sound', {
      values: {
        measured: values.measured,
        current: amount('working current', currentA, 'A'),
      },
      names,
    })
  if (verdict === 'fails') return say(units, 'ohms-fault', 'sound', { values, names })
  if (verdict === 'passes') return say(units, 'ohms-in-order', 'sound', { values, names })
  return say(units, 'ohms-cannot-tell', 'cannot tell', {
    values,
    names,
    rule: 'rd-two-wire-floor',
  })
}

/** Finding on resistance across the load alone. A motor or a cold lamp has less than its working current suggests. */
function answerLoad({ chain, units }: AnswerContext, reading: TakenReading): Finding {
  const measured = measuredOf(reading)
  if (reading.overRange) return say(units, 'load-open', 'sound', { values: { measured } })
  const expectedOhm = chain.input.supplyV / chain.input.currentA
  const expected = intervalValue(
    'expected',
    {
      low: sound.loadShare.low * expectedOhm,
      high: sound.loadShare.high * expectedOhm,
    },
    'Ω',
  )
  const meaning =
    reading.low > sound.loadShare.high * expectedOhm
      ? 'More ohms than that: it takes less than it should, or its contacts are bad.'
      : reading.high < sound.loadShare.low * expectedOhm
        ? 'Fewer are usual for a motor at rest or a cold lamp; nearly none is a short in it.'
        : 'The load is whole.'
  return say(units, 'load-ohms', 'sound', {
    values: { measured, expected },
    names: { meaning },
  })
}

/** Finding on resistance between feed and return with the load unplugged. */
function answerCrossing({ chain, units }: AnswerContext, reading: TakenReading): Finding {
  const values = {
    measured: measuredOf(reading),
    good: amount('good above', sound.leak.goodAboveOhm, 'Ω'),
  }
  const names = { span: spanOf(chain, reading) }
  const rule = 'rd-insulation-values'
  if (reading.high < sound.shortOhm) return say(units, 'short', 'sound', { values, names })
  if (reading.high < sound.leak.belowOhm) return say(units, 'leak', 'sound', { values, names, rule })
  if (reading.kind === 'insulation')
    return reading.low >= sound.leak.goodAboveOhm
      ? say(units, 'insulation-good', 'sound', { values, names, rule })
      : say(units, 'leak-cannot-tell', 'cannot tell', { values, names, rule })
  return reading.low >= sound.leak.belowOhm
    ? say(units, 'no-short', 'sound', { values, names })
    : say(units, 'leak-cannot-tell', 'cannot tell', { values, names, rule })
}

export function answerOhms(context: AnswerContext, reading: TakenReading): Finding {
  const { chain, units } = context
  if (sameSide(chain, reading.from, reading.to))
    return reading.kind === 'insulation'
      ? say(units, 'insulation-one-lead', 'cannot tell', {
          values: { measured: measuredOf(reading) },
          names: { span: spanOf(chain, reading) },
        })
      : answerSeries(context, reading)
  return isLoad(context, reading) && reading.kind !== 'insulation' ? answerLoad(context, reading) : answerCrossing(context, reading)
}
