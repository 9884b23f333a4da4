import { readFileSync } from 'node:fs'
import { air, churchillBernstein, churchillChu, morganNusselt } from './air.ts'
import { realAir } from './equationOfState.ts'

type Row = Readonly<Record<string, number>>
const golden = JSON.parse(readFileSync(new URL('../data/goldenHeat.json', import.meta.url), 'utf8')) as Readonly<Record<string, readonly Row[]>>

const kelvinToC = (kelvin: number): number => kelvin - 273.15
const percent = (ours: number, theirs: number): number => 100 * (ours / theirs - 1)

/** Recomputes each row of one table from its inputs. */
const tables: Readonly<Record<string, (row: Row) => Row>> = {
  churchillChu: ({ Ra = 0, Pr = 0 }) => ({ Nu: churchillChu(Ra, Pr) }),
  // The library forms Ra from other numbers, so a row on the edge of a band lies on either side of it.
  morgan: ({ Ra = 0, atBandEdge }) => (atBandEdge === undefined ? { Nu: morganNusselt(Ra) } : {}),
  churchillBernstein: ({ Re = 0, Pr = 0 }) => ({ Nu: churchillBernstein(Re, Pr) }),
  air: ({ temperatureK = 0 }) => ({ ...realAir(temperatureK) }),
  airFits: ({ temperatureK = 0 }) => {
    const { viscosity, conductivity } = air(kelvinToC(temperatureK))
    const real = realAir(temperatureK)
    return {
      viscosityPaS: viscosity,
      viscosityErrorPercent: percent(viscosity, real.viscosityPaS),
      conductivityWPerMK: conductivity,
      conductivityErrorPercent: percent(conductivity, real.conductivityWPerMK),
    }
  },
}

/** Largest difference between the golden heat-transfer figures and the same figures from the published equations: relative, and in percentage points for the distances of the air fits. */
export function heatDifferences(): { readonly count: number; readonly share: number; readonly percent: number } {
  let [count, share, points] = [0, 0, 0]
  for (const [name, remake] of Object.entries(tables)) {
    for (const row of golden[name] ?? []) {
      for (const [key, ours] of Object.entries(remake(row))) {
        const theirs = row[key]
        count += 1
        if (theirs === undefined) share = Number.POSITIVE_INFINITY
        else if (key.endsWith('Percent')) points = Math.max(points, Math.abs(ours - theirs))
        else share = Math.max(share, Math.abs(ours / theirs - 1))
      }
    }
  }
  return { count, share, percent: points }
}
