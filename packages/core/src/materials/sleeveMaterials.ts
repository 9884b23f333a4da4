import { frozen } from '../errors/inner.ts'
import type { SleeveMaterialName } from './names.ts'
import type { SleeveMaterial } from './properties.ts'

/** Heat-shrink sleeve materials. longitudinalChange is a signed share of the length; continuousC runs from the coldest to the hottest use. */
export const sleeveMaterials = /* @__PURE__ */ frozen({
  polyolefin: {
    name: 'polyolefin',
    recoveryRatio: { low: 2, nominal: 3, high: 4, provenance: { status: 'published', source: 'EN 4708-101:2017, title and scope: 2:1, 3:1 and 4:1' } },
    recoveryStartC: {
      low: 80,
      nominal: 85,
      high: 90,
      provenance: { status: 'published', source: "80-90: a tubing page; 90: a second tubing page; 'in excess of 90': a maker's specification" },
    },
    fullRecoveryC: {
      low: 110,
      nominal: 115.5,
      high: 121,
      provenance: {
        status: 'published',
        source: "110: a maker's specification and a retail page; 120: fusion-splice tube sheet; 121: published notes on heat-shrink",
      },
    },
    continuousC: {
      low: -55,
      nominal: 40,
      high: 135,
      provenance: { status: 'published', source: 'EN 4708-101:2017, title and scope; semi-rigid up to 135: IEC 60684-3-211 scope' },
    },
    longitudinalChange: {
      low: -0.1,
      nominal: -0.025,
      high: 0.05,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
  },
  'polyolefin-adhesive-lined': {
    name: 'polyolefin-adhesive-lined',
    recoveryRatio: { low: 2, nominal: 3, high: 4, provenance: { status: 'published', source: 'IEC 60684-3-248:2007, title and scope: 2:1, 3:1 and 4:1' } },
    recoveryStartC: {
      low: 70,
      nominal: 82.5,
      high: 95,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    fullRecoveryC: {
      low: 110,
      nominal: 122.5,
      high: 135,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    continuousC: { low: -55, nominal: 25, high: 105, provenance: { status: 'published', source: 'BS EN 4708-301:2018, title' } },
    longitudinalChange: {
      low: -0.15,
      nominal: -0.05,
      high: 0.05,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
  },
  PVC: {
    name: 'PVC',
    recoveryRatio: { low: 2, nominal: 2, high: 2, provenance: { status: 'published', source: 'IEC 60684-3-201 title, cited in ASTM D3150-00 2.4' } },
    recoveryStartC: { low: 80, nominal: 85, high: 90, provenance: { status: 'published', source: "a sleeve maker's page (single secondary page)" } },
    fullRecoveryC: { low: 100, nominal: 100, high: 100, provenance: { status: 'published', source: "a sleeve maker's page (single secondary page)" } },
    continuousC: { low: -20, nominal: 42.5, high: 105, provenance: { status: 'published', source: "a sleeve maker's page (single secondary page)" } },
    longitudinalChange: { low: -0.1, nominal: 0, high: 0.1, provenance: { status: 'from memory', source: 'general knowledge' } },
  },
  PVDF: {
    name: 'PVDF',
    recoveryRatio: { low: 2, nominal: 2, high: 2, provenance: { status: 'published', source: 'EN 4708-104:2017, title and scope; IEC 60684-3-228 title' } },
    recoveryStartC: {
      low: 140,
      nominal: 147.5,
      high: 155,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    fullRecoveryC: {
      low: 155,
      nominal: 165,
      high: 175,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    continuousC: { low: -55, nominal: 60, high: 175, provenance: { status: 'published', source: 'EN 4708-104:2017, title and scope' } },
    longitudinalChange: {
      low: -0.1,
      nominal: 0,
      high: 0.1,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
  },
  PTFE: {
    name: 'PTFE',
    recoveryRatio: {
      low: 2,
      nominal: 3,
      high: 4,
      provenance: { status: 'published', source: '2:1 and 4:1: trade page on fluoropolymer sleeving; published notes on heat-shrink' },
    },
    recoveryStartC: { low: 327, nominal: 327, high: 327, provenance: { status: 'published', source: 'ASTM D2902-00(2013), 4.1, type I (327 C, 621 F)' } },
    fullRecoveryC: {
      low: 340,
      nominal: 345,
      high: 350,
      provenance: { status: 'published', source: '340: trade page on fluoropolymer sleeving; 350: published notes on heat-shrink' },
    },
    continuousC: {
      low: -67,
      nominal: 91.5,
      high: 250,
      provenance: { status: 'published', source: 'upper end 250: published notes on heat-shrink; MIL-DTL-23053E 1.1 (family maximum 250) (upper end only)' },
    },
    longitudinalChange: {
      low: -0.2,
      nominal: 0,
      high: 0.2,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
  },
  FEP: {
    name: 'FEP',
    recoveryRatio: { low: 1.3, nominal: 1.45, high: 1.6, provenance: { status: 'published', source: 'trade page on fluoropolymer sleeving; a sleeving page' } },
    recoveryStartC: {
      low: 160,
      nominal: 160,
      high: 160,
      provenance: { status: 'published', source: 'shrinks 160-220: trade page on fluoropolymer sleeving (single secondary page)' },
    },
    fullRecoveryC: {
      low: 220,
      nominal: 220,
      high: 220,
      provenance: { status: 'published', source: 'shrinks 160-220: trade page on fluoropolymer sleeving (single secondary page)' },
    },
    continuousC: {
      low: -67,
      nominal: 66.5,
      high: 200,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    longitudinalChange: {
      low: -0.15,
      nominal: 0,
      high: 0.15,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
  },
  fluoroelastomer: {
    name: 'fluoroelastomer',
    recoveryRatio: {
      low: 2,
      nominal: 2,
      high: 2,
      provenance: { status: 'published', source: 'EN 4708-103:2019, title and scope; BS EN 4708-102:2018, scope' },
    },
    recoveryStartC: {
      low: 90,
      nominal: 112.5,
      high: 135,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    fullRecoveryC: {
      low: 150,
      nominal: 162.5,
      high: 175,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    continuousC: { low: -55, nominal: 72.5, high: 200, provenance: { status: 'published', source: 'EN 4708-103:2019, title and scope (fluoroelastomer)' } },
    longitudinalChange: {
      low: -0.1,
      nominal: 0,
      high: 0.1,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
  },
  silicone: {
    name: 'silicone',
    recoveryRatio: {
      low: 1.7,
      nominal: 1.85,
      high: 2,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    recoveryStartC: {
      low: 110,
      nominal: 115,
      high: 120,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    fullRecoveryC: { low: 175, nominal: 175, high: 175, provenance: { status: 'published', source: "in excess of 175: a maker's specification" } },
    continuousC: {
      low: -50,
      nominal: 75,
      high: 200,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    longitudinalChange: {
      low: -0.1,
      nominal: 0,
      high: 0.1,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
  },
  PET: {
    name: 'PET',
    recoveryRatio: {
      low: 1.3,
      nominal: 1.65,
      high: 2,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    recoveryStartC: {
      low: 70,
      nominal: 85,
      high: 100,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    fullRecoveryC: {
      low: 100,
      nominal: 145,
      high: 190,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
    continuousC: {
      low: -196,
      nominal: -30.5,
      high: 135,
      provenance: { status: 'published', source: 'long-term range, PET sleeving technical page (single secondary page)' },
    },
    longitudinalChange: {
      low: -0.25,
      nominal: -0.1,
      high: 0.05,
      provenance: { status: 'from memory', source: "class data in AMS-DTL-23053 family and makers' literature" },
    },
  },
} as const satisfies Readonly<Record<SleeveMaterialName, SleeveMaterial>>)
