import type { RecalledNumber, SourceNumber } from './recalledNumbers.ts'

/** A number literal replaced by another. */
export interface Edit {
  readonly start: number
  readonly end: number
  readonly text: string
}

/** A recalled value moved to one end of what it may be. */
export interface Move {
  readonly label: string
  readonly file: string
  readonly edits: readonly Edit[]
}

/** Without a band of its own a value is moved by this factor either way, one that its source calls a guess by the larger factor, a temperature by these kelvins. */
export const movedBy = { factor: 2, guessFactor: 3, temperatureK: 20 } as const

const isGuess = (source: string): boolean => /guess|order of magnitude|factor of three|no measurement/.test(source)

const isTemperature = (key: string): boolean => /C$/.test(key)
const isAtMostOne = (key: string): boolean => /emissivity|share$/i.test(key)
const written = (value: number): string => String(Number(value.toPrecision(12)))
/** A temperature span, such as that of a service rating, is no band of one value. */
const isSpan = (name: string): boolean => /continuousC$/.test(name)

function scaled({ key, value }: SourceNumber, name: string, factor: number, up: boolean): number {
  if (isTemperature(key) || (/^(low|nominal|high|value)$/.test(key) && isTemperature(name))) return value + (up ? movedBy.temperatureK : -movedBy.temperatureK)
  const moved = up ? value * factor : value / factor
  if (isAtMostOne(key) || isAtMostOne(name)) return Math.min(1, moved)
  return key === 'layFactor' ? Math.max(1, moved) : moved
}

/** Both ends of a recalled value: its own low and high, else a factor or kelvins either way. */
export function movesOf({ file, name, source, numbers }: RecalledNumber): readonly Move[] {
  const at = (key: string): number | undefined => numbers.find((one) => one.key === key)?.value
  const [low, high] = [at('low'), at('high')]
  const middle = at('nominal') ?? at('value')
  const edits = (ofOne: (one: SourceNumber) => number): readonly Edit[] => numbers.map((one) => ({ start: one.start, end: one.end, text: written(ofOne(one)) }))
  if (low !== undefined && high !== undefined && middle !== undefined && low < high && !isSpan(name))
    return [low, high].map((end) => ({ label: `${written(middle)} to ${written(end)}`, file, edits: edits(() => end) }))
  const factor = isGuess(source) ? movedBy.guessFactor : movedBy.factor
  const unit = numbers.some(({ key }) => isTemperature(key)) || isTemperature(name) ? `${movedBy.temperatureK} K` : `a factor ${factor}`
  return [true, false]
    .map((up) => ({ label: `${up ? 'up' : 'down'} by ${unit}`, file, edits: edits((one) => scaled(one, name, factor, up)) }))
    .filter((move) => move.edits.some(({ text }, k) => Number(text) !== numbers[k]?.value))
}
