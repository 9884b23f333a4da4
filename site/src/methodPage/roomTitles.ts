/** The rooms by the question that each answers. */
const questions: Readonly<Record<string, readonly [title: string, question: string]>> = {
  heat: ['Heat', 'How does heat leave?'],
  conductor: ['Conductor', 'How big, how many ohms?'],
  ampacity: ['Ampacity', 'How many amperes, how hot, how long?'],
  circuit: ['Circuit', 'Does the load get its volts?'],
  protection: ['Protection', 'Which fuse, and will the terminal carry it?'],
  meter: ['Meter', 'What does the meter really say?'],
  joint: ['Joint', 'How good is the splice?'],
  heating: ['Heating a joint', 'Will it flow before the insulation gives up?'],
  solder: ['Solder', 'How much solder, how long a lap?'],
  crimp: ['Crimp', 'Is the crimp right?'],
  sleeve: ['Heat-shrink sleeve', 'Which tube, how long, how thick afterwards?'],
  routing: ['Routing', 'Will it break again?'],
  suitability: ['Suitability', 'Which way to make this joint?'],
  uncertainty: ['Uncertainty', 'How sure is the number?'],
}

export function roomTitle(room: string): { readonly title: string; readonly question: string } {
  const [title, question] = questions[room] ?? [room, '']
  return { title, question }
}
