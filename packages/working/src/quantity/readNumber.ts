/** A number in a text: its value, half of its last digit (0 for a fraction, which is exact), and its end. */
export interface NumberRead {
  readonly value: number
  readonly halfDigit: number
  readonly end: number
  /** For a decimal number: its digits with sign and point, and the power of ten. */
  readonly digits?: string
  readonly exponent?: number
  /** Both readings in plain digits, if the number is ambiguous. */
  readonly readings?: readonly [string, string]
  /** Reason, if it cannot be read. */
  readonly fault?: string
}

/** Sign, then 10^3, or 1 1/8, 1-1/8 and 1/8, or 12 500.5 with e3 or x 10^3. Each part is bounded by the one after it, so it reads in linear time. */
const written =
  /([+-]?) ?(?:10\^([+-]?\d{1,3})(?!\d)|(?:(\d{1,9})[ -])?(\d{1,9}) ?\/ ?(\d{1,9})(?![\d.,])|((?:\d{1,3}(?: \d{3})+|\d+)(?!\d))?(?:([.,])(\d+))?(?:e([+-]?\d{1,3})(?!\d)| ?[x*] ?10\^([+-]?\d{1,3})(?!\d))?)/iy

/** Reads the number at a position of a normalised text; null if there is none. */
export function readNumber(text: string, at: number): NumberRead | null {
  written.lastIndex = at
  const found = written.exec(text)
  if (found === null) return null
  const end = written.lastIndex
  const sign = found[1] === '-' ? -1 : 1
  if (found[2] !== undefined) return { value: sign * Number(`1e${found[2]}`), halfDigit: 0, end }
  if (found[5] !== undefined) return readFraction(sign, found[3], Number(found[4]), Number(found[5]), end)
  return readDecimal(sign, found, text, end)
}

function readFraction(sign: number, whole: string | undefined, over: number, under: number, end: number): NumberRead {
  if (under === 0) return { value: 0, halfDigit: 0, end, fault: 'a fraction over 0' }
  if (whole !== undefined && over >= under) return { value: 0, halfDigit: 0, end, fault: 'after a whole number stands a fraction below 1' }
  return { value: (sign * (Number(whole ?? 0) * under + over)) / under, halfDigit: 0, end }
}

function readDecimal(sign: number, found: RegExpExecArray, text: string, end: number): NumberRead | null {
  const whole = found[6]
  const decimals = found[8]
  if (whole === undefined && decimals === undefined) return null
  const after = text.charCodeAt(end)
  if (after === 0x2c || after === 0x2e) {
    // A comma or point may also end a sentence or separate two parts of a length; then no digit follows.
    const next = text.charCodeAt(end + 1)
    if (next >= 0x30 && next <= 0x39) return { value: 0, halfDigit: 0, end, fault: 'two decimal signs; write thousands without a separator' }
  }
  const power = found[9] ?? found[10]
  const exponent = power === undefined ? 0 : Number(power)
  const shortest = whole === undefined ? '0' : whole.includes(' ') ? whole.replaceAll(' ', '') : whole
  const unsigned = decimals === undefined ? shortest : `${shortest}.${decimals}`
  const before = sign < 0 ? '-' : ''
  const digits = before + unsigned
  const value = Number(exponent === 0 ? digits : `${digits}e${exponent}`)
  const halfDigit = 0.5 * 10 ** (exponent - (decimals?.length ?? 0))
  if (found[7] === ',' && decimals?.length === 3 && whole !== undefined && whole.length <= 3 && !whole.startsWith('0')) {
    const after = power === undefined ? '' : `e${power}`
    return { value, halfDigit, end, readings: [digits + after, before + shortest + decimals + after] }
  }
  return { value, halfDigit, end, digits, exponent }
}
