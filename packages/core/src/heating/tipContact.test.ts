import { expect, test } from 'vitest'
import { tipContactDefaults, tipContactKPerW } from './tipContact.ts'

test('solder over the whole flat: t/(k A), and the spreading of a disc of that area', () => {
  const thin = tipContactKPerW({ diameterMm: 2, tipWidthMm: 2, bridgeMm: 0.1, solderWPerMK: 50 }).wettedKPerW
  const thick = tipContactKPerW({ diameterMm: 2, tipWidthMm: 2, bridgeMm: 0.3, solderWPerMK: 50 }).wettedKPerW
  expect(thick - thin).toBeCloseTo(0.2e-3 / (50 * 4e-6), 12)
  expect(thin - (thick - thin) / 2).toBeCloseTo(1 / (4 * tipContactDefaults.jointWPerMK.value * Math.sqrt(4e-6 / Math.PI)), 12)
})

test('a dry tip: flux and force help, force by the power 0.95 where metal alone carries', () => {
  const at = (forceN: number) => tipContactKPerW({ diameterMm: 1e-1, forceN, tipWidthMm: 1 })
  for (const forceN of [0.3, 1, 3]) {
    const { wettedKPerW, dryKPerW, fluxedKPerW, pressedKPerW } = at(forceN)
    expect(wettedKPerW).toBeLessThan(pressedKPerW)
    expect(pressedKPerW).toBeLessThan(dryKPerW)
    expect(fluxedKPerW).toBeLessThan(dryKPerW)
  }
  // At high pressure the air gap beside the spots hardly counts.
  expect(at(50).fluxedKPerW / at(100).fluxedKPerW).toBeCloseTo(2 ** 0.95, 1)
})

test('the assumed contacts of a tinned and a dry tip lie between the bounds', () => {
  const best = tipContactKPerW({ diameterMm: 2.4, bridgeMm: tipContactDefaults.bridgeMm.low }).wettedKPerW
  const worst = tipContactKPerW({ diameterMm: 2.4, forceN: tipContactDefaults.forceN.low }).dryKPerW
  expect(best).toBeLessThan(6 / 3)
  expect(worst).toBeGreaterThan(60)
})
