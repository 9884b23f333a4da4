import type { QuantityKind } from './kinds.ts'
import { inOwnUnit, isUnit, type Reading, resolveUnit } from './reading.ts'
import { readNumber } from './readNumber.ts'
import { unitName } from './units.ts'

/** Kinds written in two or three parts: 12 ft 6 in, 1 min 30 s, 5 lb 3 oz, 12° 30′. */
const inParts: ReadonlySet<QuantityKind> = new Set<QuantityKind>(['lengthM', 'lengthMm', 'timeS', 'massKg', 'angleRad'])

/** Sum of the parts; a string explains what is wrong with them; null if the text is not in parts of known units. */
export function readParts(plain: string, kind: QuantityKind): Reading | string | null {
  if (!inParts.has(kind)) return null
  const negative = plain.startsWith('-')
  let at = negative ? 1 : 0
  let total = 0
  let half = 0
  let unitBefore = Number.POSITIVE_INFINITY
  let numberBefore = 0
  for (let part = 0; at < plain.length; part++) {
    const number = readNumber(plain, at)
    if (number === null || number.readings !== undefined || number.fault !== undefined) return null
    const letters = /[^\d]*/y
    letters.lastIndex = number.end
    const written = letters.exec(plain)?.[0] ?? ''
    at = letters.lastIndex
    // Parts are separated by space, comma or hyphen.
    const name = unitName(at < plain.length ? written.replace(/[ ,-]+$/, '') : written)
    if (name === '') return 'a part without a unit'
    const unit = resolveUnit(kind, name)
    if (!isUnit(unit)) return null
    const size = unit.times / unit.over
    const reading = inOwnUnit(number, unit)
    if (!Number.isInteger(numberBefore)) return 'only the last part may have a fraction'
    if (!(size < unitBefore)) return 'parts run from the larger unit to the smaller'
    // A part of at least one whole of the previous unit shows that the parts do not belong together.
    if (part > 0 && !(reading.value < unitBefore * (1 - 1e-12))) return 'a part as large as the unit before it'
    total += reading.value
    half = reading.half
    unitBefore = size
    numberBefore = number.value
  }
  return { value: negative ? -total : total, half }
}
