export { airProperties } from './airProperties.ts'
export {
  airHighestC,
  airLowestC,
  airSpecificHeatJPerKgK,
  heatConstantsProvenance,
  largestRayleigh,
  leastPressurePa,
  leastRayleighMorgan,
  leastReynoldsPrandtl,
  standardGravityMPerS2,
  stefanBoltzmannWPerM2K4,
  zeroCelsiusK,
} from './constants.ts'
export { type Correlation, correlations, heatDefaults } from './correlation.ts'
export { criticalRadiusMm } from './criticalRadius.ts'
export { finConductanceWPerK, finDefaults } from './finConductance.ts'
export { churchillBernsteinNusselt, forcedConvectionNusselt } from './forcedConvectionNusselt.ts'
export { heatFlowWPerM } from './heatFlow.ts'
export { insulationResistanceMKPerW } from './insulationResistance.ts'
export { morganBands, naturalConvectionNusselt } from './naturalConvectionNusselt.ts'
export { rayleighNumber } from './rayleigh.ts'
