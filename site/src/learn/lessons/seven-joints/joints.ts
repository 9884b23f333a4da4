import { cutOhm, dryOhm, goodOhm, looseOhm, oneEndOhm } from './inCode.ts'

/** The seven sample joints, with the result of inspection and pull. */
export const joints = [
  { name: 'P', ohm: goodOhm, is: 'done well', looks: 'a fillet along both sides, insulation whole', holds: true },
  { name: 'Q', ohm: dryOhm, is: 'dry: solder on a film', looks: 'dull, in drops', holds: true },
  { name: 'R', ohm: oneEndOhm, is: 'wetted at one end only', looks: 'bare strands over most of the overlap', holds: true },
  { name: 'S', ohm: cutOhm, is: 'strands cut: 3 of 32 are left', looks: 'a neck beside the joint', holds: true },
  { name: 'T', ohm: goodOhm, is: 'overheated', looks: 'insulation brown and hard', holds: true },
  { name: 'U', ohm: looseOhm, is: 'a loose crimp', looks: 'no dent in the barrel', holds: false },
  { name: 'V', ohm: looseOhm * 4, is: 'the loose crimp, a month later', looks: 'dark strands', holds: false },
] as const
