// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.
import { contactSpotRadiusMm, filletConductanceSPerM, filmResistanceOhm, interfaceConductanceSPerM, lapDefaults, shearLagPerMm, transferLengthMm, wettedStrandsResistivityOhmM, wireSpreadingOhmM, wrappedJointBondWidthMm } from '@strandwise/core/joint'
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
  validity: ['The metal yields until contact area times hardness equals the force; 1 N / 1 MPa = 1 mm2.'],
})

/** The working of filletConductanceSPerM. */
export const filletConductanceSPerMFormula = closed<Parameters<typeof filletConductanceSPerM>[0]>({
  id: 'filletConductanceSPerM',
  call: filletConductanceSPerM,
  symbols: {
    d: { tex: 'd', unit: 'mm', of: 'diameterMm', meaning: 'diameter of each wire' },
    rho: { tex: '\\rho', unit: 'Ω m', of: 'resistivityOhmM', meaning: 'resistivity across the wires' },
    s: { tex: 's', unit: 'mm', of: 'gapMm', meaning: 'gap between the wires where they are closest, at most d' },
    w: { tex: 'w', unit: 'mm', of: 'bondWidthMm', meaning: 'width of the fillet, measured across, at most d' },
    rho_s: { tex: '\\rho_{s}', unit: 'Ω m', of: 'solderOhmM', meaning: 'resistivity of the solder' },
    rho_c: { tex: '\\rho_{c}', unit: 'Ω m²', of: (i) => i.filmOhmM2 ?? lapDefaults.filmOhmM2, meaning: 'specific resistance of a film between solder and wire' },
  },
  steps: [
    { name: 'a', tex: 'a', unit: '1', meaning: 'half angle of the fillet', expression: 'asin(w/d)' },
    { name: 'c', tex: 'c', unit: '1', meaning: 'gap over diameter', expression: 's/d' },
    { name: 'G', tex: 'G', unit: '1', meaning: 'width over gap of an even strip that conducts as well', expression: '2 * (1 + c) * atan(sqrt((2 + c)/c) * tan(a/2))/sqrt(c * (2 + c)) - a' },
    { name: 'w_e', tex: 'w_{e}', unit: 'mm', meaning: 'width of that strip', expression: 's * G' },
    { name: 'a_e', tex: 'a_{e}', unit: '1', meaning: 'half angle from which the current spreads', expression: 'asin(sqrt((w/1000) * (w_e/1000))/(d/1000))' },
  ],
  results: [
    { name: 'g', tex: 'g', unit: 'S/m', meaning: 'conductance per metre of overlap', expression: '1/(rho_s/G + rho_c/(w_e/1000) + 2 * rho * (1/8 - log(sin(a_e/2)))/pi)' },
  ],
  source: derived('circle to circle, current straight across; checked by finite elements of the section'),
  validity: ['Use this for overlaps of round wires: an even strip (interfaceConductanceSPerM) overestimates two to five times. The current crosses the solder straight; the gap grows away from the line where the wires are closest. Within -2 to +6 % of the section\'s field for solder of 7 to 21 times the wire\'s resistivity and gaps of 0.02 to 0.4 diameters; the film\'s part is not checked. For unlike wires use the thinner diameter for both. Strands count as a uniform section only if they are wetted through.'],
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
  validity: ['inputs within the domain that the function checks'],
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
  validity: ['Even strip: solder and film in series, without spreading inside the conductors. A film alone (layerMm 0) is a dry contact of known specific resistance. For a solder fillet between round wires use filletConductanceSPerM; for a strip along a round wire add the wireSpreadingOhmM of each wire to 1/g.'],
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
  validity: ['One-dimensional: for round wires use filletConductanceSPerM for the interface, which includes the spreading inside the wires.'],
})

/** The working of wettedStrandsResistivityOhmM. */
export const wettedStrandsResistivityOhmMFormula = closed<Parameters<typeof wettedStrandsResistivityOhmM>[0]>({
  id: 'wettedStrandsResistivityOhmM',
  call: wettedStrandsResistivityOhmM,
  symbols: {
    rho: { tex: '\\rho', unit: 'Ω m', of: 'resistivityOhmM', meaning: 'resistivity of the strands' },
    rho_s: { tex: '\\rho_{s}', unit: 'Ω m', of: 'solderOhmM', meaning: 'resistivity of the solder' },
    p: { tex: 'p', unit: '1', of: 'copperShare', meaning: 'share of the wire\'s round section that is strand, 0.75 to 0.8 of a usual wire' },
  },
  steps: [
    { name: 'q', tex: 'q', unit: '1', meaning: 'ratio of the resistivities', expression: 'rho/rho_s' },
    { name: 'K', tex: 'K', unit: '1', meaning: 'contrast', expression: '(1 - q)/(1 + q)' },
  ],
  results: [
    { name: 'rho_t', tex: '\\rho_{t}', unit: 'Ω m', meaning: 'resistivity across the wire', expression: 'rho * (1 - p * K)/(q * (1 + p * K))' },
  ],
  source: fromMemory('Hashin-Shtrikman bound of two phases in a plane'),
  validity: ['Upper bound for two phases in a plane, which round strands surrounded by solder nearly reach. It does not apply to dry strands: their contacts dominate, a thousand times worse.'],
})

/** The working of wireSpreadingOhmM. */
export const wireSpreadingOhmMFormula = closed<Parameters<typeof wireSpreadingOhmM>[0]>({
  id: 'wireSpreadingOhmM',
  call: wireSpreadingOhmM,
  symbols: {
    rho: { tex: '\\rho', unit: 'Ω m', of: 'resistivityOhmM', meaning: 'resistivity across the wire' },
    d: { tex: 'd', unit: 'mm', of: 'diameterMm', meaning: 'diameter of the wire' },
    w: { tex: 'w', unit: 'mm', of: 'bondWidthMm', meaning: 'width of the bond along the wire\'s surface, at most its circumference' },
  },
  results: [
    { name: 'r', tex: 'r', unit: 'Ω m', meaning: 'spreading resistance of a metre of overlap', expression: 'rho * (1/8 - log(sin(w/(2 * d))))/pi' },
  ],
  source: derived('mean exit time of a disc with one absorbing arc, checked by finite volumes and a boundary method to six digits'),
  validity: ['Add it to the layer\'s, for each wire: 1/g\' = 1/g + r1 + r2. The strip is an equipotential, which errs a little high near the ends of an overlap. filletConductanceSPerM includes it for a solder fillet between round wires. For strands wetted through use the resistivity across the wire (wettedStrandsResistivityOhmM); strands that are not wetted are not a uniform section and cannot be computed.'],
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
  validity: ['In the limit of a straight wrap it is the fillet itself, as in a lap.'],
})
