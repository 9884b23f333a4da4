import { airProperties, heatDefaults, heatFlowWPerM, leastReynoldsPrandtl, morganBands, rayleighNumber } from '@strandwise/core/heat'
import { closed } from '../formula.ts'
import { published } from '../sources.ts'

type Given = Parameters<typeof heatFlowWPerM>[0]

function naturalFor(i: Given): string {
  if ((i.correlation ?? heatDefaults.correlation) === 'churchill-chu') return '(0.6 + 0.387 * Ra^(1/6)/(1 + (0.559/Pr)^(9/16))^(8/27))^2'
  const rayleigh = rayleighNumber(i.surfaceC, i.ambientC, i.diameterMm / 1000, i.pressurePa ?? heatDefaults.pressurePa)
  const band = morganBands.find(({ below }) => rayleigh < below)
  return `${band?.factor} * Ra^${band?.exponent}`
}

/** True if the stream is within the range of the forced-convection correlation. */
function forced(i: Given): boolean {
  const { densityKgPerM3, viscosityPaS, prandtl } = airProperties((i.surfaceC + i.ambientC) / 2, i.pressurePa)
  return ((densityKgPerM3 * (i.airSpeedMPerS ?? heatDefaults.airSpeedMPerS) * i.diameterMm) / 1000 / viscosityPaS) * prandtl > leastReynoldsPrandtl
}

/** The working of heatFlowWPerM. */
export const heatFlowWPerMFormula = closed<Parameters<typeof heatFlowWPerM>[0]>({
  id: 'heatFlowWPerM',
  call: heatFlowWPerM,
  symbols: {
    theta_s: { tex: '\\theta_s', unit: '°C', of: 'surfaceC', meaning: 'temperature of the surface' },
    theta_a: { tex: '\\theta_a', unit: '°C', of: 'ambientC', meaning: 'temperature of the air and the surroundings' },
    D: { tex: 'D', unit: 'mm', of: 'diameterMm', meaning: 'outside diameter' },
    epsilon: { tex: '\\varepsilon', unit: '1', of: 'emissivity', meaning: 'emissivity of the surface' },
    v: { tex: 'v', unit: 'm/s', of: (i) => i.airSpeedMPerS ?? heatDefaults.airSpeedMPerS, meaning: 'speed of the air across the wire' },
    p: { tex: 'p', unit: 'Pa', of: (i) => i.pressurePa ?? heatDefaults.pressurePa, meaning: 'absolute pressure' },
    q_sun: { tex: 'q_{sun}', unit: 'W/m', of: (i) => i.solarAbsorbedWPerM ?? heatDefaults.solarAbsorbedWPerM, meaning: 'sunshine that the surface absorbs' },
  },
  steps: (i) => [
    { name: 'T', tex: 'T', unit: 'K', meaning: 'film temperature', expression: '(theta_s + theta_a)/2 + 273.15' },
    { name: 'mu', tex: '\\mu', unit: 'Pa s', meaning: 'viscosity of the air', expression: '1.458e-6 * T^1.5/(T + 110.4)' },
    { name: 'k', tex: 'k', unit: 'W/(m K)', meaning: 'conductivity of the air', expression: '2.64638e-3 * T^1.5/(T + 245.4 * 10^(-12/T))' },
    { name: 'nu', tex: '\\nu', unit: 'm²/s', meaning: 'kinematic viscosity', expression: 'mu * 8.314462618 * T/(p * 0.0289586)' },
    { name: 'Pr', tex: '\\mathrm{Pr}', unit: '1', meaning: 'Prandtl number', expression: 'mu * 1006/k' },
    { name: 'Ra', tex: '\\mathrm{Ra}', unit: '1', meaning: 'Rayleigh number', expression: '9.80665/T * abs(theta_s - theta_a) * (D/1000)^3 * Pr/nu^2' },
    { name: 'Nu_n', tex: '\\mathrm{Nu}_n', unit: '1', meaning: 'Nusselt number of still air', expression: naturalFor(i) },
    ...(forced(i)
      ? [
          { name: 'Re', tex: '\\mathrm{Re}', unit: '1', meaning: 'Reynolds number', expression: 'v * D/1000/nu' },
          {
            name: 'Nu_f',
            tex: '\\mathrm{Nu}_f',
            unit: '1',
            meaning: 'Nusselt number of the stream',
            expression: '0.3 + 0.62 * Re^(1/2) * Pr^(1/3)/(1 + (0.4/Pr)^(2/3))^(1/4) * (1 + (Re/282000)^(5/8))^(4/5)',
          },
        ]
      : []),
    { name: 'q_c', tex: 'q_c', unit: 'W/m', meaning: 'convection', expression: `${forced(i) ? 'max(Nu_n, Nu_f)' : 'Nu_n'} * k * pi * (theta_s - theta_a)` },
    {
      name: 'q_r',
      tex: 'q_r',
      unit: 'W/m',
      meaning: 'radiation',
      expression: 'epsilon * 5.670374419e-8 * pi * D/1000 * ((theta_s + 273.15)^4 - (theta_a + 273.15)^4)',
    },
  ],
  results: [{ name: 'q', tex: 'q', unit: 'W/m', meaning: 'heat that leaves each metre', expression: 'q_c + q_r - q_sun', of: 'totalWPerM' }],
  source: published('Churchill and Chu 1975, Morgan 1975, Churchill and Bernstein 1977', 'Stefan-Boltzmann law'),
  validity: ['one horizontal wire; natural or forced, whichever carries more', 'forced flow counts where Re Pr is above 0.2'],
})
