import type { SectionWords } from '../facts/inner.ts'

/** Text of cutting back, slack, and room for a splice. */
export const cutBackWords = {
  'new-run': { says: 'the whole run goes', text: 'The whole run goes, from terminal to terminal: nothing is cut back.' },
  'cut-one-end': {
    says: 'cut back {each}',
    text: 'Cut back {each} past the break, and the {stub} between break and {place}: every strand bright all round.',
  },
  'cut-both-ends': { says: 'cut back {each} on both sides', text: 'Cut back {each} on both sides of the break, until every strand is bright all round.' },
  'length-unknown': {
    says: 'how far the damage runs is not known',
    text: 'How far dark copper runs is not known: open the insulation until every strand is bright. Plan again where that is longer.',
  },
  'dark-too-long': { says: 'dark over more than {most}', text: '{dark} of dark wire is more than {most}: replace the run.' },
  wicking: {
    says: 'water creeps under the insulation',
    text: 'Salt water creeps along the strands: the blackness is longer inside than the damage outside. Feel for stiff, swollen insulation.',
  },
  'strands-left': {
    says: '{left} of {count} strands are left',
    text: '{left} of {count} strands are left: {area} of metal at the neck carries all the current. Do not load it until it is mended.',
  },
  'strands-few-gone': {
    says: '{broken} of {count} strands are broken',
    text: '{broken} of {count} strands are broken: cut back past the nick all the same.',
  },
  'no-room': {
    says: 'no room for a splice {from} from the {place}',
    text: 'The break is {from} from the {place} and a splice needs {needs}: fit a new terminal.',
  },
  'slack-enough': { says: '{left} of slack stays', text: '{slack} of slack less {cut} cut back leaves {left}: enough.' },
  insert: {
    says: 'put in {insert} of wire',
    text: '{slack} of slack less {cut} cut back leaves {left}: put in {insert} with {splices}, away from the {place}. {keep} should stay.',
  },
  'insert-outside': {
    says: 'splice outside the zone that moves',
    text: 'Put in {insert} or more past the zone that moves, with every splice where nothing moves. The wire is as fine-stranded as the old.',
  },
  'gives-away': { says: 'gives up {stub} of wire', text: 'A new terminal gives up the {stub} between break and {place}: a splice keeps it.' },
  'insert-unlike': {
    says: 'the wire put in matches the thicker side',
    text: 'The two sides are unlike: put in wire of the thicker side’s size, and splice the step to the thinner one last.',
  },
} as const satisfies SectionWords
