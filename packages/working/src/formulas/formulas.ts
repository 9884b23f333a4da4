import { ampacityFormulas } from './ampacity/ampacityFormulas.ts'
import { circuitFormulas } from './circuit/circuitFormulas.ts'
import { conductorFormulas } from './conductor/conductorFormulas.ts'
import { crimpFormulas } from './crimp/crimpFormulas.ts'
import type { Formula } from './formula.ts'
import { heatFormulas } from './heat/heatFormulas.ts'
import { heatingFormulas } from './heating/heatingFormulas.ts'
import { jointFormulas } from './joint/jointFormulas.ts'
import { meterFormulas } from './meter/meterFormulas.ts'
import { protectionFormulas } from './protection/protectionFormulas.ts'
import { routingFormulas } from './routing/routingFormulas.ts'
import { sleeveFormulas } from './sleeve/sleeveFormulas.ts'
import { solderFormulas } from './solder/solderFormulas.ts'
import { suitabilityFormulas } from './suitability/suitabilityFormulas.ts'

/** Every formula that can show its working, by the name of its core function. */
export const formulas: Readonly<Record<string, Formula>> = Object.fromEntries(
  [
    ...conductorFormulas,
    ...heatFormulas,
    ...ampacityFormulas,
    ...circuitFormulas,
    ...protectionFormulas,
    ...meterFormulas,
    ...jointFormulas,
    ...heatingFormulas,
    ...solderFormulas,
    ...crimpFormulas,
    ...sleeveFormulas,
    ...routingFormulas,
    ...suitabilityFormulas,
  ].map((formula): [string, Formula] => [formula.id, formula]),
)
