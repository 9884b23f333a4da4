import { frozen } from '../errors/inner.ts'
import type { Provenance } from '../materials/index.ts'

/** Stefan-Boltzmann constant in W/(m2 K4); exact in the SI of 2019, cut at ten digits. */
export const stefanBoltzmannWPerM2K4 = 5.670374419e-8
/** Standard acceleration of free fall in m/s2. */
export const standardGravityMPerS2 = 9.80665
/** Molar gas constant in J/(mol K). */
export const molarGasConstantJPerMolK = 8.314462618
/** Molar mass of dry air in kg/mol. */
export const dryAirMolarMassKgPerMol = 0.0289586
/** Specific heat of air at constant pressure in J/(kg K), taken as constant. */
export const airSpecificHeatJPerKgK = 1006
/** 0 °C in K. */
export const zeroCelsiusK = 273.15
/** Coldest air in °C (100 K) for which Sutherland's viscosity law is used. */
export const airLowestC = -173.15
/** Hottest air in °C (1900 K) for which Sutherland's viscosity law is used. */
export const airHighestC = 1626.85
/** Re Pr at or below which the Churchill-Bernstein correlation is not used. */
export const leastReynoldsPrandtl = 0.2
/** Lowest absolute pressure in Pa at which air round a wire is a continuum: the mean free path is then 7 micrometres, 1/100 of a 0.7 mm wire. In thinner air convection fades and only radiation remains, while still-air correlations keep conducting and would allow too much current (5.5 A for AWG 24 in a vacuum, where 3.4 A is right). */
export const leastPressurePa = 1000
/** Rayleigh number up to which both natural correlations were fitted. */
export const largestRayleigh = 1e12
/** Rayleigh number at which Morgan's first band begins. */
export const leastRayleighMorgan = 1e-10

/** Source of the constants in this room. */
export const heatConstantsProvenance = /* @__PURE__ */ frozen({
  status: 'published',
  source:
    'CODATA 2018 (sigma, R), ISO 80000-3 (standard free fall), Lemmon et al. 2000 (molar mass of dry air); the span of the viscosity law and the constant specific heat are from memory',
} as const satisfies Provenance)
