import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/**
 * Least bend radius to the inside of the bend, in outside diameters, by kind of installation.
 *
 * @source FAA AC 43.13-1B and US Army practice for wire and bundles, SAE AS50881 for coaxial lines; the three diameters of a supported break-out are from memory
 */
export const bendRadiusMultiples = /* @__PURE__ */ frozen({
  unsupported: 10,
  supported: 3,
  coaxial: 10,
  provenance: {
    unsupported: { status: 'published', source: 'FAA AC 43.13-1B', edition: '1998 with change 1, 2001', clause: 'chapter 11, para 11-96' },
    supported: {
      status: 'from memory',
      source: 'FAA AC 43.13-1B',
      edition: '1998 with change 1, 2001',
      clause: 'chapter 11, para 11-96, break-out at a terminal strip',
    },
    coaxial: { status: 'published', source: 'SAE AS50881' },
  },
} as const satisfies Readonly<Record<'unsupported' | 'supported' | 'coaxial', number>> & { readonly provenance: Readonly<Record<string, Provenance>> })

/**
 * Defaults of the strain-life law of copper strands: annealed copper, low-cycle part of the law only.
 *
 * @source fatigue ductility of annealed copper, from memory; the scatter of a factor 3 is common practice
 */
export const flexLifeDefaults = /* @__PURE__ */ frozen({
  ductilityCoefficient: 0.3,
  ductilityExponent: -0.6,
  scatterFactor: 3,
  provenance: { status: 'from memory', source: 'Strain-life law of Coffin and Manson, annealed copper' },
} as const satisfies Readonly<Record<string, number | Provenance>>)

/**
 * Defaults of an inserted length of wire: a joint at each end, no slack kept for later work.
 *
 * @source common practice: damage along a length is cut out and bridged with two splices
 */
export const slackDefaults = /* @__PURE__ */ frozen({
  jointsIfInserted: 2,
  serviceSlackMm: 0,
  provenance: { status: 'common practice', source: 'A length put in has a joint at each end' },
} as const satisfies Readonly<Record<string, number | Provenance>>)
