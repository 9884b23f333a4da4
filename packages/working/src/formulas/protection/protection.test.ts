import { between, everyFormulaAgrees, record, spread } from '../agreement.test.ts'
import { protectionFormulas } from './protectionFormulas.ts'

everyFormulaAgrees(protectionFormulas, {
  terminalCurrentA: record(
    { ratedCurrentA: between(0, 100), ratedAmbientC: between(0, 70), limitC: between(90, 200), ambientC: between(-40, 90), reserveFactor: spread(0.1, 1) },
    'reserveFactor',
  ),
  prospectiveCurrentA: record({ supplyV: spread(1, 60), sourceOhm: between(0, 1), loopOhm: spread(1e-4, 10) }),
})
