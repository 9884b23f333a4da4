import { bundleTemperatureC, wireDefaults } from '@strandwise/core/ampacity'
import { heatFlowWPerM } from '@strandwise/core/heat'
import { type SolvedTerm, solved } from '../formula.ts'
import { derived } from '../sources.ts'
import { resistanceOf, wireSymbols } from './wireSymbols.ts'

type Given = Parameters<typeof bundleTemperatureC>[0]

function terms(i: Given): readonly SolvedTerm[] {
  const { centreC, surfaceC } = bundleTemperatureC(i)
  const { ohmPerM, perK } = resistanceOf(i)
  const made = i.loadedWires * i.currentA ** 2 * ohmPerM * (1 + perK * (centreC - 20))
  const emissivity = i.emissivity ?? wireDefaults.emissivity
  const given = { ...i, solarAbsorbedWPerM: i.solarAbsorbedWPerM ?? wireDefaults.solarAbsorbedWPerM }
  const leaves =
    i.filmWPerM2K === undefined
      ? heatFlowWPerM({ ...given, surfaceC, emissivity, diameterMm: i.bundleOutsideMm }).totalWPerM
      : (Math.PI * i.bundleOutsideMm * i.filmWPerM2K * (surfaceC - i.ambientC)) / 1000 - given.solarAbsorbedWPerM
  return [
    { text: 'heat made in a metre of the bundle', tex: "n I^2 R'", value: made, unit: 'W/m' },
    { text: 'heat that leaves a metre of the bundle', tex: 'q', value: leaves, unit: 'W/m' },
    { text: 'temperature of the surface', tex: '\\theta_s', value: surfaceC, unit: '°C' },
    { text: 'temperature in the middle', tex: '\\theta_c', value: centreC, unit: '°C' },
    { text: 'residual', tex: "n I^2 R' - q", value: made - leaves, unit: 'W/m' },
  ]
}

/** The working of bundleTemperatureC: its value is the temperature in the middle. */
export const bundleTemperatureCFormula = solved<Given>({
  id: 'bundleTemperatureC',
  call: bundleTemperatureC,
  name: 'theta_c',
  tex: '\\theta_c',
  unit: '°C',
  equationTex: "n I^2 R'_{20}\\left(1+\\alpha_{20}\\left(\\theta_c-20\\right)\\right) = q(\\theta_s)",
  equation: 'n * I^2 * R_20 * (1 + alpha * (theta_c - 20)) = q(theta_s), theta_c - theta_s by conduction in the bundle',
  symbols: (i) => ({
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'current in each loaded wire' },
    n: { tex: 'n', unit: '1', of: 'loadedWires', meaning: 'loaded wires' },
    D: { tex: 'D', unit: 'mm', of: 'bundleOutsideMm', meaning: 'outside of the bundle' },
    k_b: {
      tex: 'k_b',
      unit: 'W/(m K)',
      of: () => i.bundleConductivityWPerMK ?? wireDefaults.bundleConductivityWPerMK,
      meaning: 'conductivity across the bundle',
    },
    ...wireSymbols(i),
  }),
  solution: (i) => ({ value: bundleTemperatureC(i).centreC, terms: terms(i) }),
  source: derived('one cylinder with its heat spread evenly; surface as for one wire'),
  validity: ['heat leaves by the outside of the bundle alone', 'the conductivity across the bundle is from memory'],
})
