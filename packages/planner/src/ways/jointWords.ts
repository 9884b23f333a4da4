import type { SectionWords } from '../facts/inner.ts'

/** Text of the joint's quality. */
export const jointWords = {
  none: { says: 'no joint: the run is whole', text: 'No joint: the run is whole from terminal to terminal.' },
  'lap-resistance': {
    says: '{overlap} of overlap: {resistance}',
    text: '{overlap} of overlap, {diameters} wire diameters, measures {resistance} where the solder has wetted the strands through. One that runs hot is not wetted, or cracked.',
  },
  'lap-unlike': {
    says: 'unlike wires: {resistance}, an estimate',
    text: 'The wires are unlike: {resistance} is an estimate, reckoned as the thinner one twice over {overlap}.',
  },
  'lap-no-pull': { says: 'the lap carries no pull', text: 'The overlap is sized for the current, not for pull: clamp the wire on both sides.' },
  'crimp-limit': {
    says: 'at most {fresh}, as {length} of its wire',
    text: 'A sound crimp measures at most {fresh} new, as much as {length} of its own wire, and {aged} once aged.',
  },
  strip: {
    says: 'strip {strip}',
    text: 'Strip {strip}: a usual length, common practice without a published source. What the maker of barrel or clamp prints goes first.',
  },
  'worse-than-wire': {
    says: 'predicted above its own length of wire',
    text: 'Predicted {resistance} is more than as much plain wire, {fresh}: take a crimp or a longer overlap.',
  },
  'joint-cool': {
    says: 'the joint settles at {joint}',
    text: 'With {current} the joint settles at {joint} in the hottest air, {room} below its limit. {limitOf} ends at {limit}.',
  },
  'joint-too-hot': {
    says: 'the joint settles at {joint}',
    text: 'With {current} the joint settles at {joint}, above the {limit} of {limitOf}. Help the wire first: thicker, or out of the heat.',
  },
  'joint-no-steady': { says: 'the joint has no steady temperature', text: 'The joint has no steady temperature at {current}: up to {largest} it has one.' },
  'no-room-to-age': {
    says: 'nothing is left for ageing',
    text: 'Heat, drop and {wire} of its own wire leave nothing beyond an aged joint: hold it to {aged}.',
  },
  'solder-soft': {
    says: '{alloy} softens at this joint',
    text: '{alloy} begins to melt at {solidus}, only {margin} above the joint: {wanted} is the least. Take an alloy that melts higher, or crimp.',
  },
  torque: { says: 'tighten to {torque}', text: 'Tighten the nut on {stud} to at least {torque}, by the published table for that thread.' },
  'torque-maker': { says: 'torque by the maker of the stud', text: 'No torque is published here for this stud: tighten to what its maker prints.' },
} as const satisfies SectionWords
