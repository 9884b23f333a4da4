import type { Provenance } from '@strandwise/core'

const ours = (source: string): Provenance => ({ status: 'common practice', source })

/** Defaults for fields that the job leaves out. Each use is listed among the plan's assumptions. */
export const assumed = {
  material: { value: 'annealed-copper', why: 'the commonest conductor; scrape a strand: silvery through and through is not copper' },
  ambientC: { value: 20, why: 'a room or a mild day' },
  location: { value: 'splash', why: 'a lead outdoors or on a vehicle gets splashed' },
  vibration: { value: 'strong', why: 'what is fixed to an engine or a vehicle shakes' },
  slackMm: { value: 0, why: 'a lead as short as it can be; pull it forward and measure' },
  hottestAboveNowC: { value: 40, why: 'a summer day in a closed space; an engine space is hotter' },
  coldestBelowNowC: { value: 0, why: 'a mild winter' },
  dropShare: { value: 0.03, why: '3 % of the supply over the whole run: a limit of ours, in line with small-craft practice for loads that matter' },
  layFactor: { value: 1.03, why: 'strands run a few per cent longer than the wire; 1.01 to 1.05 is usual' },
  meterOhm: { percentOfReading: 0.8, counts: 3, resolution: 0.1, why: 'an ordinary hand meter on its lowest ohms range' },
  meterVolt: { percentOfReading: 0.8, counts: 2, resolution: 0.01, why: 'an ordinary hand meter on its volts range' },
  fourWireResolutionOhm: { value: 0.0001, why: 'an ordinary four-wire meter on its lowest range' },
  jointShareOfDrop: { value: 0.1, why: 'a tenth of the drop budget is the outer limit for one joint' },
  jointAsWireMm: { value: 100, why: 'a joint worth more than 100 mm of its wire is a bad one, whatever the budget' },
  leadOhm: { value: 0.2, uncertainty: 0.1, why: 'two test leads and their probes' },
  brightMarginMm: { value: 10, why: 'past the last dark copper, to be sure of bright strands' },
  serviceSlackMm: { value: 20, why: 'left so that the plug can be pulled once more' },
  iron: {
    setC: 360,
    tipResistanceKPerW: 1.5,
    wettedContactKPerW: 6,
    dryContactKPerW: 60,
    why: 'a tip of some 2 mm; contact is the largest unknown, a factor 3 either way',
  },
  clip: {
    resistanceKPerW: 8,
    why: 'a small metal clip on the wire, cold when it is put on',
    source: { status: 'from memory', source: 'a small metal clip on the wire, cold when it is put on: no measurement of ours' } satisfies Provenance,
  },
  tipWidthMm: { value: 2, why: 'a common chisel for wire' },
  airSpeedMPerS: { value: 5, why: 'a small hot-air tool held close' },
  nozzleMm: { value: 20, why: 'a nozzle of common width, or a small reflector' },
  overlapDiameters: { value: 4, why: 'inside the 3 to 6 wire diameters of the spaceflight workmanship standard' },
  solderLayerMm: { value: 0.1, why: 'solder between two wires pressed together' },
  terminal: { ratedAmbientC: 25, limitC: 105, why: 'a rating is told for a cool room; the common housing plastics' },
  tinPlatingLimitC: {
    value: 150,
    source: { status: 'from memory', source: 'tin plating grows into the copper above some 150 °C' } satisfies Provenance,
  },
  barrelMm: { value: 25, why: 'a common butt splice, end to end' },
  stripOfBarrel: { value: 0.35, why: 'half of a butt splice less its stop' },
  /** Strip lengths of barrels and clamps. */
  strip: { source: ours('a usual strip length for such a barrel or clamp; its maker’s goes first') },
  /** A longer new run is a caution. */
  longRunM: { value: 2, source: ours('a limit of this plan: up to some two metres a run is drawn anew without more ado') },
  ours: ours('choice of this plan'),
} as const
