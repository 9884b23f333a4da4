import { frozen } from '../errors/inner.ts'
import type { MetalName } from './names.ts'
import type { Metal } from './properties.ts'

/** Metals of terminals and their coatings at 20 °C. Low and high enclose what the sources print; nominal is what the models use. */
export const terminalMetals = /* @__PURE__ */ frozen({
  'brass-cuzn30': {
    name: 'brass-cuzn30',
    resistivity20OhmM: { low: 6.08e-8, nominal: 6.16e-8, high: 6.16e-8, provenance: { status: 'published', source: 'C26000 data sheet' } },
    temperatureCoefficient20PerK: {
      low: 0.0017,
      nominal: 0.0017,
      high: 0.0017,
      provenance: { status: 'published', source: 'CRC Handbook, section 15, wire resistivities' },
    },
    densityKgPerM3: { low: 8530, nominal: 8530, high: 8530, provenance: { status: 'published', source: 'C26000 data sheet' } },
    specificHeatJPerKgK: {
      low: 375,
      nominal: 375,
      high: 390,
      provenance: { status: 'published', source: 'Callister, Materials Science and Engineering, 8th ed., table 19.1, p. 785' },
    },
    conductivityWPerMK: {
      low: 120,
      nominal: 120,
      high: 121,
      provenance: { status: 'published', source: 'Callister, Materials Science and Engineering, 8th ed., table 19.1, p. 785' },
    },
    tensileMPa: { low: 303, nominal: 599.5, high: 896, provenance: { status: 'published', source: 'materials journal article (C26000)' } },
    meltingC: { low: 916, nominal: 916, high: 916, provenance: { status: 'published', source: 'materials journal article (C26000) (solidus; liquidus 954)' } },
  },
  'brass-cuzn37': {
    name: 'brass-cuzn37',
    resistivity20OhmM: {
      low: 6.16e-8,
      nominal: 6.6e-8,
      high: 6.6e-8,
      provenance: { status: 'published', source: 'leaded 36 % Zn brasses CZ132 and CZ131, 0.066 ohm mm2/m (UK alloy sheets) (near alloy)' },
    },
    temperatureCoefficient20PerK: {
      low: 0.0017,
      nominal: 0.0017,
      high: 0.0017,
      provenance: { status: 'published', source: 'CuZn33 and CuZn40 sheets, 1.7e-3 (near alloy)' },
    },
    densityKgPerM3: {
      low: 8440,
      nominal: 8440,
      high: 8440,
      provenance: { status: 'published', source: 'lies between CuZn33 8450 and CuZn40 8410 (alloy sheets); 36 % Zn CZ132 8430 (near alloy)' },
    },
    specificHeatJPerKgK: { low: 375, nominal: 377, high: 390, provenance: { status: 'published', source: 'CZ132 sheet (near alloy)' } },
    conductivityWPerMK: {
      low: 116,
      nominal: 116,
      high: 120,
      provenance: { status: 'published', source: 'public material-property pages, C27400, 67 Btu/(h ft F)' },
    },
    tensileMPa: { low: 280, nominal: 402.5, high: 525, provenance: { status: 'published', source: 'CuZn33 sheet (near alloy)' } },
    meltingC: { low: 870, nominal: 902, high: 920, provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' } },
  },
  'phosphor-bronze-cusn5': {
    name: 'phosphor-bronze-cusn5',
    resistivity20OhmM: {
      low: 8.6e-8,
      nominal: 1.15e-7,
      high: 1.15e-7,
      provenance: { status: 'published', source: '15 % IACS (1.7241e-8/0.15 = 1.149e-7), alloy data sheet C51000' },
    },
    temperatureCoefficient20PerK: {
      low: 0.002,
      nominal: 0.002,
      high: 0.002,
      provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' },
    },
    densityKgPerM3: { low: 8860, nominal: 8860, high: 8860, provenance: { status: 'published', source: 'alloy data sheet C51000' } },
    specificHeatJPerKgK: { low: 380, nominal: 380, high: 380, provenance: { status: 'published', source: 'alloy data sheet C51000' } },
    conductivityWPerMK: { low: 69, nominal: 69, high: 84, provenance: { status: 'published', source: '40 Btu/(h ft F) = 69.2, alloy data sheet C51000' } },
    tensileMPa: { low: 325, nominal: 532.5, high: 740, provenance: { status: 'published', source: 'alloy data sheet C51000' } },
    meltingC: {
      low: 960,
      nominal: 960,
      high: 960,
      provenance: { status: 'published', source: 'public material-property pages, C51000 (solidus; liquidus 1050; rounded) (single secondary page)' },
    },
  },
  'low-carbon-steel': {
    name: 'low-carbon-steel',
    resistivity20OhmM: {
      low: 1.1e-7,
      nominal: 1.38e-7,
      high: 1.662e-7,
      provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' },
    },
    temperatureCoefficient20PerK: {
      low: 0.003,
      nominal: 0.0045,
      high: 0.0045,
      provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' },
    },
    densityKgPerM3: { low: 7850, nominal: 7850, high: 7872, provenance: { status: 'published', source: 'C10 sheet' } },
    specificHeatJPerKgK: { low: 448, nominal: 448, high: 486, provenance: { status: 'published', source: 'SAE 1010' } },
    conductivityWPerMK: {
      low: 50,
      nominal: 51.9,
      high: 58.6,
      provenance: { status: 'published', source: 'SAE 1010; Callister, Materials Science and Engineering, 8th ed., table 19.1, p. 785 (1025 steel)' },
    },
    tensileMPa: {
      low: 325,
      nominal: 362.5,
      high: 400,
      provenance: { status: 'published', source: 'SAE 1010: 325-365; 350-400, public material-property pages, 1010' },
    },
    meltingC: { low: 1480, nominal: 1480, high: 1480, provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' } },
  },
  nickel: {
    name: 'nickel',
    resistivity20OhmM: {
      low: 6.93e-8,
      nominal: 6.93e-8,
      high: 7e-8,
      provenance: {
        status: 'published',
        source:
          'CRC Handbook, 78th ed., as reprinted in Kuphaldt, Lessons in Electric Circuits, vol. I, specific-resistance and temperature-coefficient tables',
      },
    },
    temperatureCoefficient20PerK: {
      low: 0.005866,
      nominal: 0.005866,
      high: 0.0066,
      provenance: {
        status: 'published',
        source:
          'CRC Handbook, 78th ed., as reprinted in Kuphaldt, Lessons in Electric Circuits, vol. I, specific-resistance and temperature-coefficient tables',
      },
    },
    densityKgPerM3: {
      low: 8900,
      nominal: 8900,
      high: 8900,
      provenance: { status: 'published', source: "Mechanical Engineers' Handbook, vol. 4, table 1 (thermophysical properties of metals), p. 150" },
    },
    specificHeatJPerKgK: {
      low: 443,
      nominal: 444,
      high: 444,
      provenance: { status: 'published', source: "Mechanical Engineers' Handbook, vol. 4, table 1 (thermophysical properties of metals), p. 150" },
    },
    conductivityWPerMK: {
      low: 90,
      nominal: 90.7,
      high: 90.7,
      provenance: { status: 'published', source: "Mechanical Engineers' Handbook, vol. 4, table 1 (thermophysical properties of metals), p. 150" },
    },
    tensileMPa: {
      low: 400,
      nominal: 431,
      high: 462,
      provenance: {
        status: 'published',
        source:
          'annealed: 462, Callister, Fundamentals of Materials Science and Engineering, 3rd ed., appendix B, tables B.4/B.8, pp. 810-811 (Nickel 200); above 400, nickel wire sheet',
      },
    },
    meltingC: {
      low: 1453,
      nominal: 1455,
      high: 1455,
      provenance: {
        status: 'published',
        source:
          "CRC Handbook element data as carried by an element data library; Mechanical Engineers' Handbook, vol. 4, table 1 (thermophysical properties of metals), p. 150 (1728 K)",
      },
    },
  },
  silver: {
    name: 'silver',
    resistivity20OhmM: {
      low: 1.587e-8,
      nominal: 1.587e-8,
      high: 1.587e-8,
      provenance: {
        status: 'published',
        source:
          'CRC Handbook, 78th ed., as reprinted in Kuphaldt, Lessons in Electric Circuits, vol. I, specific-resistance and temperature-coefficient tables',
      },
    },
    temperatureCoefficient20PerK: {
      low: 0.003819,
      nominal: 0.003819,
      high: 0.003819,
      provenance: {
        status: 'published',
        source:
          'CRC Handbook, 78th ed., as reprinted in Kuphaldt, Lessons in Electric Circuits, vol. I, specific-resistance and temperature-coefficient tables',
      },
    },
    densityKgPerM3: { low: 10490, nominal: 10490, high: 10500, provenance: { status: 'published', source: 'open polymer and metal data set' } },
    specificHeatJPerKgK: {
      low: 235,
      nominal: 235,
      high: 235,
      provenance: { status: 'published', source: "Mechanical Engineers' Handbook, vol. 4, table 1 (thermophysical properties of metals), p. 150" },
    },
    conductivityWPerMK: {
      low: 429,
      nominal: 429,
      high: 429,
      provenance: { status: 'published', source: "Mechanical Engineers' Handbook, vol. 4, table 1 (thermophysical properties of metals), p. 150" },
    },
    tensileMPa: {
      low: 170,
      nominal: 233,
      high: 296,
      provenance: {
        status: 'published',
        source:
          'annealed 170, cold worked 50 % 296, Callister, Fundamentals of Materials Science and Engineering, 3rd ed., appendix B, tables B.4/B.8, pp. 810-811',
      },
    },
    meltingC: {
      low: 961.78,
      nominal: 961.78,
      high: 961.78,
      provenance: {
        status: 'published',
        source:
          "CRC Handbook element data as carried by an element data library (1235 K in Mechanical Engineers' Handbook, vol. 4, table 1 (thermophysical properties of metals), p. 150)",
      },
    },
  },
} as const satisfies Readonly<Partial<Record<MetalName, Metal>>>)
