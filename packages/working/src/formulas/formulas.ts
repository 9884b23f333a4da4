// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.
import { adiabaticFaultCurrentAFormula } from './ampacity/adiabaticFaultCurrentA.ts'
import { altitudeFactorFormula } from './ampacity/altitudeFactor.ts'
import { bundleTemperatureCFormula } from './ampacity/bundleTemperatureC.ts'
import { conductorTemperatureCFormula } from './ampacity/conductorTemperatureC.ts'
import { deratedCurrentAFormula } from './ampacity/deratedCurrentA.ts'
import { dutyCurrentAFormula } from './ampacity/dutyCurrentA.ts'
import { ambientFactorFormula } from './ampacity/fromDocstrings.ts'
import { fusingCurrentPreeceAFormula } from './ampacity/fusingCurrentPreeceA.ts'
import { fusingTimeOnderdonkSFormula } from './ampacity/fusingTimeOnderdonkS.ts'
import { nonAdiabaticFactorFormula } from './ampacity/nonAdiabaticFactor.ts'
import { steadyCurrentAFormula } from './ampacity/steadyCurrentA.ts'
import { temperatureAfterCFormula } from './ampacity/temperatureAfterC.ts'
import { thermalTimeConstantSFormula } from './ampacity/thermalTimeConstantS.ts'
import { timeToTemperatureSFormula } from './ampacity/timeToTemperatureS.ts'
import { areaForDropMm2Formula } from './circuit/areaForDropMm2.ts'
import { coilResistanceAtOhmFormula } from './circuit/coilResistanceAtOhm.ts'
import { dropBudgetFormula } from './circuit/dropBudget.ts'
import { loadCurrentAFormula } from './circuit/loadCurrentA.ts'
import { voltageDropVFormula } from './circuit/voltageDropV.ts'
import { areaMm2ToAwgFormula } from './conductor/areaMm2ToAwg.ts'
import { awgToAreaMm2Formula } from './conductor/awgToAreaMm2.ts'
import { awgToDiameterMmFormula } from './conductor/awgToDiameterMm.ts'
import { circularMilsToMm2Formula } from './conductor/circularMilsToMm2.ts'
import { layFactorFormula, resistanceAtTemperatureOhmFormula, strandedAreaMm2Formula, tinAreaMm2Formula } from './conductor/fromDocstrings.ts'
import { massKgPerMFormula } from './conductor/massKgPerM.ts'
import { mm2ToCircularMilsFormula } from './conductor/mm2ToCircularMils.ts'
import { nearestAwgFormula } from './conductor/nearestAwg.ts'
import { remainingAreaMm2Formula } from './conductor/remainingAreaMm2.ts'
import { resistanceOhmFormula } from './conductor/resistanceOhm.ts'
import { resistanceOhmPerMFormula } from './conductor/resistanceOhmPerM.ts'
import { resistivityOhmMFormula } from './conductor/resistivityOhmM.ts'
import { skinDepthMmFormula } from './conductor/skinDepthMm.ts'
import { strandedDiameterMmFormula } from './conductor/strandedDiameterMm.ts'
import { tinnedResistanceOhmPerMFormula } from './conductor/tinnedResistanceOhmPerM.ts'
import { barrelFillFormula } from './crimp/barrelFill.ts'
import { compressionFractionFormula, crimpHeightMmFormula } from './crimp/fromDocstrings.ts'
import { pullShareOfConductorFormula } from './crimp/pullShareOfConductor.ts'
import { airPropertiesFormula } from './heat/airProperties.ts'
import { churchillBernsteinNusseltFormula } from './heat/churchillBernsteinNusselt.ts'
import { finConductanceWPerKFormula } from './heat/finConductanceWPerK.ts'
import { forcedConvectionNusseltFormula } from './heat/forcedConvectionNusselt.ts'
import { criticalRadiusMmFormula, insulationResistanceMKPerWFormula } from './heat/fromDocstrings.ts'
import { heatFlowWPerMFormula } from './heat/heatFlowWPerM.ts'
import { naturalConvectionNusseltFormula } from './heat/naturalConvectionNusselt.ts'
import { rayleighNumberFormula } from './heat/rayleighNumber.ts'
import { heatJointFormula } from './heating/heatJoint.ts'
import { heatSolderSleeveFormula } from './heating/heatSolderSleeve.ts'
import { acceptanceResistanceOhmFormula } from './joint/acceptanceResistanceOhm.ts'
import { breakEvenOverlapMmFormula } from './joint/breakEvenOverlapMm.ts'
import { constrictionResistanceOhmFormula } from './joint/constrictionResistanceOhm.ts'
import { contactPeakCFormula } from './joint/contactPeakC.ts'
import { contactVoltageVFormula } from './joint/contactVoltageV.ts'
import { crimpInterfaceResistanceOhmFormula } from './joint/crimpInterfaceResistanceOhm.ts'
import { contactSpotRadiusMmFormula, filletConductanceSPerMFormula, filmResistanceOhmFormula, interfaceConductanceSPerMFormula, shearLagPerMmFormula, transferLengthMmFormula, wettedStrandsResistivityOhmMFormula, wireSpreadingOhmMFormula, wrappedJointBondWidthMmFormula } from './joint/fromDocstrings.ts'
import { jointTemperatureCFormula } from './joint/jointTemperatureC.ts'
import { lapJointResistanceOhmFormula } from './joint/lapJointResistanceOhm.ts'
import { shearLagPeakRatioFormula } from './joint/shearLagPeakRatio.ts'
import { twistedJointOverlapFormula } from './joint/twistedJointOverlap.ts'
import { wrappedJointOverlapFormula } from './joint/wrappedJointOverlap.ts'
import { continuityProofFormula } from './meter/continuityProof.ts'
import { dropTestVerdictFormula } from './meter/dropTestVerdict.ts'
import { fourWireResistanceOhmFormula } from './meter/fourWireResistanceOhm.ts'
import { readingIntervalFormula } from './meter/readingInterval.ts'
import { twoWireProofFormula } from './meter/twoWireProof.ts'
import { prospectiveCurrentAFormula, terminalCurrentAFormula } from './protection/fromDocstrings.ts'
import { fuseProtectsWireFormula } from './protection/fuseProtectsWire.ts'
import { flexLifeCyclesFormula } from './routing/flexLifeCycles.ts'
import { freeSpanFrequencyHzFormula } from './routing/freeSpanFrequencyHz.ts'
import { bendStrainFormula, wireSagMmFormula } from './routing/fromDocstrings.ts'
import { minimumBendRadiusMmFormula } from './routing/minimumBendRadiusMm.ts'
import { slackAfterCutBackFormula } from './routing/slackAfterCutBack.ts'
import { chooseSleeveFormula } from './sleeve/chooseSleeve.ts'
import { cutLengthMmFormula } from './sleeve/cutLengthMm.ts'
import { fitSleeveFormula } from './sleeve/fitSleeve.ts'
import { recoveryRatioFormula } from './sleeve/fromDocstrings.ts'
import { recoveredWallMmFormula } from './sleeve/recoveredWallMm.ts'
import { stackLayersFormula } from './sleeve/stackLayers.ts'
import { capillaryRiseMmFormula } from './solder/capillaryRiseMm.ts'
import { lapLengthForStrengthMmFormula, solderWireLengthMmFormula, strandVoidMm2Formula } from './solder/fromDocstrings.ts'
import { lapStrengthNFormula } from './solder/lapStrengthN.ts'
import { solderPartsMm3Formula } from './solder/solderPartsMm3.ts'
import { solderVolumeMm3Formula } from './solder/solderVolumeMm3.ts'
import { galvanicDifferenceVFormula } from './suitability/galvanicDifferenceV.ts'
import type { Formula } from './formula.ts'

/** Every formula that can show its working, by the name of its core function. */
export const formulas: Readonly<Record<string, Formula>> = {
  adiabaticFaultCurrentA: adiabaticFaultCurrentAFormula,
  altitudeFactor: altitudeFactorFormula,
  bundleTemperatureC: bundleTemperatureCFormula,
  conductorTemperatureC: conductorTemperatureCFormula,
  deratedCurrentA: deratedCurrentAFormula,
  dutyCurrentA: dutyCurrentAFormula,
  ambientFactor: ambientFactorFormula,
  fusingCurrentPreeceA: fusingCurrentPreeceAFormula,
  fusingTimeOnderdonkS: fusingTimeOnderdonkSFormula,
  nonAdiabaticFactor: nonAdiabaticFactorFormula,
  steadyCurrentA: steadyCurrentAFormula,
  temperatureAfterC: temperatureAfterCFormula,
  thermalTimeConstantS: thermalTimeConstantSFormula,
  timeToTemperatureS: timeToTemperatureSFormula,
  areaForDropMm2: areaForDropMm2Formula,
  coilResistanceAtOhm: coilResistanceAtOhmFormula,
  dropBudget: dropBudgetFormula,
  loadCurrentA: loadCurrentAFormula,
  voltageDropV: voltageDropVFormula,
  areaMm2ToAwg: areaMm2ToAwgFormula,
  awgToAreaMm2: awgToAreaMm2Formula,
  awgToDiameterMm: awgToDiameterMmFormula,
  circularMilsToMm2: circularMilsToMm2Formula,
  layFactor: layFactorFormula,
  resistanceAtTemperatureOhm: resistanceAtTemperatureOhmFormula,
  strandedAreaMm2: strandedAreaMm2Formula,
  tinAreaMm2: tinAreaMm2Formula,
  massKgPerM: massKgPerMFormula,
  mm2ToCircularMils: mm2ToCircularMilsFormula,
  nearestAwg: nearestAwgFormula,
  remainingAreaMm2: remainingAreaMm2Formula,
  resistanceOhm: resistanceOhmFormula,
  resistanceOhmPerM: resistanceOhmPerMFormula,
  resistivityOhmM: resistivityOhmMFormula,
  skinDepthMm: skinDepthMmFormula,
  strandedDiameterMm: strandedDiameterMmFormula,
  tinnedResistanceOhmPerM: tinnedResistanceOhmPerMFormula,
  barrelFill: barrelFillFormula,
  compressionFraction: compressionFractionFormula,
  crimpHeightMm: crimpHeightMmFormula,
  pullShareOfConductor: pullShareOfConductorFormula,
  airProperties: airPropertiesFormula,
  churchillBernsteinNusselt: churchillBernsteinNusseltFormula,
  finConductanceWPerK: finConductanceWPerKFormula,
  forcedConvectionNusselt: forcedConvectionNusseltFormula,
  criticalRadiusMm: criticalRadiusMmFormula,
  insulationResistanceMKPerW: insulationResistanceMKPerWFormula,
  heatFlowWPerM: heatFlowWPerMFormula,
  naturalConvectionNusselt: naturalConvectionNusseltFormula,
  rayleighNumber: rayleighNumberFormula,
  heatJoint: heatJointFormula,
  heatSolderSleeve: heatSolderSleeveFormula,
  acceptanceResistanceOhm: acceptanceResistanceOhmFormula,
  breakEvenOverlapMm: breakEvenOverlapMmFormula,
  constrictionResistanceOhm: constrictionResistanceOhmFormula,
  contactPeakC: contactPeakCFormula,
  contactVoltageV: contactVoltageVFormula,
  crimpInterfaceResistanceOhm: crimpInterfaceResistanceOhmFormula,
  contactSpotRadiusMm: contactSpotRadiusMmFormula,
  filletConductanceSPerM: filletConductanceSPerMFormula,
  filmResistanceOhm: filmResistanceOhmFormula,
  interfaceConductanceSPerM: interfaceConductanceSPerMFormula,
  shearLagPerMm: shearLagPerMmFormula,
  transferLengthMm: transferLengthMmFormula,
  wettedStrandsResistivityOhmM: wettedStrandsResistivityOhmMFormula,
  wireSpreadingOhmM: wireSpreadingOhmMFormula,
  wrappedJointBondWidthMm: wrappedJointBondWidthMmFormula,
  jointTemperatureC: jointTemperatureCFormula,
  lapJointResistanceOhm: lapJointResistanceOhmFormula,
  shearLagPeakRatio: shearLagPeakRatioFormula,
  twistedJointOverlap: twistedJointOverlapFormula,
  wrappedJointOverlap: wrappedJointOverlapFormula,
  continuityProof: continuityProofFormula,
  dropTestVerdict: dropTestVerdictFormula,
  fourWireResistanceOhm: fourWireResistanceOhmFormula,
  readingInterval: readingIntervalFormula,
  twoWireProof: twoWireProofFormula,
  prospectiveCurrentA: prospectiveCurrentAFormula,
  terminalCurrentA: terminalCurrentAFormula,
  fuseProtectsWire: fuseProtectsWireFormula,
  flexLifeCycles: flexLifeCyclesFormula,
  freeSpanFrequencyHz: freeSpanFrequencyHzFormula,
  bendStrain: bendStrainFormula,
  wireSagMm: wireSagMmFormula,
  minimumBendRadiusMm: minimumBendRadiusMmFormula,
  slackAfterCutBack: slackAfterCutBackFormula,
  chooseSleeve: chooseSleeveFormula,
  cutLengthMm: cutLengthMmFormula,
  fitSleeve: fitSleeveFormula,
  recoveryRatio: recoveryRatioFormula,
  recoveredWallMm: recoveredWallMmFormula,
  stackLayers: stackLayersFormula,
  capillaryRiseMm: capillaryRiseMmFormula,
  lapLengthForStrengthMm: lapLengthForStrengthMmFormula,
  solderWireLengthMm: solderWireLengthMmFormula,
  strandVoidMm2: strandVoidMm2Formula,
  lapStrengthN: lapStrengthNFormula,
  solderPartsMm3: solderPartsMm3Formula,
  solderVolumeMm3: solderVolumeMm3Formula,
  galvanicDifferenceV: galvanicDifferenceVFormula,
}
