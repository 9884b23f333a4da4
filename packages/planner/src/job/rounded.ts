/** Digits of a limit in a message, rounded towards the allowed side, so that the number shown is valid. */
const digits = 3

function shifted(value: number, steps: number): number {
  const step = 10 ** (Math.floor(Math.log10(value)) + 1 - digits)
  return Number((Number(value.toPrecision(digits)) + steps * step).toPrecision(digits))
}

/** A limit rounded up to the digits shown; limits are positive. */
export const roundedUp = (value: number): number => (shifted(value, 0) >= value ? shifted(value, 0) : shifted(value, 1))

/** A limit rounded down to the digits shown; limits are positive. */
export const roundedDown = (value: number): number => (shifted(value, 0) <= value ? shifted(value, 0) : shifted(value, -1))
