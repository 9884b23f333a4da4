import { metals } from '@strandwise/core/materials'
import fc from 'fast-check'
import { between, everyFormulaAgrees, record, spread } from '../agreement.test.ts'
import { conductorFormulas } from './conductorFormulas.ts'

const area = spread(0.01, 300)
const metal = fc.constantFrom(...Object.keys(metals))
const warm = between(-60, 150)
const lay = between(1, 1.1)
const strands = { strandCount: fc.integer({ min: 1, max: 400 }), strandDiameterMm: spread(0.05, 5) }

everyFormulaAgrees(conductorFormulas, {
  awgToDiameterMm: record({ gauge: between(-5.5, 40.5) }),
  awgToAreaMm2: record({ gauge: between(-5.5, 40.5) }),
  areaMm2ToAwg: record({ areaMm2: spread(0.0045, 191) }),
  nearestAwg: record({ areaMm2: spread(0.0045, 191) }),
  mm2ToCircularMils: record({ areaMm2: area }),
  circularMilsToMm2: record({ circularMils: spread(1, 1e6) }),
  strandedAreaMm2: record(strands),
  strandedDiameterMm: record({ ...strands, strandCount: fc.oneof(strands.strandCount, fc.constantFrom(1, 7, 19, 37)) }),
  resistivityOhmM: record({ material: metal, temperatureC: warm }),
  resistanceOhmPerM: record({ areaMm2: area, material: metal, temperatureC: warm, layFactor: lay }, 'layFactor'),
  resistanceOhm: record({ areaMm2: area, lengthM: between(0, 100), material: metal, temperatureC: warm, layFactor: lay }, 'layFactor'),
  remainingAreaMm2: record({
    areaMm2: area,
    strandCount: fc.integer({ min: 20, max: 60 }),
    brokenStrands: fc.integer({ min: 0, max: 20 }),
    corrodedDepthMm: between(0, 0.5),
  }),
  layFactor: record({ layerDiameterMm: between(0, 10), pitchMm: spread(1, 200) }),
  massKgPerM: record({ areaMm2: area, material: metal, layFactor: lay }, 'layFactor'),
  skinDepthMm: record({ material: fc.constantFrom('annealed-copper', 'tin', 'aluminium-1350'), temperatureC: warm, frequencyHz: spread(1, 1e9) }),
  resistanceAtTemperatureOhm: record(
    {
      resistanceOhm: spread(1e-6, 1e6),
      atC: between(-40, 150),
      wantedC: between(-40, 150),
      coefficientPerK: between(0, 0.005),
      coefficientAtC: between(0, 25),
    },
    'coefficientAtC',
  ),
  tinAreaMm2: record({ ...strands, tinThicknessMm: between(0, 0.024) }),
  tinnedResistanceOhmPerM: record({ copperAreaMm2: area, tinAreaMm2: between(0, 0.1), temperatureC: warm, layFactor: lay }, 'layFactor'),
})
