import { frozen } from '../errors/inner.ts'
import { leadFreeSolders } from './leadFreeSolders.ts'
import type { SolderName } from './names.ts'
import type { Solder } from './properties.ts'

/** Solder alloys: melting range, heat and strength at room temperature. */
export const solders = /* @__PURE__ */ frozen({
  Sn63Pb37: {
    name: 'Sn63Pb37',
    solidusC: {
      low: 183,
      nominal: 183,
      high: 183,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    liquidusC: {
      low: 183,
      nominal: 183,
      high: 183,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    densityKgPerM3: {
      low: 8400,
      nominal: 8400,
      high: 8400,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    resistivityOhmM: {
      low: 1.449e-7,
      nominal: 1.45e-7,
      high: 1.45e-7,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    conductivityWPerMK: {
      low: 50,
      nominal: 50,
      high: 50,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    tensileMPa: {
      low: 51.5,
      nominal: 51.5,
      high: 67,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    shearMPa: { low: 28, nominal: 35.5, high: 43, provenance: { status: 'from memory', source: 'general engineering knowledge' } },
    latentHeatJPerKg: {
      low: 46000,
      nominal: 46000,
      high: 46000,
      provenance: { status: 'published', source: 'public material-property pages, ISO solder alloy 131 Sn63Pb37Sb (antimony variant) (near alloy)' },
    },
    specificHeatJPerKgK: {
      low: 190,
      nominal: 190,
      high: 190,
      provenance: { status: 'published', source: 'public material-property pages, ISO solder alloy 131 Sn63Pb37Sb (antimony variant) (near alloy)' },
    },
  },
  Sn60Pb40: {
    name: 'Sn60Pb40',
    solidusC: {
      low: 183,
      nominal: 183,
      high: 183,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    liquidusC: {
      low: 188,
      nominal: 191,
      high: 191,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    densityKgPerM3: {
      low: 8500,
      nominal: 8500,
      high: 8500,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    resistivityOhmM: {
      low: 1.499e-7,
      nominal: 1.53e-7,
      high: 1.53e-7,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    conductivityWPerMK: {
      low: 49,
      nominal: 49,
      high: 49,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    tensileMPa: {
      low: 48,
      nominal: 52.5,
      high: 52.5,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    shearMPa: { low: 28, nominal: 34.5, high: 41, provenance: { status: 'from memory', source: 'general engineering knowledge' } },
    latentHeatJPerKg: {
      low: 45000,
      nominal: 45000,
      high: 45000,
      provenance: { status: 'published', source: 'public material-property pages, ISO solder alloy 104 Sn60Pb40E' },
    },
    specificHeatJPerKgK: {
      low: 150,
      nominal: 180,
      high: 180,
      provenance: { status: 'published', source: 'public material-property pages, ISO solder alloy 104 Sn60Pb40E' },
    },
  },
  Sn50Pb50: {
    name: 'Sn50Pb50',
    solidusC: {
      low: 183,
      nominal: 183,
      high: 183,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    liquidusC: {
      low: 212,
      nominal: 212,
      high: 212,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    densityKgPerM3: {
      low: 8870,
      nominal: 8870,
      high: 8870,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    resistivityOhmM: {
      low: 1.58e-7,
      nominal: 1.58e-7,
      high: 1.582e-7,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    conductivityWPerMK: {
      low: 48,
      nominal: 48,
      high: 48,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    tensileMPa: {
      low: 41.2,
      nominal: 41.2,
      high: 47,
      provenance: { status: 'published', source: "compiled table of solder alloys (2010, from makers' data sheets)" },
    },
    shearMPa: { low: 24, nominal: 30, high: 36, provenance: { status: 'from memory', source: 'general engineering knowledge' } },
    latentHeatJPerKg: {
      low: 41000,
      nominal: 41000,
      high: 41000,
      provenance: { status: 'published', source: 'public material-property pages, ISO solder alloy 111 Sn50Pb50' },
    },
    specificHeatJPerKgK: {
      low: 180,
      nominal: 180,
      high: 180,
      provenance: { status: 'published', source: 'public material-property pages, ISO solder alloy 111 Sn50Pb50' },
    },
  },
  ...leadFreeSolders,
} as const satisfies Readonly<Record<SolderName, Solder>>)
