import type { WireCode, WireFinding } from '@strandwise/core'

type Values = WireFinding['values']

const a = (value: number | undefined): string => `${Number((value ?? 0).toPrecision(3))} A`
const c = (value: number | undefined): string => `${Math.round(value ?? 0)} °C`
const v = (value: number | undefined): string => `${Number((value ?? 0).toPrecision(3))} V`

/** Short text of each finding other than sound, with its figures. */
const words: Readonly<Partial<Record<WireCode, (values: Values) => string>>> = {
  'current-near-limit': ({ conductorHighC, limitC }) => `conductor ${c(conductorHighC)}, near its limit of ${c(limitC)}`,
  'current-over-limit': ({ conductorHighC, limitC }) => `conductor ${c(conductorHighC)}, limit ${c(limitC)}`,
  'no-steady-state': ({ currentA, largestA }) => `${a(currentA)} heats it without end; at most ${a(largestA)}`,
  'air-at-limit': ({ hottestC, limitC }) => `air of ${c(hottestC)} is at its limit of ${c(limitC)}`,
  'drop-over-budget': ({ dropV, allowedDropV }) => `drop ${v(dropV)}, allowed ${v(allowedDropV)}`,
  'fuse-within-rule': ({ ratedA, wireA }) => `fuse ${a(ratedA)} above the wire's ${a(wireA)}`,
  'fuse-over-wire': ({ ratedA, opensForSureA, wireA }) => `fuse ${a(ratedA)} opens for sure at ${a(opensForSureA)} only, the wire bears ${a(wireA)}`,
  'fuse-slower-than-wire': ({ lowA, highA, limitC }) => `from ${a(lowA)} to ${a(highA)} the wire passes ${c(limitC)} before the fuse opens`,
  'fuse-near-load': ({ ratedA, loadA }) => `fuse ${a(ratedA)} is small for ${a(loadA)}`,
  'fuse-below-load': ({ ratedA, loadA }) => `fuse ${a(ratedA)} is below the load of ${a(loadA)}`,
  'fuse-supply-voltage': ({ supplyV, ratedV }) => `supply ${v(supplyV)} above the fuse's ${v(ratedV)}`,
  'fuse-no-band': ({ mustOpenA, mustHoldA }) => `no curve is held for this fuse: it must hold ${a(mustHoldA)} and open at ${a(mustOpenA)}`,
  'fuse-air-beyond-data': ({ ambientC, highestC }) => `fuse in air of ${c(ambientC)}, known up to ${c(highestC)}`,
}

/** One finding as a short line. */
export function reasonOf({ code, values }: WireFinding): string {
  return words[code]?.(values) ?? code
}
