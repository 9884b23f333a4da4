import type { SectionWords } from '../facts/inner.ts'

/** Text of the heating: flow, time, and temperature of the insulation's edge. */
export const heatingWords = {
  'no-solder': { says: 'nothing is soldered', text: 'Nothing is soldered: heat only shrinks the sleeve.' },
  vapour: {
    says: 'nothing hot where vapour may stand',
    text: 'Vapour may stand there: nothing hot, heat-sealed sleeves included, until it is vented and a detector finds nothing.',
  },
  'property-unknown': {
    says: 'the heat can’t be reckoned for {material}',
    text: 'The heat can’t be reckoned: the {missing} of {material} is not known. Try the joint on a scrap of the same wire, or crimp.',
  },
  'air-melts': {
    says: 'the air melts {alloy}',
    text: '{alloy} melts from {solidus} and the air has {air}: no joint of it sets. Take another alloy, or crimp.',
  },
  'tube-too-narrow': {
    says: 'the sleeve does not slide over the joint',
    text: 'The solder sleeve is {inside} inside, the joint {width} across: take a wider one.',
  },
  'tube-shrinks-early': { says: 'the sleeve shrinks in this air', text: 'The sleeve shrinks at {recovery} and the air has {air}: work where it is cooler.' },
  'no-sleeve-data': {
    says: 'ring and tube of the sleeve are not given',
    text: 'Which ring and tube the solder sleeve has is not given: they decide whether your tool flows it.',
  },
  'no-tool': { says: 'fetch {tool}', text: 'No {tool} is among your tools: fetch one, and plan again with its setting.' },
  'no-tool-named': {
    says: '{tool} is not named',
    text: '{tool} is not named: say its power or air temperature, and the plan tells whether it flows.',
  },
  wets: { says: '{alloy} wets in {nominal}', text: '{tool}: {alloy} wets in {nominal}, {slow} at the unfavourable end. Lift the tool at {lift}.' },
  'wets-late': {
    says: '{alloy} wets late, in {slow}',
    text: '{tool}: {alloy} wets in {nominal}, but {slow} at the unfavourable end: later than {soon}. Wet the tip, flux, press.',
  },
  'unfavourable-does-not-wet': {
    says: '{alloy} wets in {nominal}, or not',
    text: '{tool}: {alloy} wets in {nominal}, but with poor contact not within {most}. Stop then: let it cool, clean, flux, try again.',
  },
  'only-favourable-wets': {
    says: 'only at best does {alloy} wet',
    text: '{tool}: {alloy} wets within {most} only with the best contact, in {favourable}; at steady state the joint reaches {steady}.',
  },
  'never-wets': {
    says: 'the {tool} never flows {alloy}',
    text: '{tool}: at steady state the joint reaches {steady}; {alloy} wets about {superheat} above its {liquidus}. Not even the best contact gets there within {most}.',
  },
  'limit-kept': {
    says: 'the {insulation} is spared',
    text: 'The edge of the {insulation}, {stub} from the solder, peaks at {peak}; it stands {limit} for seconds.',
  },
  'limit-passed': {
    says: 'the {insulation} peaks at {peak}',
    text: 'The {insulation}, {stub} from the solder, peaks at {peak}{end}, past the {limit} it stands for seconds. Clip the wire, or leave a longer stub.',
  },
  'tube-limit-passed': { says: 'the tube gets too hot', text: 'The tube passes its short limit of {limit}, a recalled figure: stop when the ring has run.' },
  moves: { says: 'the contact decides', text: 'What moves it most: {move} would wet it {gain}.' },
  'to-flow': { says: 'to make it flow: {change}', text: 'To make it flow: {change}.' },
  'to-spare': { says: 'to spare the insulation: {change}', text: 'To spare the insulation: {change}.' },
  'no-change': {
    says: 'no single change makes it flow',
    text: 'No single change of this tool within its reach makes it flow: take another tool, a lower-melting alloy, or a crimp.',
  },
  'other-tool': { says: '{tool}: {verdict}', text: 'The {tool} instead: {what} ({verdict}).' },
} as const satisfies SectionWords
