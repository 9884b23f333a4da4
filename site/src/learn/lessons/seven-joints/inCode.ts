import {
  crimpInterfaceResistanceOhm,
  filletConductanceSPerM,
  knownNominal,
  lapJointResistanceOhm,
  lapNetworkResistanceOhm,
  metal,
  readingInterval,
  resistanceOhmPerM,
  solder,
  strandedAreaMm2,
  strandedDiameterMm,
  wettedStrandsResistivityOhmM,
} from '@strandwise/core'

const strands = { strandCount: 32, strandDiameterMm: 0.2 }
const diameterMm = strandedDiameterMm(strands)
const ohmPerM = resistanceOhmPerM({ areaMm2: strandedAreaMm2(strands), material: 'annealed-copper', temperatureC: 20 })
const alloy = solder('Sn60Pb40')
const solderOhmM = knownNominal(alloy, 'resistivityOhmM', alloy.resistivityOhmM)
const copperShare = (4 * strandedAreaMm2(strands)) / (Math.PI * diameterMm ** 2)
const acrossOhmM = wettedStrandsResistivityOhmM({ resistivityOhmM: metal('annealed-copper').resistivity20OhmM.nominal, solderOhmM, copperShare })
const fillet = { diameterMm, resistivityOhmM: acrossOhmM, gapMm: 0.1, bondWidthMm: diameterMm / 2, solderOhmM }
const interfaceSPerM = filletConductanceSPerM(fillet)
const conductorsOhmPerM = [ohmPerM, ohmPerM] as const
const overlapMm = 4 * diameterMm
const spanMm = 20
const wireOhm = (lengthMm: number): number => (ohmPerM * lengthMm) / 1000

const goodOhm = lapJointResistanceOhm({ overlapMm, conductorsOhmPerM, interfaceSPerM }) + wireOhm(spanMm - overlapMm)
const wetted = { lengthMm: overlapMm / 8, interfaceSPerM }
const bare = { lengthMm: (7 * overlapMm) / 8, interfaceSPerM: 0 }
const oneEndOhm = lapNetworkResistanceOhm({ conductorsOhmPerM, stretches: [wetted, bare] }) + wireOhm(spanMm - overlapMm)
const film = filletConductanceSPerM({ ...fillet, filmOhmM2: 1e-8 })
const dryOhm = lapJointResistanceOhm({ overlapMm, conductorsOhmPerM, interfaceSPerM: film }) + wireOhm(spanMm - overlapMm)
const cutOhm = (wireOhm(6) * 32) / 3 + wireOhm(spanMm - 6)
const looseOhm =
  crimpInterfaceResistanceOhm({ forceN: 1, hardnessMPa: 700, resistivity1OhmM: 1.724e-8, resistivity2OhmM: 6.4e-8, spots: 5, filmOhmM2: 1e-12 }) +
  wireOhm(spanMm)

const testA = 2
const meter = { percentOfReading: 0.5, counts: 3, resolution: 0.0001 }
const read = (ohm: number, currentA = testA) => readingInterval({ reading: ohm * currentA, ...meter })
const plainV = wireOhm(spanMm) * testA

export { bare, cutOhm, dryOhm, goodOhm, looseOhm, meter, ohmPerM, oneEndOhm, overlapMm, plainV, read, spanMm, testA, wetted, wireOhm }
