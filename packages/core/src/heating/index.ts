export { heatJointAdviceDefaults } from './advice/adviceLevers.ts'
export { heatJointAdvice } from './advice/heatJointAdvice.ts'
export { heatJoint } from './heatJoint.ts'
export { heatJointBand, heatJointBandDefaults } from './heatJointBand.ts'
export { heatJointDefaults } from './heatJointDefaults.ts'
export type { AlloyValues, HeatChange, HeatJointInput, HeatJointResult, HeatSide, HotAirTool, Tool } from './heatJointTypes.ts'
export { type HeatSolderSleeveResult, heatSolderSleeve } from './heatSolderSleeve.ts'
export { heatSolderSleeveBand, heatSolderSleeveBandDefaults, type SolderSleeveBandInput } from './heatSolderSleeveBand.ts'
export { type SolderSleeveTube, solderSleeveDefaults } from './solderSleeveTube.ts'
export { type TipContact, tipContactDefaults, tipContactKPerW } from './tipContact.ts'
export { heatAtEnd } from './verdict/heatAtEnd.ts'
export { heatVerdict } from './verdict/heatVerdict.ts'
export {
  type HeatCode,
  type HeatEnd,
  type HeatEndName,
  type HeatFinding,
  type HeatJudgement,
  type HeatMove,
  type HeatVerdict,
  type HeatVerdictInput,
  heatVerdictDefaults,
} from './verdict/verdictTypes.ts'
