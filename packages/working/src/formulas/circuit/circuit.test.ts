import fc from 'fast-check'
import { between, everyFormulaAgrees, record, spread } from '../agreement.test.ts'
import { circuitFormulas } from './circuitFormulas.ts'

const ohm = spread(1e-5, 1)
const load = fc.oneof(
  between(0, 10).map((currentA) => ({ kind: 'current', currentA })),
  spread(0.1, 1e4).map((resistanceOhm) => ({ kind: 'resistance', resistanceOhm })),
  between(0, 30).map((powerW) => ({ kind: 'power', powerW })),
)

everyFormulaAgrees(circuitFormulas, {
  voltageDropV: record({ currentA: between(0, 100), outResistanceOhm: ohm, returnResistanceOhm: ohm, jointsOhm: fc.array(ohm, { maxLength: 4 }) }, 'jointsOhm'),
  dropBudget: record({
    currentA: between(0, 100),
    elements: fc.array(
      ohm.map((resistanceOhm) => ({ name: 'element', resistanceOhm })),
      { minLength: 1, maxLength: 5 },
    ),
  }),
  areaForDropMm2: record({
    currentA: between(0, 100),
    outLengthM: between(0, 100),
    returnLengthM: between(0, 100),
    allowedDropV: spread(0.01, 10),
    material: fc.constantFrom('annealed-copper', 'aluminium-1350'),
    temperatureC: between(-60, 150),
  }),
  loadCurrentA: record({ supplyV: between(12, 60), seriesOhm: spread(1e-3, 1), load }),
  coilResistanceAtOhm: record(
    { resistanceOhm: spread(0.1, 1e5), atC: between(-60, 200), wantedC: between(-60, 200), material: fc.constantFrom('annealed-copper', 'aluminium-1350') },
    'material',
  ),
})
