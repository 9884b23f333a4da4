import { frozen } from '../errors/inner.ts'
import type { MetalName, Provenance } from '../materials/index.ts'

/** Defaults of heatJoint. */
export const heatJointDefaults = /* @__PURE__ */ frozen({
  material: { value: 'annealed-copper', provenance: { status: 'common practice', source: 'hook-up wire is annealed copper unless it says otherwise' } },
  tails: { value: 1, provenance: { status: 'derived', source: 'a wire that ends in the joint leaves it once' } },
  /** Reference temperature of still-air films, as a fraction of the way from air to wetting temperature, at least 50 K above the air. */
  filmReferenceShare: {
    value: 0.5,
    provenance: {
      status: 'derived',
      source: 'Churchill and Chu on each diameter: within 0.6 % of liquidus times and 6 K of steady temperatures of a full solution',
    },
  },
  jointEmissivity: { value: 0.15, low: 0.05, high: 0.3, provenance: { status: 'from memory', source: 'molten and fluxed solder, order of magnitude' } },
  stubEmissivity: { value: 0.1, provenance: { status: 'from memory', source: 'tinned or bright copper 0.02 to 0.1; oxidised 0.6 to 0.88' } },
  insulationEmissivity: { value: 0.9, provenance: { status: 'from memory', source: 'plastic insulation' } },
  insulationShare: {
    value: 0.5,
    provenance: { status: 'derived', source: 'radial conduction in PVC walls of 0.5 and 2.5 mm2 wire: 0.26 to 0.74 between one and three seconds' },
  },
  tipHeatCapacityJPerK: { value: 0, provenance: { status: 'common practice', source: 'a tip whose sensor follows it is taken without mass' } },
  pressurePa: { value: 101325, provenance: { status: 'published', source: 'standard atmosphere, ISO 2533' } },
  sweptMm: { value: 0, provenance: { status: 'derived', source: 'a stream that meets the joint alone' } },
  /** In K above liquidus: superheat for the ends of a real lap to flow too, as they are cooler than its middle. */
  wettingSuperheatK: { value: 30, provenance: { status: 'common practice', source: 'superheat of hand soldering above liquidus' } },
  /** Observation time after the tool leaves, in s: the insulation's edge peaks within it. */
  observeAfterToolOffS: { value: 30, provenance: { status: 'derived', source: 'the edge behind stubs up to 15 mm peaks within it' } },
  accuracy: { value: 1, provenance: { status: 'derived', source: '0.2 % of times and 0.3 K, well inside what the inputs are known to' } },
} as const satisfies Readonly<
  Record<string, { readonly value: number | MetalName; readonly low?: number; readonly high?: number; readonly provenance: Provenance }>
>)
