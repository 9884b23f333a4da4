import { frozen } from '../errors/inner.ts'
import { copperCladAluminium } from './copperCladAluminium.ts'
import type { MetalName } from './names.ts'
import type { Metal } from './properties.ts'
import { terminalMetals } from './terminalMetals.ts'

/** Conductor and terminal metals at 20 °C. Low and high enclose what the sources print; nominal is what the models use. */
export const metals = /* @__PURE__ */ frozen({
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
  ...terminalMetals,
  'copper-clad-aluminium': copperCladAluminium,
} as const satisfies Readonly<Record<MetalName, Metal>>)
