import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Still-air convection round a horizontal cylinder: two published fits that differ by about a fifth on thin wire. */
export type Correlation = 'churchill-chu' | 'morgan'

/** Both correlations, in the order of a band. */
export const correlations = /* @__PURE__ */ frozen(['churchill-chu', 'morgan'] as const satisfies readonly Correlation[])

/** Defaults of the heat models. */
export const heatDefaults = /* @__PURE__ */ frozen({
  airSpeedMPerS: 0,
  pressurePa: 101325,
  solarAbsorbedWPerM: 0,
  correlation: 'churchill-chu',
  provenance: {
    status: 'common practice',
    source: 'still air in the shade at the standard atmosphere of ISO 2533; Churchill and Chu because it has no jumps and gives the hotter wire',
  } satisfies Provenance,
} as const)
