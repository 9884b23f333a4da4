import {
  breakEvenOverlapMm,
  interfaceConductanceSPerM,
  knownNominal,
  lapJointResistanceOhm,
  resistanceOhmPerM,
  solder,
  strandedAreaMm2,
  strandedDiameterMm,
  transferLengthMm,
} from '@strandwise/core'

const strands = { strandCount: 32, strandDiameterMm: 0.2 }
const areaMm2 = strandedAreaMm2(strands)
const diameterMm = strandedDiameterMm(strands)

const wire = { areaMm2, material: 'annealed-copper', temperatureC: 20 } as const
const ohmPerM = resistanceOhmPerM(wire)

const alloy = solder('Sn60Pb40')
const layerOhmM = knownNominal(alloy, 'resistivityOhmM', alloy.resistivityOhmM)
const layer = { bondWidthMm: diameterMm / 2, layerMm: 0.1, layerOhmM }
const interfaceSPerM = interfaceConductanceSPerM(layer)

const pair = { conductorsOhmPerM: [ohmPerM, ohmPerM], interfaceSPerM } as const
const transferMm = transferLengthMm(pair)
const enoughMm = breakEvenOverlapMm(pair)

const overlapMm = 4 * diameterMm
const lapOhm = lapJointResistanceOhm({ ...pair, overlapMm })

export { areaMm2, diameterMm, enoughMm, interfaceSPerM, lapOhm, layer, ohmPerM, overlapMm, pair, transferMm, wire }
