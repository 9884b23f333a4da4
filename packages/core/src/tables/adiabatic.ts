import { frozen } from '../errors/inner.ts'
import type { Provenance, ProvenanceStatus } from '../materials/index.ts'

/** Constants of one conductor metal for adiabatic heating; kFactor is in A s^0.5/mm2. */
export interface AdiabaticConstants {
  readonly kFactor: number
  /** Inferred zero-resistance temperature, in degrees below 0 °C. */
  readonly betaC: number
  /** Volumetric heat capacity at 20 °C. */
  readonly heatCapacityJPerKMm3: number
  readonly resistivity20OhmMm: number
  readonly kStatus: ProvenanceStatus
}

/** Published k in A s^0.5/mm2 of insulated conductors from initial to final temperature; null where not given. */
export interface AdiabaticKRow {
  readonly place: string
  readonly insulation: string
  readonly initialC: number
  readonly finalC: number
  readonly copper: number
  readonly aluminium: number
  readonly steel: number | null
  readonly status: ProvenanceStatus
}

/** Published k in A s^0.5/mm2 of a bare protective conductor. */
export interface AdiabaticBareRow {
  readonly condition: string
  readonly material: 'copper' | 'aluminium' | 'steel'
  readonly initialC: number
  readonly finalC: number
  readonly k: number
}

/**
 * Constants and published k factors for adiabatic short circuits up to 5 s.
 *
 * @source IEC 60949:1988, table I; IEC 60364-4-43 and 60364-5-54 as a national edition prints them; status by row
 */
export const adiabatic = /* @__PURE__ */ frozen({
  metals: {
    copper: { kFactor: 226, betaC: 234.5, heatCapacityJPerKMm3: 0.00345, resistivity20OhmMm: 1.7241e-5, kStatus: 'published' },
    aluminium: { kFactor: 148, betaC: 228, heatCapacityJPerKMm3: 0.0025, resistivity20OhmMm: 2.8264e-5, kStatus: 'published' },
    lead: { kFactor: 41, betaC: 230, heatCapacityJPerKMm3: 0.00145, resistivity20OhmMm: 0.000214, kStatus: 'from memory' },
    steel: { kFactor: 78, betaC: 202, heatCapacityJPerKMm3: 0.0038, resistivity20OhmMm: 0.000138, kStatus: 'from memory' },
  },
  kInsulated: [
    {
      place: 'line conductor in a cable',
      insulation: 'PVC 70 C, up to 300 mm2',
      initialC: 70,
      finalC: 160,
      copper: 115,
      aluminium: 76,
      steel: null,
      status: 'published',
    },
    {
      place: 'line conductor in a cable',
      insulation: 'butyl / 85 C rubber',
      initialC: 85,
      finalC: 220,
      copper: 134,
      aluminium: 89,
      steel: null,
      status: 'published',
    },
    {
      place: 'line conductor in a cable',
      insulation: 'EPR, XLPE 90 C',
      initialC: 90,
      finalC: 250,
      copper: 143,
      aluminium: 94,
      steel: null,
      status: 'published',
    },
    {
      place: 'line conductor in a cable',
      insulation: 'PVC 70 C, above 300 mm2',
      initialC: 70,
      finalC: 140,
      copper: 103,
      aluminium: 68,
      steel: null,
      status: 'from memory',
    },
    {
      place: 'line conductor in a cable',
      insulation: 'PVC 90 C, up to 300 mm2',
      initialC: 90,
      finalC: 160,
      copper: 100,
      aluminium: 66,
      steel: null,
      status: 'from memory',
    },
    {
      place: 'line conductor in a cable',
      insulation: 'PVC 90 C, above 300 mm2',
      initialC: 90,
      finalC: 140,
      copper: 86,
      aluminium: 57,
      steel: null,
      status: 'from memory',
    },
    {
      place: 'line conductor in a cable',
      insulation: 'rubber 60 C',
      initialC: 60,
      finalC: 200,
      copper: 141,
      aluminium: 93,
      steel: null,
      status: 'from memory',
    },
    {
      place: 'line conductor in a cable',
      insulation: 'silicone rubber',
      initialC: 180,
      finalC: 350,
      copper: 132,
      aluminium: 87,
      steel: null,
      status: 'from memory',
    },
    { place: 'protective conductor outside a cable', insulation: 'PVC', initialC: 30, finalC: 160, copper: 143, aluminium: 95, steel: 52, status: 'published' },
    {
      place: 'protective conductor outside a cable',
      insulation: 'butyl rubber',
      initialC: 30,
      finalC: 220,
      copper: 166,
      aluminium: 110,
      steel: 60,
      status: 'published',
    },
    {
      place: 'protective conductor outside a cable',
      insulation: 'EPR or XLPE',
      initialC: 30,
      finalC: 250,
      copper: 176,
      aluminium: 116,
      steel: 64,
      status: 'published',
    },
  ],
  kBare: [
    { condition: 'visible and restricted area', material: 'copper', initialC: 30, finalC: 500, k: 228 },
    { condition: 'visible and restricted area', material: 'aluminium', initialC: 30, finalC: 300, k: 125 },
    { condition: 'visible and restricted area', material: 'steel', initialC: 30, finalC: 500, k: 82 },
    { condition: 'normal', material: 'copper', initialC: 30, finalC: 200, k: 159 },
    { condition: 'normal', material: 'aluminium', initialC: 30, finalC: 200, k: 105 },
    { condition: 'normal', material: 'steel', initialC: 30, finalC: 200, k: 58 },
    { condition: 'fire risk', material: 'copper', initialC: 30, finalC: 150, k: 138 },
    { condition: 'fire risk', material: 'aluminium', initialC: 30, finalC: 150, k: 91 },
    { condition: 'fire risk', material: 'steel', initialC: 30, finalC: 150, k: 50 },
  ],
  provenance: {
    status: 'published',
    source: 'IEC 60949 for the constants; IEC 60364-4-43 and 60364-5-54, the national edition NEN 1010, for the k factors',
    edition: '1988',
    clause: 'table I; table 43A; tables of k for protective conductors',
  },
} as const satisfies {
  readonly metals: Readonly<Record<'copper' | 'aluminium' | 'lead' | 'steel', AdiabaticConstants>>
  readonly kInsulated: readonly AdiabaticKRow[]
  readonly kBare: readonly AdiabaticBareRow[]
  readonly provenance: Provenance
})
