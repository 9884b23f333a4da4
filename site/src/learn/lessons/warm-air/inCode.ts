import { ambientFactor, steadyCurrentBandA } from '@strandwise/core'

const limitC = 70
const workshopC = 30
const kilnC = 60
const wire = { areaMm2: 1, insulationThicknessMm: 0.6, insulationConductivityWPerMK: 0.17 } as const

const factor = ambientFactor({ limitC, ambientC: kilnC, referenceAmbientC: workshopC })

const low = (ambientC: number, limit: number): number => steadyCurrentBandA({ ...wire, ambientC, limitC: limit })?.low ?? 0
const atWorkshopA = low(workshopC, limitC)
const atKilnA = low(kilnC, limitC)
const balance = atKilnA / atWorkshopA

const betterLimitC = 90
const betterAtKilnA = low(kilnC, betterLimitC)

export { atKilnA, atWorkshopA, balance, betterAtKilnA, betterLimitC, factor, kilnC, limitC, low, wire, workshopC }
