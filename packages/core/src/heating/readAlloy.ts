import { DomainError } from '../errors/index.ts'
import { knownNominal, solder } from '../materials/index.ts'
import type { AlloyValues, HeatJointInput } from './heatJointTypes.ts'
import { requireJointTemperature, requireWithin } from './heatLimits.ts'

/** Properties of the alloy, listed or given. */
export function alloyValues(alloy: HeatJointInput['alloy'], ambientC: number): AlloyValues {
  let values: AlloyValues
  if (typeof alloy === 'string') {
    const known = solder(alloy)
    values = {
      solidusC: known.solidusC.nominal,
      liquidusC: known.liquidusC.nominal,
      densityKgPerM3: known.densityKgPerM3.nominal,
      specificHeatJPerKgK: knownNominal(known, 'specificHeatJPerKgK', known.specificHeatJPerKgK),
      latentHeatJPerKg: knownNominal(known, 'latentHeatJPerKg', known.latentHeatJPerKg),
    }
  } else if (typeof alloy === 'object' && alloy !== null) values = alloy
  else throw new DomainError('alloy', alloy, 'the name of a solder, or its values', undefined, alloy === undefined ? 'missing' : 'wrong-choice')
  requireJointTemperature('alloy.solidusC', values.solidusC)
  requireJointTemperature('alloy.liquidusC', values.liquidusC)
  requireWithin('alloy.densityKgPerM3', values.densityKgPerM3, 'alloyDensityKgPerM3')
  requireWithin('alloy.specificHeatJPerKgK', values.specificHeatJPerKgK, 'alloySpecificHeatJPerKgK')
  requireWithin('alloy.latentHeatJPerKg', values.latentHeatJPerKg, 'latentHeatJPerKg')
  if (!(values.solidusC > ambientC)) throw new DomainError('alloy.solidusC', values.solidusC, `above ambientC, ${ambientC}`, undefined, 'contradiction')
  if (values.liquidusC < values.solidusC)
    throw new DomainError('alloy.liquidusC', values.liquidusC, `solidusC, ${values.solidusC}, or above`, undefined, 'contradiction')
  return values
}
