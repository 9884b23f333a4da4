/** Title of each room and the question it answers. */
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
  bundle: ['Bundle', 'How wide is the bundle?'],
  verdict: ['Wire verdict', 'Is this wire right for its load, drop and fuse?'],
  materials: ['Materials', 'What is it made of?'],
  tables: ['Looked up in tables', 'What does the standard print?'],
  rules: ['Rules', 'Which rules of the trade hold here?'],
  errors: ['Checks of inputs', 'What is refused, and how?'],
  quantity: ['Quantities', 'How is a value with a unit read and written?'],
  formulas: ['Workings', 'How is a result shown with its formula?'],
  job: ['Repair job', 'What is broken, and what is known of it?'],
  facts: ['Facts of a job', 'What follows from the answers?'],
  diagnosis: ['Diagnosis', 'Which stretch is at fault?'],
  ways: ['Ways', 'Which repairs are possible?'],
  decision: ['Decision', 'Which repair is best?'],
  work: ['Steps', 'What is done, in which order?'],
  proof: ['Proof', 'How is the repair tested?'],
  report: ['Report', 'How is a plan printed?'],
  picture: ['Picture', 'What does the joint look like?'],
  plan: ['Plan', 'What does the repair come to?'],
}

export function roomTitle(room: string): { readonly title: string; readonly question: string } {
  const [title, question] = questions[room] ?? [room.charAt(0).toUpperCase() + room.slice(1), '']
  return { title, question }
}
