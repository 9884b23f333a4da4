import { awgToAreaMm2, circularMilsToMm2 } from '@strandwise/core/conductor'
import { describe, expect, test } from 'vitest'
import type { QuantityKind } from './kinds.ts'
import { parseQuantity } from './parseQuantity.ts'

const pi = Math.PI
/** Quantities as people write them, with their values worked out by hand from the definitions of the units. */
const written: Readonly<Record<QuantityKind, Readonly<Record<string, number>>>> = {
  areaMm2: {
    '2.5 mm²': 2.5,
    '2,5mm2': 2.5,
    '2.5 mm^2': 2.5,
    '2.5 sq. mm': 2.5,
    '2.5 ㎟': 2.5,
    '10 MM2': 10,
    '3/4 mm²': 0.75,
    '4110 cmil': circularMilsToMm2(4110),
    '4110 circular mils': circularMilsToMm2(4110),
    '4110 CM': circularMilsToMm2(4110),
    '250 kcmil': circularMilsToMm2(250000),
    '250MCM': circularMilsToMm2(250000),
    '0.001 sq in': 0.64516,
    '0.001 in²': 0.64516,
    '18 AWG': awgToAreaMm2(18),
    'AWG 18': awgToAreaMm2(18),
    '#18 awg': awgToAreaMm2(18),
    '2/0 AWG': awgToAreaMm2(-1),
    '2/0': awgToAreaMm2(-1),
    '0000': awgToAreaMm2(-3),
    '0000 AWG': awgToAreaMm2(-3),
    'AWG 4/0': awgToAreaMm2(-3),
    '2.5 mm² (4934 cmil)': 2.5,
  },
  lengthM: {
    '7 m': 7,
    '350 mm': 0.35,
    '12 ft 6 in': 3.81,
    '12\u2032 6\u2033': 3.81,
    '12\'-6"': 3.81,
    '12 FT 6 IN': 3.81,
    '12 ft, 6 in': 3.81,
    '-12 ft 6 in': -3.81,
    '5 ft 6 1/2 in': 66.5 * 0.0254,
    '1 m 20 cm': 1.2,
    '100 yd': 91.44,
    '12\u2009500 mm': 12.5,
    '12\u202f500\u00a0mm': 12.5,
    '1.5 × 10⁻³ m': 0.0015,
    '10³ mm': 1,
    '10⁺³ mm': 1,
    '+5 ft 6 in': 1.6764,
    '1e-3 m': 0.001,
  },
  lengthMm: {
    '12 mm': 12,
    '1.2 cm': 12,
    '1 1/8 in': 28.575,
    '1-1/8 in.': 28.575,
    '1⅛ in': 28.575,
    '1  1/8 in': 28.575,
    '9/8 in': 28.575,
    ',125 in': 3.175,
    '5. mm': 5,
    '5.mm': 5,
    '⅛"': 3.175,
    '1\u2044\u0038 in': 3.175,
    '40 mil': 1.016,
    '25 \u00b5m': 0.025,
    '25 \u03bcm': 0.025,
    '25um': 0.025,
    '25 ㎛': 0.025,
    '\u22123 mm': -3,
    '0,125 in': 3.175,
    '1234,567 mm': 1234.567,
  },
  temperatureC: {
    '85 °C': 85,
    '85C': 85,
    '85 ℃': 85,
    '85º C': 85,
    '185 °F': 85,
    '-40 °F': -40,
    '300 K': 26.85,
    '0 K': -273.15,
    '20 deg C': 20,
    '671.67 °R': 100,
    '300000 mK': 26.85,
  },
  temperatureDifferenceK: { '30 K': 30, '30 °C': 30, '54 °F': 30, '-5 K': -5, '30 Δ°C': 30, '20 mK': 0.02 },
  resistanceOhm: {
    '0.4 \u2126': 0.4,
    '0.4 \u03a9': 0.4,
    '12 mΩ': 0.012,
    '350 \u00b5Ω': 350e-6,
    '350 \u03bcΩ': 350e-6,
    '350 uohm': 350e-6,
    '5 milliohms': 0.005,
    '5 micro-ohm': 5e-6,
    '4.7 kohm': 4700,
    '10 Mohm': 1e7,
    '10 MOHM': 1e7,
    '4R7': 4.7,
    '4k7': 4700,
    '4M7': 4.7e6,
    '47R5': 47.5,
    '4R75': 4.75,
    '4.7 ㏀': 4700,
    '4k7 (4.74 kohm)': 4700,
  },
  resistanceOhmPerM: {
    '7.4 mΩ/m': 0.0074,
    '7.4 ohm/km': 0.0074,
    '7.4 OHM/KM': 0.0074,
    '7.4 Ω·km⁻¹': 0.0074,
    '7.4 ohms per kilometre': 0.0074,
    '2.3 ohm/1000 ft': 2.3 / 304.8,
    '2.3 ohms per 1,000 ft': 2.3 / 304.8,
    '2.3 Ω/kft': 2.3 / 304.8,
    '1 mΩ/ft': 0.001 / 0.3048,
  },
  currentA: {
    '4.2 A': 4.2,
    '350 mA': 0.35,
    '350 ma': 0.35,
    '4.2 amps': 4.2,
    '4.2 A DC': 4.2,
    '4.20 ± 0.05 A': 4.2,
    '(4.20 ± 0.05) A': 4.2,
    '(4.20 ± 0.05 A)': 4.2,
    '40 ±5 A': 40,
    '4.2 A +/- 2 %': 4.2,
  },
  voltageV: { '12 V': 12, '12v': 12, '12 V DC': 12, '230 mV': 0.23, '-0.4 V': -0.4 },
  powerW: { '55 W': 55, '1.2 kW': 1200, '80 mW': 0.08, '1 mechanical hp': 745.69987158227 },
  forceN: { '60 N': 60, '13 lbf': 13 * 4.4482216152605, '13 lb': 13 * 4.4482216152605, '6 kgf': 58.8399 },
  massKg: { '2 kg': 2, '40 g': 0.04, '5 lb 3 oz': (83 / 16) * 0.45359237 },
  timeS: {
    '90 s': 90,
    '1 min 30 s': 90,
    '20 ms': 0.02,
    '2 h': 7200,
    '1 h 30 min': 5400,
    '1:02:03': 3723,
    '1:2:3': 3723,
    '10:00:00': 36000,
    '0:00:01.25': 1.25,
    '0:00:00 (0:00:00)': 0,
  },
  ratio: {
    '0.03': 0.03,
    '3 %': 0.03,
    '3%': 0.03,
    '3 per cent': 0.03,
    '3/4': 0.75,
    '2:1': 2,
    '1:50': 0.02,
    '16:10': 1.6,
    '2.25:1': 2.25,
    '1:1.25': 0.8,
    '0,5': 0.5,
    '-3 %': -0.03,
    '20 ppm': 2e-5,
  },
  angleRad: { '45°': pi / 4, '0.5 rad': 0.5, '12° 30′': (12.5 * pi) / 180, '100 gon': pi / 2 },
  pressurePa: { '101.3 kPa': 101300, '1.2 bar': 1.2e5, '1 psi': 6894.757293168361, '1 kgf/cm²': 98066.5, '760 torr': 101325 },
  speedMPerS: { '8 m/s': 8, '8 m s⁻¹': 8, '8 m s-1': 8, '8 M/S': 8, '36 km/h': 10, '36 KM/H': 10, '10 mph': 4.4704, '400 ft/min': 2.032, '18 knots': 9.26 },
  volumeMm3: { '12 mm³': 12, '0.5 cm³': 500, '2 ml': 2000, '0.1 cu in': 1638.7064, '1 UK gal': 4546090 },
  stressMPa: { '220 MPa': 220, '30 N/mm²': 30, '30 N mm⁻²': 30, '220 mpa': 220, '1 ksi': 6.894757293168361, '1 kgf/mm²': 9.80665 },
  thermalResistanceKPerW: { '12 K/W': 12, '12 °C/W': 12, '40 mK/W': 0.04, '12 K·W⁻¹': 12 },
  frequencyHz: { '50 Hz': 50, '2.4 khz': 2400, '1200 rpm': 20, '5 s⁻¹': 5, '5 1/S': 5 },
}

describe.each(Object.entries(written))('%s', (kind, texts) => {
  test.each(Object.entries(texts))('"%s" is %s', (text, value) => {
    const got = parseQuantity(text, kind as QuantityKind)
    expect(Math.abs(got - value)).toBeLessThanOrEqual(1e-13 * Math.max(1, Math.abs(value)))
  })
})

test('a bare number is a ratio and nothing else', () => {
  for (const kind of Object.keys(written) as QuantityKind[]) {
    if (kind === 'ratio') expect(parseQuantity('0.25', kind)).toBe(0.25)
    else expect(() => parseQuantity('0.25', kind), kind).toThrow('a number without a unit')
  }
})

test('decimal powers divide exactly: 4.2 mA and 25.4 mm come out as they would be typed', () => {
  expect(parseQuantity('4.2 mA', 'currentA')).toBe(0.0042)
  expect(parseQuantity('25.4 mm', 'lengthM')).toBe(0.0254)
  expect(parseQuantity('1 in', 'lengthMm')).toBe(25.4)
  expect(parseQuantity('1.001 km', 'lengthM')).toBe(1001)
  expect(parseQuantity('0.03 mA', 'currentA')).toBe(0.00003)
  expect(parseQuantity('0.017 kN/mm²', 'pressurePa')).toBe(1.7e7)
  expect(parseQuantity('1.019 µm³', 'volumeMm3')).toBe(1.019e-9)
  expect(Object.is(parseQuantity('-0 V', 'voltageV'), 0)).toBe(true)
})
