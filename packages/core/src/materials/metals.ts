import { copperCladAluminium } from './copperCladAluminium.ts'
import type { MetalName } from './names.ts'
import type { Metal } from './properties.ts'

/** Conductor and terminal metals at 20 °C. Low and high enclose what the sources print; nominal is what the models use. */
export const metals = {
  'annealed-copper': {
    name: 'annealed-copper',
    resistivity20OhmM: {
      low: 1.7241e-8,
      nominal: 1.7241e-8,
      high: 1.7241e-8,
      provenance: {
        status: 'published',
        source: 'IEC 60028 / IEC 60889 columns as tabulated in Agrawal, Industrial Power Engineering and Applications Handbook, table 30.1, pp. 963-965',
      },
    },
    temperatureCoefficient20PerK: {
      low: 0.00393,
      nominal: 0.00393,
      high: 0.00393,
      provenance: {
        status: 'published',
        source:
          'IEC 60028 / IEC 60889 columns as tabulated in Agrawal, Industrial Power Engineering and Applications Handbook, table 30.1, pp. 963-965; C11000 data sheet',
      },
    },
    densityKgPerM3: {
      low: 8890,
      nominal: 8890,
      high: 8960,
      provenance: { status: 'published', source: 'ASTM B496-04, density of copper for conductor calculations' },
    },
    specificHeatJPerKgK: {
      low: 383,
      nominal: 385,
      high: 386,
      provenance: {
        status: 'published',
        source:
          "Mechanical Engineers' Handbook, vol. 4, table 1 (thermophysical properties of metals), p. 150; C11000 data sheet; CRC Handbook element data as carried by an element data library",
      },
    },
    conductivityWPerMK: {
      low: 390,
      nominal: 391,
      high: 401,
      provenance: { status: 'published', source: 'Kreith, Principles of Heat Transfer, appendix 2 table 12, used in Example 2.10; OFHC copper 391' },
    },
    tensileMPa: {
      low: 210,
      nominal: 232.5,
      high: 255,
      provenance: {
        status: 'published',
        source:
          '22-26 kgf/mm2 (216-255 MPa), IEC 60028 / IEC 60889 columns as tabulated in Agrawal, Industrial Power Engineering and Applications Handbook, table 30.1, pp. 963-965; 210-250 MPa, C11000 data sheet',
      },
    },
    meltingC: { low: 1083, nominal: 1083, high: 1084.62, provenance: { status: 'published', source: 'C11000 data sheet' } },
  },
  'hard-drawn-copper': {
    name: 'hard-drawn-copper',
    resistivity20OhmM: {
      low: 1.777e-8,
      nominal: 1.777e-8,
      high: 1.777e-8,
      provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' },
    },
    temperatureCoefficient20PerK: {
      low: 0.00381,
      nominal: 0.00381,
      high: 0.00381,
      provenance: {
        status: 'published',
        source:
          'IEC 60028 / IEC 60889 columns as tabulated in Agrawal, Industrial Power Engineering and Applications Handbook, table 30.1, pp. 963-965 (rule: alpha at a given conductivity = alpha at 100 % IACS x conductivity) (by the rule)',
      },
    },
    densityKgPerM3: {
      low: 8890,
      nominal: 8890,
      high: 8890,
      provenance: { status: 'published', source: 'ASTM B496-04, density of copper for conductor calculations' },
    },
    specificHeatJPerKgK: { low: 385, nominal: 385, high: 385, provenance: { status: 'published', source: 'C11000 data sheet (all tempers)' } },
    conductivityWPerMK: { low: 380, nominal: 380, high: 380, provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' } },
    tensileMPa: {
      low: 345,
      nominal: 372.5,
      high: 400,
      provenance: {
        status: 'published',
        source:
          'H04 345, Callister, Fundamentals of Materials Science and Engineering, 3rd ed., appendix B, tables B.4/B.8, pp. 810-811; H04 350 and H08 400, C11000 data sheet',
      },
    },
    meltingC: { low: 1083, nominal: 1083, high: 1084.62, provenance: { status: 'published', source: 'C11000 data sheet (all tempers)' } },
  },
  'tinned-copper': {
    name: 'tinned-copper',
    resistivity20OhmM: {
      low: 1.793e-8,
      nominal: 1.793e-8,
      high: 1.793e-8,
      provenance: { status: 'published', source: 'ASTM B33-04, table 2, maximum resistivity of tinned soft copper wire, divided by 8.89 g/cm3' },
    },
    temperatureCoefficient20PerK: {
      low: 0.00393,
      nominal: 0.00393,
      high: 0.00393,
      provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' },
    },
    densityKgPerM3: { low: 8890, nominal: 8890, high: 8890, provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' } },
    specificHeatJPerKgK: { low: 385, nominal: 385, high: 385, provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' } },
    conductivityWPerMK: { low: 390, nominal: 390, high: 390, provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' } },
    tensileMPa: { low: 200, nominal: 230, high: 260, provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' } },
    meltingC: { low: 1083, nominal: 1083, high: 1083, provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' } },
  },
  'aluminium-1350': {
    name: 'aluminium-1350',
    resistivity20OhmM: {
      low: 2.8264e-8,
      nominal: 2.8264e-8,
      high: 2.8264e-8,
      provenance: {
        status: 'published',
        source:
          '61 % IACS: IEC 60028 / IEC 60889 columns as tabulated in Agrawal, Industrial Power Engineering and Applications Handbook, table 30.1, pp. 963-965; 2.83e-8: 1350-H14 data sheet, Stevenson, Elements of Power System Analysis, Example 3.1',
      },
    },
    temperatureCoefficient20PerK: {
      low: 0.00396,
      nominal: 0.00403,
      high: 0.00403,
      provenance: {
        status: 'published',
        source: 'IEC 60028 / IEC 60889 columns as tabulated in Agrawal, Industrial Power Engineering and Applications Handbook, table 30.1, pp. 963-965',
      },
    },
    densityKgPerM3: { low: 2699, nominal: 2705, high: 2705, provenance: { status: 'published', source: '1350-H14 data sheet' } },
    specificHeatJPerKgK: { low: 900, nominal: 900, high: 900, provenance: { status: 'published', source: '1350-H14 data sheet' } },
    conductivityWPerMK: { low: 230, nominal: 234.2, high: 234.2, provenance: { status: 'published', source: '1350-H14 data sheet' } },
    tensileMPa: { low: 68, nominal: 129, high: 190, provenance: { status: 'published', source: 'public material-property pages, 1350, all tempers' } },
    meltingC: { low: 646, nominal: 657.2, high: 660, provenance: { status: 'published', source: '1350-H14 data sheet (liquidus; solidus 646.1)' } },
  },
  tin: {
    name: 'tin',
    resistivity20OhmM: {
      low: 1.09e-7,
      nominal: 1.15e-7,
      high: 1.15e-7,
      provenance: { status: 'published', source: '0.115 microohm m, solder-metals handbook table' },
    },
    temperatureCoefficient20PerK: {
      low: 0.0045,
      nominal: 0.0045,
      high: 0.0045,
      provenance: { status: 'published', source: 'encyclopaedia resistivity table reprint (single secondary page)' },
    },
    densityKgPerM3: {
      low: 7287,
      nominal: 7287,
      high: 7310,
      provenance: { status: 'published', source: 'CRC Handbook element data as carried by an element data library (white tin)' },
    },
    specificHeatJPerKgK: {
      low: 222,
      nominal: 227,
      high: 227,
      provenance: { status: 'published', source: "Mechanical Engineers' Handbook, vol. 4, table 1 (thermophysical properties of metals), p. 150" },
    },
    conductivityWPerMK: {
      low: 66.6,
      nominal: 66.8,
      high: 66.8,
      provenance: { status: 'published', source: 'CRC Handbook element data as carried by an element data library' },
    },
    tensileMPa: { low: 14, nominal: 19.5, high: 25, provenance: { status: 'from memory', source: 'general handbook (CRC / ASM / Smithells class)' } },
    meltingC: {
      low: 231.93,
      nominal: 231.93,
      high: 232,
      provenance: { status: 'published', source: 'CRC Handbook element data as carried by an element data library (505.078 K)' },
    },
  },
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
  'copper-clad-aluminium': copperCladAluminium,
} as const satisfies Readonly<Record<MetalName, Metal>>
