import { requireFiniteResult, requireNotNegative, requirePositive, requireWhole } from '../errors/index.ts'
import { constrictionResistanceOhm } from './constrictionResistance.ts'
import { contactDefaults } from './contactDefaults.ts'
import { filmResistanceOhm } from './filmResistance.ts'

/** One face of a contact: hardness of its surface metal, and resistivity: the plating's if thicker than a spot's radius, else the base metal's. */
export interface ContactFace {
  readonly resistivityOhmM: number
  readonly hardnessMPa: number
  readonly filmOhmM2?: number
}

/**
 * Contact between two faces of unlike metal or plating: the softer one yields, both constrict the current, both films are in series.
 *
 * Corrosion of the pair in damp is a separate check (galvanicDifferenceV).
 *
 * @equation A = k F/min(H1, H2), a = sqrt(A/(n pi)); R = (rho1 + rho2)/4 (1/(n a) + 1/alpha) + (sigma1 + sigma2)/A
 * @symbol F - forceN - N - force between the faces
 * @symbol rho1 - faces.0.resistivityOhmM - ohm m - resistivity behind the first face
 * @symbol rho2 - faces.1.resistivityOhmM - ohm m - resistivity behind the second face
 * @symbol H1 - faces.0.hardnessMPa - MPa - hardness of the first face
 * @symbol H2 - faces.1.hardnessMPa - MPa - hardness of the second face
 * @symbol sigma1 - faces.0.filmOhmM2 - ohm m2 - film on the first face
 * @symbol sigma2 - faces.1.filmOhmM2 - ohm m2 - film on the second face
 * @symbol n - spots - 1 - number of like spots
 * @symbol alpha - clusterRadiusMm - mm - radius of the patch in which they lie
 * @symbol k - realAreaFactor - 1 - touching area over force over hardness
 * @symbol R - result - ohm - whole resistance, beside its parts, the spot's radius, the area and which face is softer
 * @domain forceN: above 0
 * @domain faces.0.resistivityOhmM: above 0
 * @domain faces.1.resistivityOhmM: above 0
 * @domain faces.0.hardnessMPa: above 0
 * @domain faces.1.hardnessMPa: above 0
 * @domain optional faces.0.filmOhmM2: at least 0
 * @domain optional faces.1.filmOhmM2: at least 0
 * @domain optional spots: whole at least 1
 * @domain optional clusterRadiusMm: above 0
 * @domain optional realAreaFactor: above 0
 * @throws DomainError outside the domain
 * @example
 * unlikeContact({ forceN: 5, faces: [{ resistivityOhmM: 1.15e-7, hardnessMPa: 50, filmOhmM2: 1e-12 }, { resistivityOhmM: 6.4e-8, hardnessMPa: 1500, filmOhmM2: 0 }], spots: 4, clusterRadiusMm: 0.5, realAreaFactor: 1 }) // { resistanceOhm: 0.00022491, softer: 0 }
 * @source Holm, Electric Contacts, 1967, and Greenwood 1966 (from memory)
 */
export function unlikeContact(i: {
  readonly forceN: number
  readonly faces: readonly [ContactFace, ContactFace]
  readonly spots?: number
  readonly clusterRadiusMm?: number
  readonly realAreaFactor?: number
}): {
  readonly resistanceOhm: number
  readonly constrictionOhm: number
  readonly filmOhm: number
  readonly spotRadiusMm: number
  readonly touchingMm2: number
  readonly softer: 0 | 1 | null
} {
  const F = requirePositive('forceN', i.forceN)
  const [first, second] = [0, 1].map((k) => face(i.faces?.[k], k)) as [Required<ContactFace>, Required<ContactFace>]
  const k = i.realAreaFactor === undefined ? contactDefaults.realAreaFactor : requirePositive('realAreaFactor', i.realAreaFactor)
  const spots = i.spots === undefined ? contactDefaults.spots : requireWhole('spots', i.spots, 1)
  const touchingMm2 = requireFiniteResult('forceN', F, k * (F / Math.min(first.hardnessMPa, second.hardnessMPa)))
  const spotRadiusMm = Math.sqrt(touchingMm2 / (spots * Math.PI))
  const constrictionOhm = constrictionResistanceOhm({
    resistivity1OhmM: first.resistivityOhmM,
    resistivity2OhmM: second.resistivityOhmM,
    spotRadiusMm,
    spots,
    ...(i.clusterRadiusMm === undefined ? {} : { clusterRadiusMm: i.clusterRadiusMm }),
  })
  const filmOhm = filmResistanceOhm({ filmOhmM2: first.filmOhmM2 + second.filmOhmM2, areaMm2: touchingMm2 })
  return {
    resistanceOhm: constrictionOhm + filmOhm,
    constrictionOhm,
    filmOhm,
    spotRadiusMm,
    touchingMm2,
    softer: first.hardnessMPa === second.hardnessMPa ? null : first.hardnessMPa < second.hardnessMPa ? 0 : 1,
  }
}

function face(given: ContactFace | undefined, k: number): Required<ContactFace> {
  return {
    resistivityOhmM: requirePositive(`faces.${k}.resistivityOhmM`, given?.resistivityOhmM as number),
    hardnessMPa: requirePositive(`faces.${k}.hardnessMPa`, given?.hardnessMPa as number),
    filmOhmM2: given?.filmOhmM2 === undefined ? contactDefaults.filmOhmM2 : requireNotNegative(`faces.${k}.filmOhmM2`, given.filmOhmM2),
  }
}
