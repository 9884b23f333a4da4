import { frozen } from '../errors/inner.ts'
import type { MetalName, Provenance } from '../materials/index.ts'

/** What heatJoint assumes where its input is silent. */
export const heatJointDefaults = /* @__PURE__ */ frozen({
  material: { value: 'annealed-copper', provenance: { status: 'common practice', source: 'hook-up wire is annealed copper unless it says otherwise' } },
  tails: { value: 1, provenance: { status: 'derived', source: 'a wire that ends in the joint leaves it once' } },
  /** In W/(m2 K): radiation and still air together over the joint's own range are counted apart from it. */
  jointFilmWPerM2K: { value: 15, provenance: { status: 'from memory', source: 'natural convection round thin hot wire, order of magnitude' } },
  jointEmissivity: { value: 0.3, provenance: { status: 'from memory', source: 'tinned and fluxed metal, order of magnitude' } },
  stubFilmWPerM2K: { value: 15, provenance: { status: 'from memory', source: 'natural convection and radiation of a thin bare wire, made linear' } },
  insulationFilmWPerM2K: { value: 14, provenance: { status: 'from memory', source: 'natural convection and radiation of an insulated wire, made linear' } },
  insulationShare: {
    value: 0.5,
    provenance: { status: 'derived', source: 'radial conduction in PVC walls of 0.5 and 2.5 mm2 wire: 0.26 to 0.74 between one and three seconds' },
  },
  tipHeatCapacityJPerK: { value: 0, provenance: { status: 'common practice', source: 'a tip whose sensor follows it is taken without mass' } },
  pressurePa: { value: 101325, provenance: { status: 'published', source: 'standard atmosphere, ISO 2533' } },
  sweptMm: { value: 0, provenance: { status: 'derived', source: 'a stream that meets the joint alone' } },
  /** In K above liquidus: what a lap that conducts along itself needs so that its ends flow too. */
  wettingSuperheatK: { value: 30, provenance: { status: 'common practice', source: 'superheat of hand soldering above liquidus' } },
  /** In s after the tool is gone: the insulation's edge peaks in that time. */
  observeAfterToolOffS: { value: 30, provenance: { status: 'derived', source: 'the edge behind stubs up to 15 mm peaks within it' } },
  accuracy: { value: 1, provenance: { status: 'derived', source: '0.2 % of times and 0.3 K, well inside what the inputs are known to' } },
} as const satisfies Readonly<Record<string, { readonly value: number | MetalName; readonly provenance: Provenance }>>)
