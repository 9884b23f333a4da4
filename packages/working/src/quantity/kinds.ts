/** Kinds of quantity; the suffix of a kind is its unit. */
export type QuantityKind =
  | 'areaMm2'
  | 'lengthM'
  | 'lengthMm'
  | 'temperatureC'
  | 'temperatureDifferenceK'
  | 'resistanceOhm'
  | 'resistanceOhmPerM'
  | 'currentA'
  | 'voltageV'
  | 'powerW'
  | 'forceN'
  | 'massKg'
  | 'timeS'
  | 'ratio'
  | 'angleRad'
  | 'pressurePa'
  | 'speedMPerS'
  | 'volumeMm3'
  | 'stressMPa'
  | 'thermalResistanceKPerW'
  | 'frequencyHz'

/** Name of a kind, examples of how it may be written, and its lowest meaningful value (absent: any finite number). */
export interface KindFacts {
  readonly name: string
  readonly examples: string
  readonly lowest?: number
}

/** Absolute zero in degC: defined, not measured. */
const absoluteZeroC = -273.15

/** The kinds of quantity, in words. */
export const quantityKinds: Readonly<Record<QuantityKind, KindFacts>> = {
  areaMm2: { name: 'conductor area', examples: '2.5 mm², 4110 cmil, 250 kcmil, 18 AWG, 2/0 AWG, 7/0.3 mm, 19 x 32 AWG', lowest: 0 },
  lengthM: { name: 'length', examples: '7 m, 350 mm, 12 ft 6 in, 1 1/8 in' },
  lengthMm: { name: 'length', examples: '12 mm, 1.2 cm, 3/8 in, 1 1/8 in, 40 mil' },
  temperatureC: { name: 'temperature', examples: '85 °C, 185 °F, 358 K', lowest: absoluteZeroC },
  temperatureDifferenceK: { name: 'temperature difference', examples: '30 K, 30 °C, 54 °F' },
  resistanceOhm: { name: 'resistance', examples: '0.4 Ω, 12 mΩ, 350 µΩ, 4.7 kohm, 4R7' },
  resistanceOhmPerM: { name: 'resistance per length', examples: '7.4 mΩ/m, 7.4 ohm/km, 2.3 ohm/1000 ft', lowest: 0 },
  currentA: { name: 'current', examples: '4.2 A, 350 mA' },
  voltageV: { name: 'voltage', examples: '12 V, 230 mV' },
  powerW: { name: 'power', examples: '55 W, 1.2 kW, 80 mW' },
  forceN: { name: 'force', examples: '60 N, 13 lbf, 6 kgf' },
  massKg: { name: 'mass', examples: '2 kg, 40 g, 5 lb 3 oz', lowest: 0 },
  timeS: { name: 'time', examples: '90 s, 1 min 30 s, 20 ms, 2 h', lowest: 0 },
  ratio: { name: 'ratio', examples: '0.03, 3 %, 3/4, 2:1' },
  angleRad: { name: 'angle', examples: '45°, 0.5 rad, 12° 30′' },
  pressurePa: { name: 'pressure', examples: '101.3 kPa, 1.2 bar, 14.7 psi', lowest: 0 },
  speedMPerS: { name: 'speed', examples: '8 m/s, 30 km/h, 12 mph, 400 ft/min' },
  volumeMm3: { name: 'volume', examples: '12 mm³, 0.5 cm³, 2 ml, 0.1 in³', lowest: 0 },
  stressMPa: { name: 'stress', examples: '220 MPa, 30 N/mm², 32 ksi' },
  thermalResistanceKPerW: { name: 'thermal resistance', examples: '12 K/W, 12 °C/W, 40 mK/W', lowest: 0 },
  frequencyHz: { name: 'frequency', examples: '50 Hz, 2.4 kHz, 1200 rpm', lowest: 0 },
}
