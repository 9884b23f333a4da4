/** Functions with an equation that no figure from outside checks, each with its reason. The count fails for one that is missing here, and for one that needs no entry any more. */
export const unchecked: Readonly<Record<string, string>> = {
  parseAwg: 'reads a name; its numbers are checked through awgToAreaMm2',
  formatAwg: 'writes a name',
  nearestAwg: 'rounds areaMm2ToAwg, which is checked',
  identifyWire: 'a search over tables by checked formulas; no source prints an identified wire',
  bundleStates: 'intermediate values of bundleTemperatureC, which is checked',
  heatJointAdvice: 'a search over runs of heatJoint, which is checked',
  heatJointBand: 'three runs of heatJoint, which is checked',
  knownNominal: 'reads a value',
  fuseForWire: 'a choice by fuseOpeningS and terminal currents, which are checked; no source prints a chosen fuse with its inputs',
  conditionHolds: 'reads a rule',
  chooseSleeve: 'an order by fitSleeve and recoveredWallMm, which are checked',
  recoveryRatio: 'a ratio of two printed sizes, whose rounding hides a change of 2 %',
  heatSolderSleeve: 'no golden cases yet',
  overlapIsLowerBound: 'tells whether a limit holds',
  temperatureOrder: 'compares two temperatures of the materials',
}
