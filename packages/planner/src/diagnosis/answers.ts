import { sound, type TakenReading } from '../circuit/inner.ts'
import type { Finding } from '../facts/index.ts'
import { type AnswerContext, numbered } from './answerContext.ts'
import { answerOhms } from './answerOhms.ts'
import { answerAcross, answerDrop, isAcross } from './answerVolts.ts'
import { amount, intervalValue, measuredOf, say, spanOf } from './say.ts'
import { beyondSupply, mostSupplyV, usable } from './systems.ts'

function answerCurrent({ chain, units }: AnswerContext, reading: TakenReading): Finding {
  const { currentA } = chain.input
  const expectedA = {
    low: sound.loadShare.low * currentA,
    high: sound.loadShare.high * currentA,
  }
  const values = {
    measured: measuredOf(reading),
    expected: intervalValue('expected', expectedA, 'A'),
  }
  if (reading.state === 'off') return reading.low > 0 ? say(units, 'current-off', 'caution', { values }) : say(units, 'no-current-off', 'sound', { values })
  if (reading.high < expectedA.low) return say(units, 'current-low', 'sound', { values })
  if (reading.low > expectedA.high) return say(units, 'current-high', 'caution', { values })
  return say(units, 'current-in-order', 'sound', { values })
}

function answerTemperature({ chain, units, readings }: AnswerContext, reading: TakenReading): Finding {
  const { input } = chain
  const names = { span: spanOf(chain, reading) }
  const measured = measuredOf(reading)
  if (reading.state !== 'on')
    return say(units, 'temperature-idle', 'cannot tell', {
      values: { measured },
      names,
    })
  const clamp = readings.find(({ kind, state, when }) => kind === 'current' && state === 'on' && when === reading.when)
  const currentA = reading.currentA?.high ?? clamp?.high ?? input.currentA
  const hottestC = Math.max(input.wire.steadyC(currentA, reading.airC), input.beyond.steadyC(currentA, reading.airC))
  const values = {
    measured,
    expected: intervalValue('expected', { low: reading.airC, high: hottestC }, '°C', false),
  }
  const hot = reading.low > hottestC + sound.hotPlaceK
  return hot ? say(units, 'temperature-hot', 'caution', { values, names }) : say(units, 'temperature-in-order', 'sound', { values, names })
}

/** The finding on one reading by itself, in the state in which it was taken. */
export function answerTo(context: AnswerContext, reading: TakenReading): Finding {
  const { chain, units, systems } = context
  if (reading.from < 0 || reading.to < 0)
    return say(units, 'misplaced', 'cannot tell', {
      names: { place: 'return-joint' },
    })
  if (beyondSupply(chain, reading)) {
    const values = {
      measured: measuredOf(reading),
      most: amount(
        'most',
        mostSupplyV(
          chain,
          context.readings.filter((item) => usable(chain, item)),
        ),
        'V',
      ),
    }
    return say(units, 'beyond-supply', 'caution', {
      values,
      names: { span: spanOf(chain, reading) },
    })
  }
  const against = systems.find(({ bounds, readings }) => bounds.contradiction?.includes(reading.index) && readings.some(({ index }) => index === reading.index))
  const others = against?.bounds.contradiction?.filter((index) => index !== reading.index) ?? []
  if (others.length > 0)
    return say(units, 'reading-contradicts', 'caution', {
      values: { measured: measuredOf(reading) },
      names: { span: spanOf(chain, reading), which: numbered(others) },
    })
  if (reading.kind === 'current') return answerCurrent(context, reading)
  if (reading.kind === 'temperature') return answerTemperature(context, reading)
  if (reading.state === 'dead') return answerOhms(context, reading)
  return isAcross(context, reading) ? answerAcross(context, reading) : answerDrop(context, reading)
}
