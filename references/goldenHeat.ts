import { readFileSync } from 'node:fs'
import { airProperties, churchillBernsteinNusselt, forcedConvectionNusselt, naturalConvectionNusselt } from '../packages/core/src/heat/index.ts'
import type { Reference, ReferenceCase } from './compare.ts'

interface Golden {
  readonly churchillChu: readonly { readonly Ra: number; readonly Pr: number; readonly Nu: number }[]
  readonly morgan: readonly { readonly Ra: number; readonly Pr: number; readonly Nu: number; readonly atBandEdge?: boolean }[]
  readonly churchillBernstein: readonly { readonly Re: number; readonly Pr: number; readonly Nu: number }[]
  readonly airFits: readonly {
    readonly temperatureK: number
    readonly viscosityPaS: number
    readonly viscosityErrorPercent: number
    readonly conductivityWPerMK: number
    readonly conductivityErrorPercent: number
  }[]
  readonly air: readonly {
    readonly temperatureK: number
    readonly densityKgPerM3: number
    readonly viscosityPaS: number
    readonly conductivityWPerMK: number
  }[]
}

const golden = JSON.parse(readFileSync(new URL('./data/goldenHeat.json', import.meta.url), 'utf8')) as Golden
const tenDigits = { relative: 1e-9, why: 'the same formula; the figures carry ten digits' }
const source = 'General-purpose libraries of heat transfer and fluid properties, run for these inputs'
const atK = (temperatureK: number) => airProperties(temperatureK - 273.15)
const nusselt = (title: string, Nu: number, got: () => number): ReferenceCase => ({ title, printed: String(Nu), unit: '1', got, allowed: tenDigits })
/** The reference's value of one property at one temperature. */
const measured = (temperatureK: number) => golden.air.find((row) => row.temperatureK === temperatureK)

export const reference: readonly Reference[] = [
  {
    source,
    clause: 'natural convection, horizontal cylinder, Churchill and Chu',
    status: 'library',
    cases: golden.churchillChu.map(({ Ra, Pr, Nu }) =>
      nusselt(`Ra ${Ra}, Pr ${Pr}`, Nu, () => naturalConvectionNusselt({ rayleigh: Ra, prandtl: Pr, correlation: 'churchill-chu' })),
    ),
  },
  {
    source,
    clause: 'natural convection, horizontal cylinder, Morgan',
    status: 'library',
    notes: 'Rows that stand on an edge of a band are left out: the library forms Ra as Gr Pr, and rounding puts it on either side.',
    cases: golden.morgan
      .filter(({ atBandEdge }) => atBandEdge !== true)
      .map(({ Ra, Pr, Nu }) => nusselt(`Ra ${Ra}, Pr ${Pr}`, Nu, () => naturalConvectionNusselt({ rayleigh: Ra, prandtl: Pr, correlation: 'morgan' }))),
  },
  {
    source,
    clause: 'forced convection, cylinder in cross-flow, Churchill and Bernstein',
    status: 'library',
    cases: golden.churchillBernstein.map(({ Re, Pr, Nu }) =>
      nusselt(`Re ${Re}, Pr ${Pr}`, Nu, () => (Re * Pr > 0.2 ? forcedConvectionNusselt : churchillBernsteinNusselt)({ reynolds: Re, prandtl: Pr })),
    ),
  },
  {
    source,
    clause: 'air: the two closed fits themselves',
    status: 'library',
    cases: golden.airFits.flatMap(({ temperatureK, viscosityPaS, conductivityWPerMK }): readonly ReferenceCase[] => [
      { title: `viscosity at ${temperatureK} K`, printed: String(viscosityPaS), unit: 'Pa s', got: () => atK(temperatureK).viscosityPaS, allowed: tenDigits },
      {
        title: `conductivity at ${temperatureK} K`,
        printed: String(conductivityWPerMK),
        unit: 'W/(m K)',
        got: () => atK(temperatureK).conductivityWPerMK,
        allowed: tenDigits,
      },
    ]),
  },
  {
    source,
    clause: 'air: distance of the fits and the ideal gas from the equation of state of Lemmon and others',
    status: 'library',
    notes: 'The distance itself is checked, so that a fit cannot drift: viscosity within 1.8 %, conductivity within 1.4 %, density within 0.1 %.',
    cases: [
      ...golden.airFits.flatMap(({ temperatureK, viscosityErrorPercent, conductivityErrorPercent }): readonly ReferenceCase[] => {
        const reference = measured(temperatureK)
        if (reference === undefined) return []
        const percent = (ours: number, theirs: number) => 100 * (ours / theirs - 1)
        const allowed = { absolute: 1e-6, why: 'a difference of two figures of ten digits, in percent' }
        return [
          {
            title: `viscosity at ${temperatureK} K, distance`,
            printed: String(viscosityErrorPercent),
            unit: '%',
            got: () => percent(atK(temperatureK).viscosityPaS, reference.viscosityPaS),
            allowed,
          },
          {
            title: `conductivity at ${temperatureK} K, distance`,
            printed: String(conductivityErrorPercent),
            unit: '%',
            got: () => percent(atK(temperatureK).conductivityWPerMK, reference.conductivityWPerMK),
            allowed,
          },
        ]
      }),
      ...golden.air.map(
        ({ temperatureK, densityKgPerM3 }): ReferenceCase => ({
          title: `density at ${temperatureK} K`,
          printed: String(densityKgPerM3),
          unit: 'kg/m3',
          got: () => atK(temperatureK).densityKgPerM3,
          allowed: { relative: 1e-3, why: 'an ideal gas: air at one atmosphere is 0.08 % denser at 250 K, 0.05 % thinner at 600 K' },
        }),
      ),
    ],
  },
]
