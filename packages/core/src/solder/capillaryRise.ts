import { requireBetween, requireChoice, requireFiniteResult, requirePositive } from '../errors/index.ts'
import { frozen } from '../errors/inner.ts'
import { standardGravityMPerS2 } from '../heat/index.ts'
import type { Provenance } from '../materials/index.ts'

type GapShape = 'round' | 'slit'
const shapes = ['round', 'slit'] as const satisfies readonly GapShape[]

/** Defaults of capillaryRiseMm: molten solder on well fluxed copper. */
export const capillaryDefaults = /* @__PURE__ */ frozen({
  surfaceTensionNPerM: { value: 0.45, provenance: { status: 'from memory', source: 'molten tin-lead and tin-silver-copper under flux, 0.4 to 0.55 N/m' } },
  /** Good wetting. */
  contactAngleRad: { value: Math.PI / 6, provenance: { status: 'common practice', source: 'about 30 degrees or less is what good wetting looks like' } },
  shape: { value: 'slit', provenance: { status: 'derived', source: 'two wires side by side make a gap that narrows, nearer to a slit than to a tube' } },
} as const satisfies Readonly<Record<string, { readonly value: number | GapShape; readonly provenance: Provenance }>>)

/**
 * Gives the capillary rise of molten solder in a gap between wires or strands; negative if it does not wet.
 *
 * Between strands it is hundreds of millimetres: the wicking distance is limited by where the copper is still hot, never by weight.
 *
 * @equation h = 2 gamma cos(theta)/(rho g s) in a slit of width s; twice that in a round gap of diameter s
 * @symbol gamma - surfaceTensionNPerM - N/m - surface tension of the solder
 * @symbol theta - contactAngleRad - rad - its contact angle on the metal
 * @symbol rho - densityKgPerM3 - kg/m3 - its density
 * @symbol s - gapMm - mm - width of the slit, or diameter of the round gap
 * @symbol h - result - mm - rise; negative where the solder draws back
 * @domain gapMm: above 0
 * @domain densityKgPerM3: above 0
 * @domain optional surfaceTensionNPerM: above 0
 * @domain optional contactAngleRad: from 0 to 3.141592653589793
 * @throws DomainError outside the domain
 * @example
 * capillaryRiseMm({ gapMm: 0.1, densityKgPerM3: 8400, surfaceTensionNPerM: 0.45, contactAngleRad: 0.5, shape: 'slit' }) // 95.881
 * @source Jurin's law
 */
export function capillaryRiseMm(i: {
  readonly gapMm: number
  readonly densityKgPerM3: number
  readonly surfaceTensionNPerM?: number
  readonly contactAngleRad?: number
  readonly shape?: GapShape
}): number {
  const s = requirePositive('gapMm', i.gapMm) / 1000
  const rho = requirePositive('densityKgPerM3', i.densityKgPerM3)
  const gamma = requirePositive('surfaceTensionNPerM', i.surfaceTensionNPerM ?? capillaryDefaults.surfaceTensionNPerM.value)
  const theta = requireBetween('contactAngleRad', i.contactAngleRad ?? capillaryDefaults.contactAngleRad.value, 0, Math.PI)
  const shape = requireChoice<GapShape>('shape', i.shape ?? capillaryDefaults.shape.value, shapes)
  const perWidth = shape === 'round' ? 4 : 2
  return requireFiniteResult('gapMm', i.gapMm, (1000 * perWidth * gamma * Math.cos(theta)) / (rho * standardGravityMPerS2 * s))
}
