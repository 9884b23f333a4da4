import { lossWPerM } from './air.ts'
import { type Golden, remadeHeatJoint } from './heatJoint.ts'

/** Emissivities of molten solder, of bright bare wire and of plastic. */
const emissivities = { joint: 0.15, stub: 0.1, insulation: 0.9 } as const

/** Film coefficient of a cylinder at one surface temperature, with or without radiation. */
function filmWPerM2K(surfaceC: number, ambientC: number, diameterMm: number, emissivity: number): number {
  return lossWPerM(surfaceC, diameterMm / 1000, { ambientC, emissivity }) / ((Math.PI * diameterMm * (surfaceC - ambientC)) / 1000)
}

/** A joint whose films are not given: each taken once, half way from the air to the wetting temperature. */
function withFilms(input: Golden): Golden {
  const { ambientC, joint, conductors, wettingSuperheatK = 30 } = input
  const { liquidusC } = input.alloy as { readonly liquidusC: number }
  const surfaceC = (ambientC + liquidusC + wettingSuperheatK) / 2
  const film = (diameterMm: number | undefined, emissivity: number) => filmWPerM2K(surfaceC, ambientC, diameterMm ?? Number.NaN, emissivity)
  return {
    ...input,
    joint: {
      ...joint,
      surfaceMm2: Math.PI * joint.diameterMm * joint.lapMm,
      // The model has the joint's radiation apart from its film.
      filmWPerM2K: film(joint.diameterMm, 0),
      emissivity: emissivities.joint,
    },
    conductors: conductors.map((side) => ({
      ...side,
      stubFilmWPerM2K: film(side.diameterMm, emissivities.stub),
      insulationFilmWPerM2K: film(side.insulationOutsideMm, emissivities.insulation),
    })),
  }
}

export interface RemadeFilms {
  readonly liquidusAtS: number | null
  readonly wettedAtS: number | null
  readonly 'insulationPeakC.0': number
}

export function remadeFilms(input: Golden): RemadeFilms {
  const { liquidusAtS, wettedAtS, insulationPeakC } = remadeHeatJoint(withFilms(input))
  return { liquidusAtS, wettedAtS, 'insulationPeakC.0': insulationPeakC[0] ?? Number.NaN }
}
