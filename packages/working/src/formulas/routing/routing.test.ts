import fc from 'fast-check'
import { between, everyFormulaAgrees, record, spread } from '../agreement.test.ts'
import { routingFormulas } from './routingFormulas.ts'

everyFormulaAgrees(routingFormulas, {
  bendStrain: record({ strandDiameterMm: spread(0.05, 5), bendRadiusMm: between(0, 200) }),
  flexLifeCycles: record(
    { strainAmplitude: spread(1e-3, 0.2), ductilityCoefficient: between(0.1, 0.5), ductilityExponent: between(-0.8, -0.4), scatterFactor: between(1, 10) },
    'ductilityCoefficient',
    'ductilityExponent',
    'scatterFactor',
  ),
  freeSpanFrequencyHz: record({
    spanMm: spread(10, 2000),
    stiffnessNMm2: spread(1, 1e6),
    massKgPerM: spread(1e-3, 1),
    ends: fc.constantFrom('pinned', 'fixed'),
  }),
  minimumBendRadiusMm: record(
    { outsideDiameterMm: spread(0.5, 50), rule: fc.constantFrom('unsupported', 'supported', 'coaxial'), multiple: between(1, 20) },
    'multiple',
  ),
  slackAfterCutBack: record(
    {
      slackMm: between(0, 300),
      cutBackMm: between(0, 200),
      jointConsumesMm: between(0, 30),
      jointsIfInserted: fc.integer({ min: 1, max: 3 }),
      serviceSlackMm: between(0, 50),
    },
    'jointsIfInserted',
    'serviceSlackMm',
  ),
  wireSagMm: record({ spanMm: spread(10, 2000), massKgPerM: spread(1e-3, 1), pullN: spread(20, 200) }),
})
