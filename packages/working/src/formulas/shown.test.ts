import katex from 'katex'
import { expect, test } from 'vitest'
import { explain } from './explain.ts'
import { formulas } from './formulas.ts'

const lap = { conductorsOhmPerM: [0.0172, 0.02], interfaceSPerM: 1e5 }
const spots = { resistivity1OhmM: 1.7e-8, resistivity2OhmM: 1.1e-7, spots: 5, clusterRadiusMm: 1 }
const wire = { areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17, ambientC: -30 }
const site = {
  currentA: 10,
  ambientC: 25,
  conductors: [wire, wire],
  sleeve: { lengthMm: 40, coreDiameterMm: 2.6, outsideDiameterMm: 4.6, conductivityWPerMK: 0.2 },
}
const meter = { percentOfReading: 0.5, counts: 3, resolutionOhm: 0.1, leadOhm: 0.2, leadUncertaintyOhm: 0.1 }
const tube = { suppliedInsideMm: 6, recoveredInsideMm: 2 }
const layer = { ...tube, material: 'polyolefin', recoveredWallMm: 1, longitudinalChange: { low: -0.1, high: 0 } }
const wound = { turns: 5, pitchMm: 1.5, filletWidthMm: 0.5, layerMm: 0.05, layerOhmM: 1.5e-7, conductorsOhmPerM: [0.0172, 0.0172] }
const heating = {
  ambientC: 20,
  joint: { lapMm: 8, diameterMm: 2.4, solderMm3: 5 },
  conductors: [{ areaMm2: 0.75, stubMm: 6, insulation: 'PVC', insulationOutsideMm: 2 }],
  alloy: 'Sn63Pb37',
  toolOffS: 3,
}
const copper = { areaMm2: 1, material: 'annealed-copper', temperatureC: -20 }
const strands = { strandCount: 19, strandDiameterMm: 0.25 }
const crowd = { overlapMm: 6, diametersMm: [1, 1.4], strandVoidMm2: 0.2 }

/** One call of every function that can show its working. */
const calls: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  awgToDiameterMm: { gauge: -3 },
  awgToAreaMm2: { gauge: 18 },
  areaMm2ToAwg: { areaMm2: 1 },
  nearestAwg: { areaMm2: 1 },
  mm2ToCircularMils: { areaMm2: 1 },
  circularMilsToMm2: { circularMils: 250_000 },
  strandedAreaMm2: strands,
  strandedDiameterMm: strands,
  resistivityOhmM: copper,
  resistanceOhmPerM: copper,
  resistanceOhm: { ...copper, lengthM: 10 },
  remainingAreaMm2: { areaMm2: 1, strandCount: 19, brokenStrands: 3, corrodedDepthMm: 0.01 },
  layFactor: { layerDiameterMm: 1, pitchMm: 16 },
  massKgPerM: copper,
  skinDepthMm: { ...copper, frequencyHz: 50 },
  resistanceAtTemperatureOhm: { resistanceOhm: 100, atC: -10, wantedC: 70, coefficientPerK: 0.004 },
  tinAreaMm2: { ...strands, tinThicknessMm: 0.002 },
  tinnedResistanceOhmPerM: { copperAreaMm2: 0.9, tinAreaMm2: 0.03, temperatureC: 20 },
  airProperties: { temperatureC: -20 },
  naturalConvectionNusselt: { rayleigh: 1000, prandtl: 0.7, correlation: 'morgan' },
  forcedConvectionNusselt: { reynolds: 100, prandtl: 0.7 },
  churchillBernsteinNusselt: { reynolds: 0.01, prandtl: 0.7 },
  criticalRadiusMm: { insulationConductivityWPerMK: 0.17, filmWPerM2K: 3 },
  insulationResistanceMKPerW: { conductorDiameterMm: 1.28, outsideDiameterMm: 2.48, conductivityWPerMK: 0.17 },
  finConductanceWPerK: { conductivityWPerMK: 391, areaMm2: 1, lossWPerMK: 0.1, lengthMm: 50, end: 'held' },
  rayleighNumber: { surfaceC: 60, ambientC: -20, diameterM: 0.0024, pressurePa: 101_325 },
  heatFlowWPerM: { surfaceC: 60, ambientC: -20, diameterMm: 2.4, emissivity: 0.9, airSpeedMPerS: 1 },
  ambientFactor: { limitC: 105, ambientC: -5, referenceAmbientC: 30 },
  altitudeFactor: { altitudeM: 6096 },
  dutyCurrentA: { onS: 30, offS: 90, timeConstantS: 60, steadyA: 10 },
  deratedCurrentA: { baseA: 47, links: [{ name: 'altitude', factor: 0.91, source: { status: 'derived', source: 'invented' } }] },
  adiabaticFaultCurrentA: { areaMm2: 1, timeS: 1, material: 'copper', initialC: -10, finalC: 160 },
  fusingCurrentPreeceA: { diameterMm: 1, material: 'copper' },
  fusingTimeOnderdonkS: { areaMm2: 1.3, currentA: 169, initialC: 25 },
  nonAdiabaticFactor: { areaMm2: 1.5, timeS: 1, xMm2PerS: 0.29, yMm2PerS: 0.06 },
  conductorTemperatureC: { ...wire, currentA: 19 },
  steadyCurrentA: { ...wire, limitC: 70 },
  thermalTimeConstantS: wire,
  temperatureAfterC: { ...wire, currentA: 25, timeS: 60 },
  timeToTemperatureS: { ...wire, currentA: 25, wantedC: 10 },
  bundleTemperatureC: { ...wire, currentA: 8, loadedWires: 7, bundleOutsideMm: 7 },
  voltageDropV: { currentA: 4.2, outResistanceOhm: 0.05, returnResistanceOhm: 0.05, jointsOhm: [2e-5] },
  dropBudget: { currentA: 5, elements: [{ name: 'feed', resistanceOhm: 0.03 }] },
  areaForDropMm2: { ...copper, currentA: 4.2, outLengthM: 3, returnLengthM: 3, allowedDropV: 0.36 },
  loadCurrentA: { supplyV: 12, seriesOhm: 0.2, load: { kind: 'power', powerW: 50 } },
  coilResistanceAtOhm: { resistanceOhm: 85, atC: -23, wantedC: 85 },
  terminalCurrentA: { ratedCurrentA: 10, ratedAmbientC: 20, limitC: 105, ambientC: -6 },
  prospectiveCurrentA: { supplyV: 12, sourceOhm: 0.01, loopOhm: 0.11 },
  fuseProtectsWire: { ratedA: 10, band: [{ multiple: 1.35, shortestS: 0.75, longestS: 600 }], wire, limitC: 70, prospectiveA: 50 },
  readingInterval: { reading: -0.5, percentOfReading: 0.5, counts: 3, resolution: 0.1 },
  twoWireProof: { readingOhm: 0.3, meter, currentA: 4.2, allowedDropV: 0.05 },
  dropTestVerdict: { measuredV: -0.012, uncertaintyV: 0.001, testA: 2, workingA: 4.2, allowedDropV: 0.05 },
  fourWireResistanceOhm: { forwardV: 0.001003, reversedV: -0.000997, currentA: 1 },
  continuityProof: { toneBelowOhm: { low: 0, high: 30 }, toned: true, currentA: 4.2, allowedDropV: 0.05 },
  lapJointResistanceOhm: { ...lap, overlapMm: 10 },
  transferLengthMm: lap,
  breakEvenOverlapMm: lap,
  interfaceConductanceSPerM: { bondWidthMm: 1, layerMm: 0.1, layerOhmM: 1.5e-7, filmOhmM2: 5e-12 },
  constrictionResistanceOhm: { ...spots, spotRadiusMm: 0.01 },
  contactSpotRadiusMm: { forceN: 10, hardnessMPa: 500 },
  crimpInterfaceResistanceOhm: { ...spots, forceN: 100, hardnessMPa: 500, filmOhmM2: 1e-12 },
  contactVoltageV: { peakC: 1083, bulkC: -20 },
  contactPeakC: { contactV: 0.05, bulkC: -40 },
  shearLagPeakRatio: { lengthMm: 6, perMm: 0.5 },
  shearLagPerMm: {
    shearModulusMPa: 1e4,
    bondWidthMm: 1,
    layerMm: 0.1,
    conductors: [
      { modulusMPa: 110_000, areaMm2: 1 },
      { modulusMPa: 110_000, areaMm2: 1 },
    ],
  },
  filmResistanceOhm: { filmOhmM2: 1e-11, areaMm2: 0.02 },
  wrappedJointBondWidthMm: { coreDiameterMm: 1.13, pitchMm: 1.5, filletWidthMm: 0.5 },
  wrappedJointOverlap: { ...wound, coreDiameterMm: 1.13, wrapDiameterMm: 1.13 },
  twistedJointOverlap: { ...wound, pitchMm: 5, diametersMm: [1.13, 0.8] },
  jointTemperatureC: { ...site, jointResistanceOhm: 0.005 },
  acceptanceResistanceOhm: { ...site, jointLengthMm: 10, limitC: 90, allowedDropV: 0.05, plainWireMultiple: 1 },
  lapLengthForStrengthMm: { tensileMPa: 220, areaMm2: 1, shearMPa: 30, safetyFactor: 1, bondWidthMm: 1 },
  lapStrengthN: { alloy: 'Sn63Pb37', overlapMm: 6, bondWidthMm: 1, shearMPa: 30 },
  solderVolumeMm3: crowd,
  solderPartsMm3: { ...crowd, coatingMm: 0.05 },
  solderWireLengthMm: { volumeMm3: 5, wireDiameterMm: 1, fluxVolumeFraction: 0.1 },
  strandVoidMm2: { areaMm2: 1, diameterMm: 1.3 },
  capillaryRiseMm: { gapMm: 0.1, densityKgPerM3: 8400 },
  heatJoint: { ...heating, tool: { kind: 'iron', setC: 360, tipResistanceKPerW: 1.5, contactResistanceKPerW: 3 } },
  heatSolderSleeve: { ...heating, tool: { kind: 'hot-air', airC: 400, airSpeedMPerS: 10 }, tube: { insideMm: 4, wallMm: 0.4, lengthMm: 30, recoveryC: 120 } },
  compressionFraction: { looseAreaMm2: 1, crimpedAreaMm2: 0.82 },
  barrelFill: { conductorAreasMm2: [1, 0.75], barrelInsideMm: 1.9 },
  crimpHeightMm: { conductorAreaMm2: 1, barrelMetalAreaMm2: 1.6, compressionFraction: 0.18, crimpWidthMm: 1.8 },
  pullShareOfConductor: { forceN: 89, areaMm2: 0.82, material: 'annealed-copper' },
  recoveryRatio: tube,
  fitSleeve: { ...tube, largestMm: 5, smallestMm: 2.5 },
  recoveredWallMm: { recoveredInsideMm: 2, recoveredWallMm: 1, ontoMm: 4 },
  cutLengthMm: { jointMm: 12, overlapEachSideMm: 12, longitudinalChange: { low: -0.1, high: 0.05 } },
  stackLayers: { coreMm: 4, jointMm: 12, layers: [{ ...layer, overlapEachSideMm: 12 }] },
  chooseSleeve: { largestMm: 4, smallestMm: 2.5, stock: [layer] },
  bendStrain: { strandDiameterMm: 0.3, bendRadiusMm: 15 },
  flexLifeCycles: { strainAmplitude: 0.01 },
  freeSpanFrequencyHz: { spanMm: 300, stiffnessNMm2: 2000, massKgPerM: 0.012, ends: 'fixed' },
  minimumBendRadiusMm: { outsideDiameterMm: 2.9, rule: 'supported' },
  slackAfterCutBack: { slackMm: 40, cutBackMm: 70, jointConsumesMm: 10 },
  wireSagMm: { spanMm: 300, massKgPerM: 0.012, pullN: 0.5 },
  galvanicDifferenceV: { metal1: 'annealed-copper', metal2: 'tinned-copper' },
}

test('each formula has its call here', () => {
  expect(Object.keys(calls).sort()).toEqual(Object.keys(formulas).sort())
})

test.each(Object.keys(calls))('%s: finite values, whole sentences, TeX that a typesetter takes', (id) => {
  const inputs = calls[id] ?? {}
  const shown = explain(id, Object.freeze(inputs))
  expect(Number.isFinite(shown.value)).toBe(true)
  for (const { name, value, meaning } of shown.symbols) expect(Number.isFinite(value) && meaning.length > 2, name).toBe(true)
  for (const { text, value } of shown.steps) expect(Number.isFinite(value) && text.length > 2, text).toBe(true)
  for (const tex of [shown.formulaTex, shown.substitutedTex, ...shown.symbols.map((one) => one.tex), ...shown.steps.map((one) => one.tex)]) {
    expect(() => katex.renderToString(tex, { throwOnError: true, strict: 'error', output: 'mathml' }), tex).not.toThrow()
  }
  for (const { name } of shown.symbols) expect(shown.plain).toContain(`${name} = `)
  expect(shown.plain).not.toMatch(/undefined|NaN|Infinity|\\/)
})
