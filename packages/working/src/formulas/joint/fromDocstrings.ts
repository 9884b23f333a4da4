// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.
import { contactSpotRadiusMm, filmResistanceOhm, interfaceConductanceSPerM, lapDefaults, shearLagPerMm, transferLengthMm, wrappedJointBondWidthMm } from '@strandwise/core/joint'
import { closed } from '../formula.ts'
import { derived, fromMemory } from '../sources.ts'

/** The working of contactSpotRadiusMm. */
export const contactSpotRadiusMmFormula = closed<Parameters<typeof contactSpotRadiusMm>[0]>({
  id: 'contactSpotRadiusMm',
  call: contactSpotRadiusMm,
  symbols: {
    F: { tex: 'F', unit: 'N', of: 'forceN', meaning: 'force that presses the faces together' },
    H: { tex: 'H', unit: 'MPa', of: 'hardnessMPa', meaning: 'indentation hardness of the softer metal' },
  },
  results: [
    { name: 'a', tex: 'a', unit: 'mm', meaning: 'radius of the spot', expression: 'sqrt(F/(pi * H))' },
  ],
  source: fromMemory('Holm, Electric Contacts, 1967: plastic contact'),
  validity: ['The metal yields until its hardness bears the force; a newton over a megapascal is a square millimetre.'],
})

/** The working of filmResistanceOhm. */
export const filmResistanceOhmFormula = closed<Parameters<typeof filmResistanceOhm>[0]>({
  id: 'filmResistanceOhm',
  call: filmResistanceOhm,
  symbols: {
    sigma: { tex: '\\sigma', unit: 'Ω m²', of: 'filmOhmM2', meaning: 'resistance of a unit of area of the film' },
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area that touches, far below the area that seems to' },
  },
  results: [
    { name: 'R_f', tex: 'R_{f}', unit: 'Ω', meaning: 'resistance of the film, in series with the constriction', expression: '10^6 * sigma/A' },
  ],
  source: fromMemory('Holm, Electric Contacts, 1967'),
  validity: ['An even film over the area that touches.'],
})

/** The working of interfaceConductanceSPerM. */
export const interfaceConductanceSPerMFormula = closed<Parameters<typeof interfaceConductanceSPerM>[0]>({
  id: 'interfaceConductanceSPerM',
  call: interfaceConductanceSPerM,
  symbols: {
    w: { tex: 'w', unit: 'mm', of: 'bondWidthMm', meaning: 'width of the bond across the overlap: good fillet, not the wire\'s diameter' },
    s: { tex: 's', unit: 'mm', of: 'layerMm', meaning: 'thickness of the layer between the conductors' },
    rho_s: { tex: '\\rho_{s}', unit: 'Ω m', of: 'layerOhmM', meaning: 'resistivity of the layer' },
    rho_c: { tex: '\\rho_{c}', unit: 'Ω m²', of: (i) => i.filmOhmM2 ?? lapDefaults.filmOhmM2, meaning: 'specific resistance of the film' },
  },
  results: [
    { name: 'g', tex: 'g', unit: 'S/m', meaning: 'conductance per metre of overlap', expression: '(w/1000)/(rho_s * (s/1000) + rho_c)' },
  ],
  source: derived('layer and film in series over the bond\'s width'),
  validity: ['Both are crossed one after the other. A film alone (layerMm 0) is a dry contact whose specific resistance is known.'],
})

/** The working of shearLagPerMm. */
export const shearLagPerMmFormula = closed<Parameters<typeof shearLagPerMm>[0]>({
  id: 'shearLagPerMm',
  call: shearLagPerMm,
  symbols: {
    G: { tex: 'G', unit: 'MPa', of: 'shearModulusMPa', meaning: 'shear modulus of the solder' },
    w: { tex: 'w', unit: 'mm', of: 'bondWidthMm', meaning: 'width of the bond across the lap' },
    s: { tex: 's', unit: 'mm', of: 'layerMm', meaning: 'thickness of the solder between the conductors' },
    E1: { tex: 'E_{1}', unit: 'MPa', of: 'conductors.0.modulusMPa', meaning: 'Young\'s modulus of the first conductor' },
    A1: { tex: 'A_{1}', unit: 'mm²', of: 'conductors.0.areaMm2', meaning: 'its area' },
    E2: { tex: 'E_{2}', unit: 'MPa', of: 'conductors.1.modulusMPa', meaning: 'Young\'s modulus of the second conductor' },
    A2: { tex: 'A_{2}', unit: 'mm²', of: 'conductors.1.areaMm2', meaning: 'its area' },
  },
  results: [
    { name: 'm', tex: 'm', unit: '1/mm', meaning: 'shear-lag coefficient', expression: 'sqrt(G * w/s * (1/(E1 * A1) + 1/(E2 * A2)))' },
  ],
  source: fromMemory('Volkersen 1938'),
  validity: ['Elastic: the solder does not yield or creep.'],
})

/** The working of transferLengthMm. */
export const transferLengthMmFormula = closed<Parameters<typeof transferLengthMm>[0]>({
  id: 'transferLengthMm',
  call: transferLengthMm,
  symbols: {
    r1: { tex: 'r_{1}', unit: 'Ω/m', of: 'conductorsOhmPerM.0', meaning: 'first conductor' },
    r2: { tex: 'r_{2}', unit: 'Ω/m', of: 'conductorsOhmPerM.1', meaning: 'second conductor' },
    g: { tex: 'g', unit: 'S/m', of: 'interfaceSPerM', meaning: 'conductance of the interface per metre of overlap' },
  },
  results: [
    { name: 'L_T', tex: 'L_{T}', unit: 'mm', meaning: 'transfer length', expression: '1000 * 1/sqrt(g * (r1 + r2))' },
  ],
  source: derived('two conductors coupled by a conductance per length, as in lapJointResistanceOhm'),
  validity: ['One-dimensional: a lower bound where overlap or transfer length is below one wire diameter.'],
})

/** The working of wrappedJointBondWidthMm. */
export const wrappedJointBondWidthMmFormula = closed<Parameters<typeof wrappedJointBondWidthMm>[0]>({
  id: 'wrappedJointBondWidthMm',
  call: wrappedJointBondWidthMm,
  symbols: {
    w: { tex: 'w', unit: 'mm', of: 'filletWidthMm', meaning: 'width of good fillet between core and wrap, across the wrapped wire' },
    D: { tex: 'D', unit: 'mm', of: 'coreDiameterMm', meaning: 'wire that goes straight through' },
    p: { tex: 'p', unit: 'mm', of: 'pitchMm', meaning: 'advance of one turn; close turns: the wrapped wire\'s diameter' },
  },
  results: [
    { name: 'w_p', tex: 'w\'', unit: 'mm', meaning: 'bond area per length of joint', expression: 'min(w * sqrt((pi * D)^2 + p^2)/p, pi * D)' },
  ],
  source: derived('geometry of a helix on the core\'s surface'),
  validity: ['A wrap stretched out until it lies straight gives the fillet itself, as in a lap.'],
})
