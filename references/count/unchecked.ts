/** Functions with an equation that no independent figure checks, each with its reason. The count fails for one missing here, and for one no longer needed. */
export const unchecked: Readonly<Record<string, string>> = {
  formatAwg: 'writes a name',
  heatAtEnd: 'two runs of heatJoint, which is checked',
  wireSizes: 'reads tables',
  knownNominal: 'reads a value',
  conditionHolds: 'reads a rule',
  temperatureOrder: 'compares two temperatures of the materials',
}
