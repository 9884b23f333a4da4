import fc from 'fast-check'
import { between, everyFormulaAgrees, record, spread } from '../agreement.test.ts'
import { ampacityFormulas } from './ampacityFormulas.ts'

const factors = fc.array(
  between(0.1, 1.2).map((factor) => ({ name: 'link', factor, source: { status: 'derived', source: 'drawn at random' } })),
  { maxLength: 5 },
)

everyFormulaAgrees(ampacityFormulas, {
  ambientFactor: record({ limitC: between(90, 200), ambientC: between(-40, 90), referenceAmbientC: between(20, 60) }),
  altitudeFactor: record({ altitudeM: between(0, 11000) }),
  dutyCurrentA: record({ onS: spread(0.1, 1e4), offS: between(0, 1e4), timeConstantS: spread(1, 1000), steadyA: between(0, 100) }),
  deratedCurrentA: record({ baseA: between(0, 500), links: factors }),
  adiabaticFaultCurrentA: record({
    areaMm2: spread(0.1, 300),
    timeS: spread(0.01, 5),
    material: fc.constantFrom('copper', 'aluminium', 'steel', 'lead'),
    initialC: between(-40, 90),
    finalC: between(100, 300),
  }),
  fusingCurrentPreeceA: record({ diameterMm: spread(0.05, 10), material: fc.constantFrom('copper', 'aluminium', 'iron', 'tin', 'tin-lead', 'lead') }),
  fusingTimeOnderdonkS: record({ areaMm2: spread(0.01, 100), currentA: spread(1, 1e4), initialC: between(-40, 200), meltingC: between(900, 1090) }, 'meltingC'),
  nonAdiabaticFactor: record({ areaMm2: spread(0.1, 300), timeS: between(0, 10), xMm2PerS: between(0, 2), yMm2PerS: between(0, 1) }),
})
