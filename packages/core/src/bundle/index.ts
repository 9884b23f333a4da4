export { bundleDiameterMm } from './bundleDiameter.ts'
export { packBundle } from './packBundle.ts'
export { tiedBundle } from './tiedBundle.ts'
