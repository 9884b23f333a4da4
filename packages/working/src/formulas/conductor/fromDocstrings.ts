// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.
import { conductorDefaults, layFactor, resistanceAtTemperatureOhm, strandedAreaMm2, tinAreaMm2 } from '@strandwise/core/conductor'
import { closed } from '../formula.ts'
import { derived, published } from '../sources.ts'

/** The working of layFactor. */
export const layFactorFormula = closed<Parameters<typeof layFactor>[0]>({
  id: 'layFactor',
  call: layFactor,
  symbols: {
    d: { tex: 'd', unit: 'mm', of: 'layerDiameterMm', meaning: 'diameter of the helix through the centres of the layer\'s strands; 0 for the straight core' },
    p: { tex: 'p', unit: 'mm', of: 'pitchMm', meaning: 'length of wire for one turn' },
  },
  results: [
    { name: 'K', tex: 'K', unit: '1', meaning: 'length of a strand over length of the wire', expression: 'sqrt(1 + (pi * d/p)^2)' },
  ],
  source: derived('geometry of a helix'),
  validity: ['One layer of strands.'],
})

/** The working of resistanceAtTemperatureOhm. */
export const resistanceAtTemperatureOhmFormula = closed<Parameters<typeof resistanceAtTemperatureOhm>[0]>({
  id: 'resistanceAtTemperatureOhm',
  call: resistanceAtTemperatureOhm,
  symbols: {
    R1: { tex: 'R_{1}', unit: 'Ω', of: 'resistanceOhm', meaning: 'resistance as measured' },
    T1: { tex: 'T_{1}', unit: '°C', of: 'atC', meaning: 'its temperature' },
    T2: { tex: 'T_{2}', unit: '°C', of: 'wantedC', meaning: 'temperature wanted' },
    alpha: { tex: '\\alpha', unit: '1/K', of: 'coefficientPerK', meaning: 'temperature coefficient at the base' },
    Tb: { tex: 'T_{b}', unit: '°C', of: (i) => i.coefficientAtC ?? conductorDefaults.temperatureC, meaning: 'base of the coefficient' },
  },
  results: [
    { name: 'R2', tex: 'R_{2}', unit: 'Ω', meaning: 'resistance at T2', expression: 'R1 * (1 + alpha * (T2 - Tb))/(1 + alpha * (T1 - Tb))' },
  ],
  source: published('IEC 60028, temperature coefficient rule; IEC 60228:2004, temperature correction'),
  validity: ['A straight line: within about 1 % for copper from -60 to 300 °C.'],
})

/** The working of strandedAreaMm2. */
export const strandedAreaMm2Formula = closed<Parameters<typeof strandedAreaMm2>[0]>({
  id: 'strandedAreaMm2',
  call: strandedAreaMm2,
  symbols: {
    n: { tex: 'n', unit: '1', of: 'strandCount', meaning: 'number of strands' },
    d: { tex: 'd', unit: 'mm', of: 'strandDiameterMm', meaning: 'diameter of one strand' },
  },
  results: [
    { name: 'A', tex: 'A', unit: 'mm²', meaning: 'area of metal, square to the strands', expression: 'n * pi/4 * d^2' },
  ],
  source: derived('geometry'),
  validity: ['Voids between the strands do not count.'],
})

/** The working of tinAreaMm2. */
export const tinAreaMm2Formula = closed<Parameters<typeof tinAreaMm2>[0]>({
  id: 'tinAreaMm2',
  call: tinAreaMm2,
  symbols: {
    n: { tex: 'n', unit: '1', of: 'strandCount', meaning: 'number of strands' },
    d: { tex: 'd', unit: 'mm', of: 'strandDiameterMm', meaning: 'diameter of one strand over its tin' },
    t: { tex: 't', unit: 'mm', of: 'tinThicknessMm', meaning: 'thickness of the tin' },
  },
  results: [
    { name: 'A', tex: 'A', unit: 'mm²', meaning: 'area of tin, square to the strands', expression: 'n * pi * (d - t) * t' },
  ],
  source: derived('geometry'),
  validity: ['An even coat on round strands.'],
})
