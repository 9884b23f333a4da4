import type { Chain, TakenReading } from '../circuit/inner.ts'
import type { Units } from '../facts/inner.ts'
import type { System } from './system.ts'

/** Context of an answer to one reading. */
export interface AnswerContext {
  readonly chain: Chain
  readonly units: Units
  readonly readings: readonly TakenReading[]
  readonly systems: readonly System[]
}

/** The system, of this reading's state, that includes it. */
export function systemWith({ systems }: AnswerContext, reading: TakenReading, of: System['of']): System | undefined {
  return systems.find((system) => system.of === of && system.readings.some(({ index }) => index === reading.index))
}

/** Readings by number in the job, from 1: "2 and 4". */
export function numbered(indices: readonly number[]): string {
  const numbers = indices.map((index) => String(index + 1))
  return numbers.length < 2 ? (numbers[0] ?? 'none') : `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`
}

/** True if the probes are on both sides of the load. */
export const isLoad = ({ chain }: AnswerContext, { from, to }: TakenReading): boolean => from === chain.loadAt && to === chain.loadAt + 1
