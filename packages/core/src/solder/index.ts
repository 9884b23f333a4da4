export { heatJoint } from './heatJoint.ts'
export { heatJointDefaults } from './heatJointDefaults.ts'
export type { AlloyValues, HeatChange, HeatJointInput, HeatJointResult, HeatSide, Tool } from './heatJointTypes.ts'
