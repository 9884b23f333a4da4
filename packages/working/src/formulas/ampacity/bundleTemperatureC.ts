import { bundleStates, bundleTemperatureC, wireDefaults } from '@strandwise/core/ampacity'
import { heatFlowWPerM } from '@strandwise/core/heat'
import { type SolvedTerm, solved } from '../formula.ts'
import { derived } from '../sources.ts'
import { resistanceOf, wireSymbols } from './wireSymbols.ts'

type Given = Parameters<typeof bundleTemperatureC>[0]

const caseWords = { bundle: 'the bundle as given', packed: 'the loaded wires packed by themselves', alone: 'one wire by itself' } as const

function terms(i: Given): readonly SolvedTerm[] {
  const states = bundleStates(i)
  const decides = states.reduce((hottest, state) => (state.centreC > hottest.centreC ? state : hottest))
  const { ohmPerM, perK } = resistanceOf(i)
  const wires = decides.name === 'alone' ? 1 : i.loadedWires
  const made = wires * i.currentA ** 2 * ohmPerM * (1 + perK * (decides.centreC - 20))
  const emissivity = i.emissivity ?? wireDefaults.emissivity
  const given = { ...i, solarAbsorbedWPerM: i.solarAbsorbedWPerM ?? wireDefaults.solarAbsorbedWPerM }
  const { surfaceC, outsideMm } = decides
  const leaves =
    i.filmWPerM2K === undefined
      ? heatFlowWPerM({ ...given, surfaceC, emissivity, diameterMm: outsideMm }).totalWPerM
      : (Math.PI * outsideMm * i.filmWPerM2K * (surfaceC - i.ambientC)) / 1000 - given.solarAbsorbedWPerM
  return [
    ...states.map(({ name, centreC }) => ({ text: `middle, ${caseWords[name]}`, tex: '\\theta_c', value: centreC, unit: '°C' })),
    { text: `outside that decides: ${caseWords[decides.name]}`, tex: 'D', value: outsideMm, unit: 'mm' },
    { text: 'heat made in a metre', tex: "n I^2 R'", value: made, unit: 'W/m' },
    { text: 'heat that leaves a metre', tex: 'q', value: leaves, unit: 'W/m' },
    { text: 'temperature of the surface', tex: '\\theta_s', value: surfaceC, unit: '°C' },
    { text: 'temperature in the middle', tex: '\\theta_c', value: decides.centreC, unit: '°C' },
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
  equationTex:
    "n I^2 R'_{20}\\left(1+\\alpha_{20}\\left(\\theta_c-20\\right)\\right) = q(\\theta_s),\\quad \\theta_c = \\theta_s + \\frac{q}{2\\pi k_b}\\left(\\frac{1}{2}+\\ln\\frac{D}{D_c}\\right)",
  equation: 'n * I^2 * R_20 * (1 + alpha * (theta_c - 20)) = q(theta_s), theta_c = theta_s + q * (1/2 + log(D/D_c))/(2 * pi * k_b), hottest of three cases',
  symbols: (i) => ({
    I: { tex: 'I', unit: 'A', of: 'currentA', meaning: 'current in each loaded wire' },
    n: { tex: 'n', unit: '1', of: 'loadedWires', meaning: 'loaded wires' },
    D: { tex: 'D', unit: 'mm', of: () => bundleStates(i)[0].outsideMm, meaning: 'outside of the bundle' },
    D_c: { tex: 'D_c', unit: 'mm', of: () => bundleStates(i)[1].outsideMm, meaning: 'outside of the loaded wires lying together' },
    k_b: {
      tex: 'k_b',
      unit: 'W/(m K)',
      of: () => i.bundleConductivityWPerMK ?? wireDefaults.bundleConductivityWPerMK,
      meaning: 'conductivity across the bundle',
    },
    ...wireSymbols(i),
  }),
  solution: (i) => ({ value: bundleTemperatureC(i).centreC, terms: terms(i) }),
  source: derived('round heat source in the middle of a cylinder; surface as for one wire'),
  validity: [
    'the hottest of three: the bundle as given, the loaded wires packed by themselves, one wire by itself',
    'the loaded wires lie together, and carry the same current at the same time',
    'the conductivity across the bundle is from memory',
  ],
})
