import { frozen } from '../errors/inner.ts'
import type { Metal } from './properties.ts'
import type { Provenance } from './provenance.ts'

const parallel = {
  status: 'derived',
  source:
    'copper skin and aluminium core in parallel: 10 % copper by area is nominal, 10 to 15 % is the range; the shares are from memory, the metals as in the table of metals',
} as const satisfies Provenance

/** Copper skin on an aluminium core: conductances and heat capacities add by share of area. It softens and melts like its core. */
export const copperCladAluminium = /* @__PURE__ */ frozen({
  name: 'copper-clad-aluminium',
  resistivity20OhmM: { low: 2.5791e-8, nominal: 2.6566e-8, high: 2.6566e-8, provenance: parallel },
  temperatureCoefficient20PerK: { low: 0.0040076, nominal: 0.0040146, high: 0.0040146, provenance: parallel },
  densityKgPerM3: { low: 3323.5, nominal: 3323.5, high: 3632.8, provenance: parallel },
  specificHeatJPerKgK: { low: 710.96, nominal: 762.24, high: 762.24, provenance: parallel },
  conductivityWPerMK: { low: 249.88, nominal: 249.88, high: 257.72, provenance: parallel },
  tensileMPa: null,
  meltingC: { low: 646.1, nominal: 657.2, high: 660, provenance: { status: 'derived', source: 'that of its aluminium core, 1350-H14 data sheet' } },
} as const satisfies Metal)
