// Made from the docstrings of core by "npm test -- --update-api"; change the docstring instead.
import { lapLengthForStrengthMm, solderWireDefaults, solderWireLengthMm, strandVoidMm2 } from '@strandwise/core/solder'
import { closed } from '../formula.ts'
import { derived } from '../sources.ts'

/** The working of lapLengthForStrengthMm. */
export const lapLengthForStrengthMmFormula = closed<Parameters<typeof lapLengthForStrengthMm>[0]>({
  id: 'lapLengthForStrengthMm',
  call: lapLengthForStrengthMm,
  symbols: {
    S: { tex: 'S', unit: '1', of: 'safetyFactor', meaning: 'how much stronger the lap is to be than the conductor' },
    sigma: { tex: '\\sigma', unit: 'MPa', of: 'tensileMPa', meaning: 'tensile strength of the conductor' },
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area of the conductor' },
    tau: { tex: '\\tau', unit: 'MPa', of: 'shearMPa', meaning: 'short-time shear strength of the solder' },
    w: { tex: 'w', unit: 'mm', of: 'bondWidthMm', meaning: 'width over which solder joins the two, half to one diameter of round wires side by side' },
  },
  results: [
    { name: 'L', tex: 'L', unit: 'mm', meaning: 'length of the lap', expression: 'S * sigma * A/(tau * w)' },
  ],
  source: derived('from equal forces: a uniform shear stress over the bond; its ends bear more (shear lag)'),
  validity: ['Pulled once: no lap carries a sustained load.'],
})

/** The working of solderWireLengthMm. */
export const solderWireLengthMmFormula = closed<Parameters<typeof solderWireLengthMm>[0]>({
  id: 'solderWireLengthMm',
  call: solderWireLengthMm,
  symbols: {
    V: { tex: 'V', unit: 'mm³', of: 'volumeMm3', meaning: 'solder that the joint takes' },
    d: { tex: 'd', unit: 'mm', of: 'wireDiameterMm', meaning: 'diameter of the solder wire' },
    f: { tex: 'f', unit: '1', of: (i) => i.fluxVolumeFraction ?? solderWireDefaults.fluxVolumeFraction, meaning: 'share of flux in the wire, by volume' },
  },
  results: [
    { name: 'l', tex: 'l', unit: 'mm', meaning: 'length to feed', expression: '4 * V/(pi * d^2 * (1 - f))' },
  ],
  source: derived('plane geometry'),
  validity: ['Add what drips or stays on the tip.'],
})

/** The working of strandVoidMm2. */
export const strandVoidMm2Formula = closed<Parameters<typeof strandVoidMm2>[0]>({
  id: 'strandVoidMm2',
  call: strandVoidMm2,
  symbols: {
    d: { tex: 'd', unit: 'mm', of: 'diameterMm', meaning: 'across the bare conductor' },
    A: { tex: 'A', unit: 'mm²', of: 'areaMm2', meaning: 'area of its metal' },
  },
  results: [
    { name: 'A_v', tex: 'A_{v}', unit: 'mm²', meaning: 'area of the gaps', expression: 'pi * d^2/4 - A' },
  ],
  source: derived('plane geometry'),
  validity: ['A round conductor.'],
})
