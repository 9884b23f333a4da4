import fc from 'fast-check'
import { between, everyFormulaAgrees, record, spread } from '../agreement.test.ts'
import { meterFormulas } from './meterFormulas.ts'

const accuracy = { percentOfReading: between(0, 3), counts: fc.integer({ min: 0, max: 10 }), leadOhm: between(0, 1), leadUncertaintyOhm: between(0, 0.5) }
const meter = record({ ...accuracy, resolutionOhm: spread(1e-5, 1) }, 'leadOhm', 'leadUncertaintyOhm')

everyFormulaAgrees(meterFormulas, {
  readingInterval: record({ ...accuracy, reading: between(-10, 1000), resolution: spread(1e-5, 1) }, 'leadOhm', 'leadUncertaintyOhm'),
  twoWireProof: record({ readingOhm: between(-1, 100), meter, currentA: between(0, 50), allowedDropV: between(0, 1) }),
  dropTestVerdict: record({
    measuredV: between(-1, 1),
    uncertaintyV: between(0, 0.1),
    testA: spread(0.01, 50),
    workingA: between(0, 50),
    allowedDropV: between(0, 1),
  }),
  fourWireResistanceOhm: record({ forwardV: between(-1, 1), reversedV: between(-1, 1), currentA: spread(0.01, 50) }, 'reversedV'),
  continuityProof: record({
    toneBelowOhm: fc.tuple(between(0, 50), between(0, 50)).map(([low, more]) => ({ low, high: low + more })),
    toned: fc.boolean(),
    currentA: between(0, 50),
    allowedDropV: between(0, 1),
  }),
})
