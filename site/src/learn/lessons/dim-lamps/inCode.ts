import { locateDrop, resistanceOhm, smallestSizeForDrop, voltageDropV } from '@strandwise/core'

const currentA = 8
const lengthM = 15
const wire = { areaMm2: 1.5, material: 'annealed-copper', temperatureC: 20 } as const
const oneWayOhm = resistanceOhm({ ...wire, lengthM })
const jointOhm = 0.01
const supplyV = 12.4

const wireDropV = voltageDropV({ currentA, outResistanceOhm: oneWayOhm, returnResistanceOhm: oneWayOhm })
const dropV = voltageDropV({ currentA, outResistanceOhm: oneWayOhm, returnResistanceOhm: oneWayOhm, jointsOhm: [jointOhm] })
const lampV = supplyV - dropV

const outV = currentA * oneWayOhm
const points = [
  { name: 'battery +', voltageV: supplyV },
  { name: 'before the joint', voltageV: supplyV - outV / 2 },
  { name: 'after the joint', voltageV: supplyV - outV / 2 - currentA * jointOhm },
  { name: 'lamps +', voltageV: supplyV - outV - currentA * jointOhm },
  { name: 'lamps −', voltageV: outV },
  { name: 'battery −', voltageV: 0 },
]
const found = locateDrop({ currentA, points })
const jointShare = (currentA * jointOhm) / dropV

const allowedV = 0.6
const better = smallestSizeForDrop({
  series: 'IEC 60228',
  currentA,
  outLengthM: lengthM,
  returnLengthM: lengthM,
  allowedDropV: allowedV,
  material: 'annealed-copper',
  temperatureC: 20,
})
const betterMm2 = better?.areaMm2 ?? Number.NaN
const betterDropV = better?.dropV ?? Number.NaN

export { allowedV, betterDropV, betterMm2, currentA, dropV, found, jointOhm, jointShare, lampV, lengthM, oneWayOhm, supplyV, wire, wireDropV }
