import fc from 'fast-check'
import { between, everyFormulaAgrees, record, spread } from '../agreement.test.ts'
import { crimpFormulas } from './crimpFormulas.ts'

const area = spread(0.05, 50)

everyFormulaAgrees(crimpFormulas, {
  compressionFraction: area.chain((looseAreaMm2) =>
    record({ looseAreaMm2: fc.constant(looseAreaMm2), crimpedAreaMm2: between(0.5, 1).map((share) => share * looseAreaMm2) }),
  ),
  barrelFill: record({ conductorAreasMm2: fc.array(area, { minLength: 1, maxLength: 4 }), barrelInsideMm: spread(0.5, 20) }),
  crimpHeightMm: record(
    {
      conductorAreaMm2: area,
      barrelMetalAreaMm2: between(0, 50),
      compressionFraction: between(0, 0.5),
      crimpWidthMm: spread(0.5, 20),
      shapeFactor: between(0.5, 1),
    },
    'shapeFactor',
  ),
  pullShareOfConductor: record({ forceN: between(0, 1000), areaMm2: area, material: fc.constantFrom('annealed-copper', 'aluminium-1350', 'low-carbon-steel') }),
})
