import { conductorTemperatureBandC, fuseBandOf, fuseForWire, fuseOpeningS, fuseProtectsWire, steadyCurrentA, timeToTemperatureS } from '@strandwise/core'

const fuseA = 15
const pumpA = 6
const jammedA = 20
const shortA = 100
const limitC = 70
const wire = { areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: 30 } as const
const series = 'ISO 8820-3'
const bandOf = (ratedA: number) => fuseBandOf({ series, ratedA })

const wireA = steadyCurrentA({ ...wire, limitC }) ?? 0
const atShort = fuseOpeningS({ ratedA: fuseA, band: bandOf(fuseA), currentA: shortA })
const wireAtShortS = timeToTemperatureS({ ...wire, currentA: shortA, wantedC: limitC }) ?? 0
const atJam = fuseOpeningS({ ratedA: fuseA, band: bandOf(fuseA), currentA: jammedA })
const jammed = conductorTemperatureBandC({ ...wire, currentA: jammedA })
const wireAtJamS = timeToTemperatureS({ ...wire, currentA: jammedA, wantedC: limitC }) ?? 0

const pair = { ratedA: fuseA, band: bandOf(fuseA), wire, limitC, prospectiveA: shortA }
const guarded = fuseProtectsWire(pair)
const [zone] = guarded.unprotected
const zoneLowA = zone?.lowA ?? 0
const zoneHighA = zone?.highA ?? 0

const smaller = fuseForWire({ loadA: pumpA, wireA, stallA: jammedA, ambientC: 30, series })
const smallerA = smaller.ratedA ?? 0
const jammedHighC = jammed.high

export {
  atJam,
  atShort,
  bandOf,
  fuseA,
  jammed,
  jammedA,
  jammedHighC,
  limitC,
  pair,
  pumpA,
  shortA,
  smallerA,
  wire,
  wireA,
  wireAtJamS,
  wireAtShortS,
  zoneHighA,
  zoneLowA,
}
