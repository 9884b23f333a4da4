/** A limit as it is told, in three digits: never past the limit itself, so that what is told would do. */
const digits = 3

function shifted(value: number, steps: number): number {
  const step = 10 ** (Math.floor(Math.log10(value)) + 1 - digits)
  return Number((Number(value.toPrecision(digits)) + steps * step).toPrecision(digits))
}

/** The nearest told number at or above a limit, both above 0. */
export const roundedUp = (value: number): number => (shifted(value, 0) >= value ? shifted(value, 0) : shifted(value, 1))

/** The nearest told number at or below a limit, both above 0. */
export const roundedDown = (value: number): number => (shifted(value, 0) <= value ? shifted(value, 0) : shifted(value, -1))
