import { type WireHeat, type WireStore, wireDefaults } from '@strandwise/core/ampacity'
import { type Metal, metal } from '@strandwise/core/materials'
import type { FormulaSymbol } from '../formula.ts'

type Symbols = Readonly<Record<string, FormulaSymbol<unknown>>>

/** The metal that supplies properties not given. */
function metalOf(i: WireHeat): Metal {
  return metal(i.material ?? wireDefaults.material)
}

/** Diameter of the conductor in mm: given, or that of a solid round. */
function conductorDiameterMm(i: WireHeat): number {
  return i.conductorDiameterMm ?? Math.sqrt((4 * i.areaMm2) / Math.PI)
}

/** Resistance of a metre at 20 degC and its temperature coefficient. */
export function resistanceOf(i: WireHeat): { readonly ohmPerM: number; readonly perK: number } {
  const { resistivity20OhmM, temperatureCoefficient20PerK } = metalOf(i)
  return {
    ohmPerM: ((i.resistivity20OhmM ?? resistivity20OhmM.nominal) * (i.layFactor ?? wireDefaults.layFactor) * 1e6) / i.areaMm2,
    perK: i.temperatureCoefficient20PerK ?? temperatureCoefficient20PerK.nominal,
  }
}

/** The symbols of a wire's heat balance, with given or default values. */
export function wireSymbols(i: WireHeat): Symbols {
  const own = (tex: string, unit: string, meaning: string, value: number): FormulaSymbol<unknown> => ({ tex, unit, meaning, of: () => value })
  const { ohmPerM, perK } = resistanceOf(i)
  const surface: Symbols =
    i.filmWPerM2K === undefined
      ? {
          epsilon: own('\\varepsilon', '1', 'emissivity of the surface', i.emissivity ?? wireDefaults.emissivity),
          v: own('v', 'm/s', 'speed of the air across the wire', i.airSpeedMPerS ?? wireDefaults.airSpeedMPerS),
          p: own('p', 'Pa', 'absolute pressure of the air', i.pressurePa ?? wireDefaults.pressurePa),
        }
      : { h: own('h', 'W/(m² K)', 'film coefficient at the surface', i.filmWPerM2K) }
  return {
    A: own('A', 'mm²', 'area of the conductor', i.areaMm2),
    d: own('d', 'mm', 'diameter of the conductor', conductorDiameterMm(i)),
    w: own('w', 'mm', 'wall of the insulation', i.insulationThicknessMm),
    k_i: own('k_i', 'W/(m K)', 'conductivity of the insulation', i.insulationConductivityWPerMK),
    R_20: own("R'_{20}", 'Ω/m', 'resistance of a metre at 20 °C', ohmPerM),
    alpha: own('\\alpha_{20}', '1/K', 'temperature coefficient at 20 °C', perK),
    theta_a: own('\\theta_a', '°C', 'temperature of the air', i.ambientC),
    ...surface,
    q_sun: own('q_{sun}', 'W/m', 'sunshine that the surface absorbs', i.solarAbsorbedWPerM ?? wireDefaults.solarAbsorbedWPerM),
  }
}

/** Heat capacity per metre: the conductor, and its share of the insulation. */
export function capacityJPerMK(i: WireHeat & WireStore): number {
  const { densityKgPerM3, specificHeatJPerKgK } = metalOf(i)
  const metalJ = (i.conductorDensityKgPerM3 ?? densityKgPerM3.nominal) * (i.conductorSpecificHeatJPerKgK ?? specificHeatJPerKgK.nominal)
  const wallJ =
    (i.insulationDensityKgPerM3 ?? wireDefaults.insulationDensityKgPerM3) * (i.insulationSpecificHeatJPerKgK ?? wireDefaults.insulationSpecificHeatJPerKgK)
  const wallMm2 = Math.PI * i.insulationThicknessMm * (conductorDiameterMm(i) + i.insulationThicknessMm)
  return (i.areaMm2 * metalJ + (i.insulationShare ?? wireDefaults.insulationShare) * wallMm2 * wallJ) / 1e6
}
