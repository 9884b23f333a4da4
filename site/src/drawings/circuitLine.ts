import { drawing, element, line, path, text } from './svg.ts'

export interface CircuitStretch {
  readonly from: string
  readonly to: string
  readonly words: readonly string[]
  readonly verdict: 'sound' | 'cannot tell' | 'unsound'
}

export interface CircuitLine {
  /** The places in the order of the current, with their names. */
  readonly places: readonly { readonly id: string; readonly words: string }[]
  readonly stretches: readonly CircuitStretch[]
  /** Places of the probes for the next reading. */
  readonly probes: readonly string[]
}

const width = 360
const row = 40
const top = 20
const wireX = 150
const strands = [-6, 0, 6]

function segment(y1: number, y2: number, verdict: CircuitStretch['verdict'] | 'plain'): string {
  const kind = verdict === 'cannot tell' ? 'strand dashed' : verdict === 'unsound' ? 'strand bad' : 'strand'
  const middle = (y1 + y2) / 2
  // A fault breaks the strands; an unmeasured stretch is whole and thin.
  return strands
    .map((x, index) => {
      if (verdict !== 'unsound') return line(wireX + x, y1, wireX + x, y2, kind)
      const gap = 5 + 2 * index
      return line(wireX + x, y1, wireX + x, middle - gap, kind) + line(wireX + x, middle + 12 - gap, wireX + x, y2, kind)
    })
    .join('')
}

/** A probe's tip, from the left, touching its place. */
const probe = (y: number): string => path(`M${wireX - 12} ${y}L${wireX - 26} ${y - 5}L${wireX - 26} ${y + 5}Z`, 'probe')

/** The circuit as one line down the page: places on the left, the result of each stretch on the right. */
export function circuitLine({ places, stretches, probes }: CircuitLine): string {
  const at = new Map(places.map((place, index) => [place.id, top + index * row]))
  const y = (id: string) => at.get(id) ?? top
  const verdictAt = (index: number) =>
    stretches.find(({ from, to }) => {
      const middle = top + (index + 0.5) * row
      return y(from) < middle && middle < y(to)
    })?.verdict ?? 'plain'
  const named = places.map((place) => text(wireX - 32, y(place.id) + 5, place.words, 'end'))
  const joints = places.map((place) => element('circle', { cx: wireX, cy: y(place.id), r: 4, class: 'place' }))
  const said = stretches.flatMap(({ from, to, words, verdict }) => {
    const [y1, y2] = [y(from), y(to)]
    const bracket = path(`M${wireX + 16} ${y1 + 3}H${wireX + 22}V${y2 - 3}H${wireX + 16}`, `bracket ${verdict === 'unsound' ? 'bad' : ''}`.trim())
    const first = (y1 + y2) / 2 + 5 - ((words.length - 1) * 16) / 2
    return [bracket, ...words.map((line_, index) => text(wireX + 30, first + 16 * index, line_, 'start'))]
  })
  const told = stretches.map(
    (item) => `${places.find((place) => place.id === item.from)?.words} to ${places.find((place) => place.id === item.to)?.words}: ${item.words.join(', ')}`,
  )
  return drawing(
    width,
    2 * top + (places.length - 1) * row,
    `The circuit as one line, ${places[0]?.words} to ${places.at(-1)?.words}. ${told.join('. ')}.`,
    ...places.slice(1).map((place, index) => segment(y(places[index]?.id ?? ''), y(place.id), verdictAt(index))),
    ...joints,
    ...named,
    ...said,
    ...probes.map((id) => probe(y(id))),
  )
}
