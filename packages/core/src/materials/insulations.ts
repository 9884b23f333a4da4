import { frozen } from '../errors/inner.ts'
import type { InsulationName } from './names.ts'
import type { Insulation } from './properties.ts'

/**
 * Wire insulations. continuousC spans the grades of the family: a plan takes the low end unless the grade is known.
 * shortExposureC spans softening (low) to the short-time limit (high). null is not known, and is never guessed.
 */
export const insulations = /* @__PURE__ */ frozen({
  PVC: {
    name: 'PVC',
    continuousC: {
      low: 70,
      nominal: 87.5,
      high: 105,
      provenance: {
        status: 'published',
        source:
          '70 ordinary, 90 and 105 heat-resistant grades: VDE code table of thermoplastic insulating and sheathing materials, VDE code table of insulation and sheath materials; general-purpose 70: Code of Practice for the Electricity (Wiring) Regulations, 2009 ed., table 15(2), p. 112',
      },
    },
    conductivityWPerMK: {
      low: 0.14,
      nominal: 0.17,
      high: 0.17,
      provenance: {
        status: 'published',
        source:
          '0.17 rigid, 0.14 with 40 % softener: ISO 10456 table as carried by a heat-transfer library; compounds 0.17: VDE code table of thermoplastic insulating and sheathing materials',
      },
    },
    shortExposureC: {
      low: 140,
      nominal: 150,
      high: 160,
      provenance: {
        status: 'published',
        source:
          'melts above 140: VDE code table of thermoplastic insulating and sheathing materials; short-circuit final temperature 160: NEN 1010 k-factor tables, the Dutch edition of IEC 60364-5-54',
      },
    },
    densityKgPerM3: {
      low: 1200,
      nominal: 1350,
      high: 1500,
      provenance: {
        status: 'published',
        source:
          'compounds 1200-1500: VDE code table of thermoplastic insulating and sheathing materials; 1390 rigid, 1200 softened: ISO 10456 table as carried by a heat-transfer library',
      },
    },
    specificHeatJPerKgK: {
      low: 900,
      nominal: 1050,
      high: 1050,
      provenance: { status: 'from memory', source: 'ISO 10456 table as carried by a heat-transfer library; 1050 for a filled cable compound is from memory' },
    },
  },
  XLPE: {
    name: 'XLPE',
    continuousC: {
      low: 90,
      nominal: 107.5,
      high: 125,
      provenance: {
        status: 'published',
        source:
          '90: VDE code table of insulation and sheath materials, Code of Practice for the Electricity (Wiring) Regulations, 2009 ed., table 15(2), p. 112; 125 with 150 peak',
      },
    },
    conductivityWPerMK: {
      low: 0.25,
      nominal: 0.286,
      high: 0.33,
      provenance: { status: 'from memory', source: 'handbook; IEC 60287 uses thermal resistivity in K m/W = 1/k' },
    },
    shortExposureC: {
      low: 250,
      nominal: 250,
      high: 250,
      provenance: {
        status: 'published',
        source: 'short-circuit final temperature 250 for EPR and XLPE: NEN 1010 k-factor tables, the Dutch edition of IEC 60364-5-54',
      },
    },
    densityKgPerM3: {
      low: 920,
      nominal: 930,
      high: 930,
      provenance: { status: 'published', source: 'VDE code table of thermoplastic insulating and sheathing materials' },
    },
    specificHeatJPerKgK: { low: 1900, nominal: 2200, high: 2300, provenance: { status: 'from memory', source: 'general handbook; near polyethylene' } },
  },
  ETFE: {
    name: 'ETFE',
    continuousC: {
      low: 150,
      nominal: 165,
      high: 180,
      provenance: {
        status: 'published',
        source: '155: VDE code table of insulation and sheath materials; 150-160: plastics property table; 180: fluoropolymer comparison table',
      },
    },
    conductivityWPerMK: {
      low: 0.24,
      nominal: 0.24,
      high: 0.24,
      provenance: { status: 'published', source: 'plastics property table; public material-property pages' },
    },
    shortExposureC: {
      low: 255,
      nominal: 267.5,
      high: 280,
      provenance: { status: 'published', source: 'melting temperature 255-280: a film page; 267: a comparison article' },
    },
    densityKgPerM3: { low: 1710, nominal: 1745, high: 1780, provenance: { status: 'published', source: 'fluoropolymer comparison table' } },
    specificHeatJPerKgK: { low: 1900, nominal: 1950, high: 2000, provenance: { status: 'published', source: 'plastics property table' } },
  },
  PTFE: {
    name: 'PTFE',
    continuousC: {
      low: 250,
      nominal: 255,
      high: 260,
      provenance: {
        status: 'published',
        source:
          '260: VDE code table of insulation and sheath materials, fluoropolymer comparison table; 250 as the top of the sleeving family: MIL-DTL-23053E 1.1',
      },
    },
    conductivityWPerMK: {
      low: 0.23,
      nominal: 0.245,
      high: 0.26,
      provenance: { status: 'published', source: 'Springer Handbook of Condensed Matter and Materials Data, table 3.3-13 (0.23-0.26, -200 to 250 C)' },
    },
    shortExposureC: {
      low: 327,
      nominal: 333.5,
      high: 340,
      provenance: { status: 'published', source: '327: ASTM D2902-00(2013), 4.1, type I; processed at about 340 (trade page on fluoropolymer sleeving)' },
    },
    densityKgPerM3: {
      low: 2140,
      nominal: 2170,
      high: 2200,
      provenance: { status: 'published', source: 'fluoropolymer comparison table; ISO 10456 table as carried by a heat-transfer library' },
    },
    specificHeatJPerKgK: {
      low: 1000,
      nominal: 1025,
      high: 1050,
      provenance: {
        status: 'published',
        source: 'ISO 10456 table as carried by a heat-transfer library; Callister, Materials Science and Engineering, 8th ed., table 19.1, p. 785',
      },
    },
  },
  FEP: {
    name: 'FEP',
    continuousC: {
      low: 200,
      nominal: 202.5,
      high: 205,
      provenance: { status: 'published', source: '205: VDE code table of insulation and sheath materials, fluoropolymer comparison table; 200' },
    },
    conductivityWPerMK: {
      low: 0.19,
      nominal: 0.22,
      high: 0.25,
      provenance: {
        status: 'published',
        source: '0.19-0.24: plastics property table; 0.19-0.25: public material-property pages; 0.20: open polymer and metal data set',
      },
    },
    shortExposureC: {
      low: 260,
      nominal: 260,
      high: 260,
      provenance: { status: 'published', source: 'melting temperature 260: open polymer and metal data set' },
    },
    densityKgPerM3: { low: 2120, nominal: 2145, high: 2170, provenance: { status: 'published', source: 'fluoropolymer comparison table' } },
    specificHeatJPerKgK: {
      low: 1004,
      nominal: 1052,
      high: 1100,
      provenance: { status: 'published', source: 'open polymer and metal data set; plastics property table' },
    },
  },
  silicone: {
    name: 'silicone',
    continuousC: {
      low: 150,
      nominal: 175,
      high: 200,
      provenance: {
        status: 'published',
        source:
          '150: Code of Practice for the Electricity (Wiring) Regulations, 2009 ed., table 15(2), p. 112 (150 C rubber) and a BSI sleeve scope (type 5, -65 to 150); 180: VDE code table of insulation and sheath materials; 200',
      },
    },
    conductivityWPerMK: {
      low: 0.22,
      nominal: 0.235,
      high: 0.25,
      provenance: { status: 'published', source: '0.224-0.249 measured on silicone sheet to ASTM E1530-19 at 26 C' },
    },
    shortExposureC: { low: 300, nominal: 325, high: 350, provenance: { status: 'from memory', source: 'engineering estimate, NOT a rating' } },
    densityKgPerM3: {
      low: 1200,
      nominal: 1200,
      high: 1200,
      provenance: { status: 'published', source: 'ISO 10456 table as carried by a heat-transfer library (sealant) (near material)' },
    },
    specificHeatJPerKgK: {
      low: 1000,
      nominal: 1000,
      high: 1000,
      provenance: { status: 'published', source: 'ISO 10456 table as carried by a heat-transfer library (sealant) (near material)' },
    },
  },
  PA: {
    name: 'PA',
    continuousC: {
      low: 80,
      nominal: 92.5,
      high: 105,
      provenance: {
        status: 'published',
        source: '105: VDE code table of insulation and sheath materials; continuous service PA6 80, PA66 100: polymer reference table',
      },
    },
    conductivityWPerMK: {
      low: 0.24,
      nominal: 0.26,
      high: 0.28,
      provenance: {
        status: 'published',
        source:
          '0.24-0.28 PA6, 0.25 PA66: plastics property table; 0.25: ISO 10456 table as carried by a heat-transfer library; 0.24: Callister, Materials Science and Engineering, 8th ed., table 19.1, p. 785',
      },
    },
    shortExposureC: {
      low: 215,
      nominal: 240,
      high: 265,
      provenance: { status: 'published', source: 'melting 215-225 (PA6), 255-265 (PA66): polymer reference table' },
    },
    densityKgPerM3: {
      low: 1020,
      nominal: 1085,
      high: 1150,
      provenance: {
        status: 'published',
        source: 'VDE code table of thermoplastic insulating and sheathing materials; ISO 10456 table as carried by a heat-transfer library',
      },
    },
    specificHeatJPerKgK: {
      low: 1600,
      nominal: 1650,
      high: 1700,
      provenance: {
        status: 'published',
        source:
          'ISO 10456 table as carried by a heat-transfer library; plastics property table; Callister, Materials Science and Engineering, 8th ed., table 19.1, p. 785',
      },
    },
  },
  PE: {
    name: 'PE',
    continuousC: {
      low: 70,
      nominal: 75,
      high: 80,
      provenance: {
        status: 'published',
        source: 'LDPE 70: VDE code table of thermoplastic insulating and sheathing materials; LDPE 80: VDE code table of insulation and sheath materials',
      },
    },
    conductivityWPerMK: {
      low: 0.3,
      nominal: 0.41,
      high: 0.52,
      provenance: {
        status: 'published',
        source:
          'LDPE 0.30, HDPE 0.40: VDE code table of thermoplastic insulating and sheathing materials; LDPE 0.33, HDPE 0.50: ISO 10456 table as carried by a heat-transfer library; HDPE 0.42-0.52: public material-property pages; HDPE 0.46-0.50: Callister, Materials Science and Engineering, 8th ed., table 19.1, p. 785',
      },
    },
    shortExposureC: {
      low: 105,
      nominal: 117.5,
      high: 130,
      provenance: { status: 'published', source: 'melting LDPE 105-110, HDPE 130: VDE code table of thermoplastic insulating and sheathing materials' },
    },
    densityKgPerM3: {
      low: 920,
      nominal: 950,
      high: 980,
      provenance: {
        status: 'published',
        source: 'VDE code table of thermoplastic insulating and sheathing materials; ISO 10456 table as carried by a heat-transfer library',
      },
    },
    specificHeatJPerKgK: {
      low: 1800,
      nominal: 2000,
      high: 2200,
      provenance: {
        status: 'published',
        source: 'ISO 10456 table as carried by a heat-transfer library; Callister, Materials Science and Engineering, 8th ed., table 19.1, p. 785 (1850)',
      },
    },
  },
  TPE: {
    name: 'TPE',
    continuousC: {
      low: 80,
      nominal: 85,
      high: 90,
      provenance: { status: 'published', source: 'polyurethane 80: VDE code table of insulation and sheath materials; TPU 90 for 20 000 h' },
    },
    conductivityWPerMK: {
      low: 0.15,
      nominal: 0.2,
      high: 0.25,
      provenance: { status: 'from memory', source: 'handbook; IEC 60287 uses thermal resistivity in K m/W = 1/k' },
    },
    shortExposureC: { low: 140, nominal: 155, high: 170, provenance: { status: 'from memory', source: 'engineering estimate, NOT a rating' } },
    densityKgPerM3: {
      low: 1150,
      nominal: 1175,
      high: 1200,
      provenance: { status: 'published', source: 'polyurethane, VDE code table of thermoplastic insulating and sheathing materials' },
    },
    specificHeatJPerKgK: null,
  },
} as const satisfies Readonly<Record<InsulationName, Insulation>>)
