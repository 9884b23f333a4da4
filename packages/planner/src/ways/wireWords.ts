import type { SectionWords } from '../facts/inner.ts'

/** Text on wire, terminal and fuse. The codes of wire and fuse are those of core's verdict. */
export const wireWords = {
  'current-within-limit': {
    says: '{size} carries {current}',
    text: '{size} with {current} {how} {conductor}, {room} below the {limit} of {limitOf}. The air there has up to {air}.',
  },
  'current-near-limit': {
    says: '{size} runs close to its limit',
    text: '{size} with {current} {how} {conductor}, only {room} below its limit: keep it out of bundles and heat. {limitOf} ends at {limit}.',
  },
  'current-over-limit': {
    says: '{size} is too thin for {current}',
    text: '{size} with {current} {how} {conductor}, {over} above the {limit} of {limitOf}. {todo}',
  },
  'no-steady-state': {
    says: '{size} is too thin for {current}',
    text: '{size} has no steady temperature at {current}: up to {largest} it stays below {ceiling}. {todo}',
  },
  'air-at-limit': {
    says: 'the air is hotter than the insulation bears',
    text: 'Air of {air} leaves {size} no current: {limitOf} ends at {limit}. {todo}',
  },
  'wire-replaced': { says: 'the new run is {wire}', text: '{why} The new run is {wire}.' },
  'wire-no-size': {
    says: 'no standard wire suits this load here',
    text: 'No standard size carries {current} here with a drop and a fuse that suit. Shorten the run, cool it, or feed it at a higher voltage.',
  },
  cca: {
    says: 'copper-clad aluminium: replace it',
    text: 'This is copper-clad aluminium: no solder, no copper crimp. Replace the run with copper, sized anew.',
  },
  'small-aluminium': {
    says: 'aluminium is thin here',
    text: 'Aluminium below {least} is not recommended: each bend and crimp may break it. Copper serves better.',
  },
  'drop-within-budget': { says: '{size} drops {drop}', text: 'The wire alone drops {drop} out and back, {share} of the supply; {allowed} is allowed.' },
  'drop-over-ours': {
    says: 'the wire alone drops {drop}',
    text: 'The wire alone drops {drop}, {share} of the supply: more than {allowed}, a limit of ours. Thicker wire is the cure, not a better joint.',
  },
  'drop-over-budget': { says: '{size} drops {drop}, {allowed} is allowed', text: 'The wire alone drops {drop}: {allowed} is allowed. {todo}' },
  'terminal-range': {
    says: '{size} does not suit the terminal’s barrel',
    text: 'The terminal’s barrel takes {low} to {high}, {size} has {area}: fit the terminal made for it. Never cut strands to fit.',
  },
  'terminal-carries': {
    says: 'the terminal carries {carries}',
    text: 'The terminal, rated {rated}, carries {carries} at {air} with a fifth in reserve: enough for {current}.',
  },
  'terminal-too-small': {
    says: 'the terminal carries only {carries}',
    text: 'The terminal, rated {rated}, carries only {carries} at {air}, too little for {current}: fit a larger one.',
  },
  'terminal-hot': {
    says: 'the air is at the terminal’s own limit',
    text: 'Air of {air} is at the terminal’s own limit of {limit}: no current is left. Move it or fit a hotter grade.',
  },
  overheated: { says: 'find what was too much first', text: 'It was overheated: find the load or the wire that was too much before you join anything.' },
  'fuse-guards-wire': {
    says: 'the {fuse} fuse guards {size}',
    text: 'The {fuse} fuse may pass {passes} for minutes; {size} bears {bears} at steady state.',
  },
  'fuse-over-wire': {
    says: 'the {fuse} fuse does not guard {size}',
    text: 'The {fuse} fuse may pass {passes}; {size} bears only {bears}: fit {fit}.',
  },
  'fuse-none-serves': {
    says: 'no blade fuse guards {size} at {current}',
    text: 'No blade fuse carries {current} and guards {size}, which bears {bears}: take thicker wire. {ends}',
  },
  'fuse-within-rule': {
    says: 'the {fuse} fuse is within 150 % of the wire',
    text: 'The {fuse} fuse may pass {passes} and the wire bears {bears}: within what small-craft law allows. {fit} would guard it.',
  },
  'fuse-missing': { says: 'no fuse is named: fit {fit}', text: 'No fuse is named: fit {fit} within {near} of the source.' },
  'fuse-no-band': {
    says: 'the {kind} is judged by its own curve',
    text: 'The {fuse} {kind} has its maker’s own curve: it must hold {holds}, and open at {bears} before the wire is hot.',
  },
  'fuse-air-beyond-data': {
    says: 'no fuse is rated for air of {air}',
    text: 'Fuses are not rated for air of {air}: put the fuse where it is cool, below {highest}.',
  },
  'fuse-load-beyond-series': {
    says: 'no blade fuse carries {load}',
    text: 'No blade fuse carries {load}: take a bolt-down fuse or a breaker, judged by its maker’s curve.',
  },
  'fuse-near-load': {
    says: 'the {fuse} fuse runs near its rating',
    text: '{load} is {share} of the {fuse} fuse at {air}; {usual} is usual: fit {fit}, or it may open for no fault.',
  },
  'fuse-below-load': { says: 'the {fuse} fuse is too small for {load}', text: 'The {fuse} fuse carries {carries} at {air}, too little for {load}: fit {fit}.' },
  'fuse-may-open-on-inrush': {
    says: 'the {fuse} fuse may open on the inrush',
    text: 'The {fuse} fuse may open within {shortest} on the {inrush} that lasts {lasts}: fit {fit}.',
  },
  'fuse-slower-than-wire': {
    says: 'between {low} and {high} the fuse is slow',
    text: 'Between {low} and {high} the slowest fuse of its kind opens later than the wire reaches {limit}. {fit} is quicker.',
  },
  'fuse-opens-stall': { says: 'the fuse opens on a stalled motor', text: 'Stalled, the motor draws {stall}: the {fuse} fuse opens within {opens}.' },
  'fuse-passes-stall': {
    says: 'a stalled motor may not open the fuse',
    text: 'Stalled, the motor draws {stall}; the {fuse} fuse is sure to open only from {sure}. {fit}',
  },
  'fuse-opens-far-fault': {
    says: 'a short at the far end opens the fuse',
    text: 'A dead short at the far end draws {fault}: the {fuse} fuse opens within {opens}.',
  },
  'fuse-slow-on-far-fault': {
    says: 'a short at the far end opens the fuse late',
    text: 'A dead short at the far end draws {fault}: the {fuse} fuse may take longer than {within}.',
  },
  'fuse-breaking-capacity': {
    says: 'the source can drive more than the fuse breaks',
    text: 'The source can drive {fault} into a short, a blade fuse breaks {breaks}: put a bolt-down fuse at the source as well.',
  },
  'fuse-supply-voltage': {
    says: 'the fuse is not made for {supply}',
    text: 'The supply of {supply} is above the {rated} that blade fuses are made for: take one rated for it.',
  },
  'source-limited': {
    says: 'the source cannot overload the wire',
    text: 'The source drives at most {source} into a short and {size} bears {bears}: no fuse is needed for the wire.',
  },
  'fuse-far': {
    says: 'the fuse sits far from the source',
    text: 'The fuse sits {distance} from the source: nothing guards the wire before it. Within {near} is the aim.',
  },
} as const satisfies SectionWords
