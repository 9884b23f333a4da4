import {
  breakEvenOverlapMm,
  interfaceConductanceSPerM,
  knownNominal,
  lapJointResistanceOhm,
  lapLengthForStrengthMm,
  metal,
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
const enoughMm = breakEvenOverlapMm(pair) ?? Number.NaN
const overlapMm = 4 * diameterMm
const lapOhm = lapJointResistanceOhm({ ...pair, overlapMm })
const plainOhm = (ohmPerM * overlapMm) / 1000

const copper = metal('annealed-copper')
const strengthMm = lapLengthForStrengthMm({
  tensileMPa: knownNominal(copper, 'tensileMPa', copper.tensileMPa),
  areaMm2,
  shearMPa: knownNominal(alloy, 'shearMPa', alloy.shearMPa),
  safetyFactor: 1,
  bondWidthMm: layer.bondWidthMm,
})

export { areaMm2, diameterMm, enoughMm, lapOhm, layer, ohmPerM, overlapMm, pair, plainOhm, strengthMm, transferMm }
