import {
  breakEvenOverlapMm,
  filletConductanceSPerM,
  knownNominal,
  lapJointResistanceOhm,
  lapLengthForStrengthMm,
  metal,
  resistanceOhmPerM,
  solder,
  strandedAreaMm2,
  strandedDiameterMm,
  transferLengthMm,
  wettedStrandsResistivityOhmM,
} from '@strandwise/core'

const strands = { strandCount: 32, strandDiameterMm: 0.2 }
const areaMm2 = strandedAreaMm2(strands)
const diameterMm = strandedDiameterMm(strands)
const wire = { areaMm2, material: 'annealed-copper', temperatureC: 20 } as const
const ohmPerM = resistanceOhmPerM(wire)

const copper = metal('annealed-copper')
const alloy = solder('Sn60Pb40')
const solderOhmM = knownNominal(alloy, 'resistivityOhmM', alloy.resistivityOhmM)
const copperShare = (4 * areaMm2) / (Math.PI * diameterMm ** 2)
const acrossOhmM = wettedStrandsResistivityOhmM({ resistivityOhmM: copper.resistivity20OhmM.nominal, solderOhmM, copperShare })
const fillet = { diameterMm, resistivityOhmM: acrossOhmM, gapMm: 0.1, bondWidthMm: diameterMm / 2, solderOhmM }
const interfaceSPerM = filletConductanceSPerM(fillet)
const pair = { conductorsOhmPerM: [ohmPerM, ohmPerM], interfaceSPerM } as const

const transferMm = transferLengthMm(pair)
const enoughMm = breakEvenOverlapMm(pair) ?? Number.NaN
const overlapMm = 4 * diameterMm
const lapOhm = lapJointResistanceOhm({ ...pair, overlapMm })
const plainOhm = (ohmPerM * overlapMm) / 1000

const strengthMm = lapLengthForStrengthMm({
  tensileMPa: knownNominal(copper, 'tensileMPa', copper.tensileMPa),
  areaMm2,
  shearMPa: knownNominal(alloy, 'shearMPa', alloy.shearMPa),
  safetyFactor: 1,
  bondWidthMm: fillet.bondWidthMm,
})

export { areaMm2, diameterMm, enoughMm, fillet, lapOhm, ohmPerM, overlapMm, pair, plainOhm, strengthMm, transferMm }
