/** Text of a step and its check, with {name} as placeholder for a value or word. */
interface StepWords {
  readonly text: string
  readonly check: string
}

/** Texts of all steps by code. */
export const stepWords = {
  vent: {
    text: 'Air the space and check it with a detector before anything is switched or unplugged.',
    check: 'The detector finds nothing, low down as well.',
  },
  fetch: { text: 'Fetch {list}.', check: 'Size and rating are printed on them.' },
  'switch-off': {
    text: 'Switch off, isolate every source, and prove the wire dead at the place of work.',
    check: 'A known live point shows, here nothing, the known point again.',
  },
  'swap-fuse': { text: 'Fit a {fuse} {kind} in place of the {old} one.', check: 'Its rating is the one named here.' },
  'swap-by-curve': {
    text: 'Replace the {fuse} {kind} by one that holds {hold} and opens before the wire passes {bears} for long, by its maker’s curve.',
    check: 'Its printed rating lies between the two.',
  },
  'add-fuse': { text: 'Put a {fuse} {kind} into the feed, within {near} of the source.', check: 'Nothing unguarded lies before it.' },
  // The terminal at the end.
  'release-contact': { text: 'Release the contact from its housing with its own tool, and note its place.', check: 'Housing and lock are whole.' },
  'release-push-on': { text: 'Pull the push-on terminal off by its body, never by the wire.', check: 'The tab is bright and not loose.' },
  'release-stud': { text: 'Undo the nut, lift the old {terminal} off the stud, and note the order of the washers.', check: 'Stud and face are bright.' },
  'release-clamp': { text: 'Open the clamp and draw the old end out.', check: 'The clamp is bright and its screw turns freely.' },
  'cut-one-end': { text: 'Cut back {each} past the damage, to strands bright all round.', check: 'Every strand is bright; the insulation is soft.' },
  'cut-both-ends': {
    text: 'Cut back {each} on both sides of the damage, to strands bright all round.',
    check: 'Every strand is bright; the insulation is soft.',
  },
  insert: {
    text: 'Cut {insert} of {wire} to put in, {lay}.',
    check: 'The lead reaches without pull and leaves {keep}.',
  },
  'slide-sleeve': { text: 'Cut {cut} of {sleeve} and slide it on, well away from the heat.', check: 'It passes over everything that follows.' },
  'slide-solder-sleeve': { text: 'Slide the solder sleeve on, well away from the heat.', check: 'It passes over both wires.' },
  'slide-seal': { text: 'Slide the wire seal on: it does not pass over a crimped contact.', check: 'It grips the insulation all round.' },
  // Joining.
  sample: {
    text: 'Make one sample with this wire, barrel and tool, and pull it apart.',
    check: 'It holds {pull} or more, and the wire breaks outside the barrel.',
  },
  'sample-no-table': {
    text: 'Make one sample with this wire, barrel and tool, and pull it apart.',
    check: 'The wire breaks outside the barrel; it does not slip out.',
  },
  'strip-crimp': {
    text: 'Strip {strip}, untinned, nick no strand, and crimp {what} with {tool}.',
    check: 'Wire shows in the inspection hole; a light tug moves nothing.',
  },
  'strip-crimp-terminal': {
    text: 'Strip {strip}, untinned, and crimp the new {terminal} with its own die.',
    check: 'Brush and insulation show where they should; a light tug moves nothing.',
  },
  'splice-insert': { text: 'Crimp the {splices} with the ratchet tool made for it.', check: 'Wire shows in the inspection hole; a light tug moves nothing.' },
  aluminium: {
    text: 'Strip {strip}, brush every strand bright, paste it at once, and crimp {what} within {delay}, with parts and tools kept for aluminium.',
    check: 'Paste shows at the barrel’s mouth; a light tug moves nothing.',
  },
  'aluminium-clamp': {
    text: 'Strip {strip}, brush every strand bright, paste it at once, and put it into the clamp within {delay}.',
    check: 'Paste shows at the clamp’s mouth; the brush never touched copper.',
  },
  'strip-clamp': { text: 'Strip {strip}; never tin it. Crimp a ferrule on, or twist the bare strands.', check: 'No strand stands out.' },
  'strip-spring': {
    text: 'Strip {strip}; never tin it. Push the bare strands into the open clamp to its stop.',
    check: 'No bare wire shows; a light tug does not bring it back.',
  },
  'cover-legs': { text: 'Cover each splice by itself, so that the legs touch nowhere.', check: 'No bare metal shows.' },
  'switch-on-instrument': {
    text: 'Connect the instrument and switch it on.',
    check: 'It reads about the temperature of the place; a break reads off its scale.',
  },
  polarity: { text: 'Find which leg is which with a meter and a warm hot end, not by colour.', check: 'The reading rises with the warmth.' },
  thermocouple: {
    text: 'Join each leg to its own alloy with crimps or connectors of that alloy, no copper and no solder between, side by side.',
    check: 'Warm the splices by hand: the reading does not move.',
  },
  'lay-lap': {
    text: 'Strip {strip} of each end, tin both with rosin flux, and lay them side by side over {overlap}, bound with fine bare wire.',
    check: 'No strand stands out; nothing pulls.',
  },
  'lay-sleeve': {
    text: 'Strip {strip} of each end and lay them side by side over {overlap} inside the sleeve.',
    check: 'The ring lies over the middle of the lap.',
  },
  wind: {
    text: 'Strip {strip} of each end, cross them, and wind each round the other in {turns} tight turns; trim the ends.',
    check: 'No gap between turns; it holds a light pull without solder.',
  },
  clip: { text: 'Put a metal clip on the bare wire between joint and insulation, on both sides.', check: 'The clip is cold and bites no strand.' },
  solder: {
    text: 'Heat from below with the {tool} and feed {solder} of 1 mm {alloy} on the far side; lift at {lift}, stop at {most}.',
    check: 'Solder runs thin along both sides, strands show; it sets untouched.',
  },
  'heat-sleeve': {
    text: 'Heat the middle with the {tool} until the ring has run to a fillet, about {wets}, then the ends; stop at {most}.',
    check: 'A fillet shows along both wires; it sets untouched.',
  },
  'wash-flux': { text: 'Wash the flux off and let it dry.', check: 'Nothing sticky stays on wire or insulation.' },
  shrink: { text: 'Shrink the {sleeve} from the middle outwards.', check: '{seal}' },
  'shrink-later': {
    text: 'Shrink the sleeve only where the space is vented and checked, or outside. No power on before the joint is covered.',
    check: 'The detector finds nothing while heat is in use.',
  },
  // A new run.
  'draw-in': { text: 'Draw in {length} of {wire} along the old way, without pull.', check: 'No bend tighter than {radius}, nothing rubs.' },
  'release-both': { text: 'Release the old wire at both ends, and note each place.', check: 'Housings, studs and clamps are whole.' },
  'crimp-both': {
    text: 'Strip {strip} at both ends, untinned, and crimp the new terminals with their own die.',
    check: 'Wire shows where it should; a light tug moves nothing.',
  },
  'clamp-both': { text: 'Strip {strip} at both ends; never tin them. Put ferrules on, or twist the bare strands.', check: 'No strand stands out.' },
  'seat-both': { text: 'Seat both ends in their places{torque}.', check: 'Each is home and does not come back on a light tug.' },
  // Seating.
  'seat-contact': { text: 'Push the contact home in its housing.', check: 'It clicks, and a light tug does not bring it back.' },
  'seat-push-on': { text: 'Push the terminal fully onto its tab.', check: 'It takes force, sits straight, and covers the whole tab.' },
  'seat-stud': {
    text: 'Put the {terminal} flat on the bright face, washers as noted, and tighten the nut{torque}.',
    check: 'The {terminal} cannot be turned by hand.',
  },
  'seat-clamp': {
    text: 'Put the end into the clamp to its stop and tighten it; tighten once more after an hour.',
    check: 'No bare wire shows; a light tug moves nothing.',
  },
  'seat-spring': { text: 'Close the clamp.', check: 'A light tug does not bring the wire back.' },
  // Afterwards.
  tie: { text: 'Tie the lead on both sides of the repair, so that it hangs free of pull.', check: 'The joint stays still when the lead is moved.' },
  'tie-drip': {
    text: 'Tie the lead on both sides of the repair, with a drip loop below the {place}.',
    check: 'The joint stays still; water drops off below the {place}.',
  },
  shorts: { text: 'With the load unplugged, read ohms from feed to return and to the frame.', check: 'No short, right polarity.' },
  'power-on': { text: 'Power on, load on.', check: 'Nothing smells, smokes or grows warm for some minutes.' },
  'power-on-fuse': { text: 'Power on through the {fuse} fuse, load on.', check: 'Nothing smells, smokes or grows warm for some minutes.' },
  ratio: {
    text: 'Before covering: clips on, then power on, load on; read millivolts over the joint and over as much of its own wire. Power off.',
    check: 'The joint reads no more than its wire.',
  },
  'ratio-few': {
    text: 'Before covering: read over the joint and over as much of its own wire, four-wire or with a known {needs}.',
    check: 'The joint reads no more than its wire.',
  },
  'last-reading': { text: 'After {settle} read the drop between the nearest open metal on both sides; pierce nothing.', check: '{limit}' },
  'last-reading-duty': {
    text: 'Within the {on} that it may run, read the drop between the nearest open metal on both sides; pierce nothing.',
    check: '{limit}',
  },
  'last-reading-run-duty': {
    text: 'Within the {on} that it may run, read the drop over the whole run, out and back; feel the terminals at both ends.',
    check: 'Within {allowed}; no terminal warmer than its wire.',
  },
  'last-reading-run': {
    text: 'After {settle} read the drop over the whole run, out and back, and feel the terminals at both ends.',
    check: 'Within {allowed}; no terminal warmer than its wire.',
  },
  'last-reading-signal': {
    text: 'Move the lead and watch what its receiver shows, in all its states.',
    check: 'The receiver sees every state, steady while the lead is moved.',
  },
  record: { text: 'Write down place, cause, method, tool, readings, date.', check: 'Someone else could repeat the reading.' },
  'record-temporary': {
    text: 'Mark it as temporary and write down place, method, reading and the date by which to renew it.',
    check: 'The mark is on the lead.',
  },
  // Without a joint.
  'take-reading': { text: '{next}', check: 'The reading, its two places, the load’s state and the current are written down; plan again with them.' },
  'clean-fuse': { text: 'Draw the fuse, brush its contacts and the holder’s bright, and fit a new {fuse} fuse.', check: 'It grips; nothing is discoloured.' },
  'clean-return': {
    text: 'Undo the return connection, brush every face bright, and tighten it again{torque}.',
    check: 'It cannot be turned by hand; the drop over it is within its limit.',
  },
  'clean-supply': {
    text: 'Charge the supply, brush its posts and clamps bright, and read it under load again.',
    check: 'It holds its voltage under the load.',
  },
  'mend-load': { text: 'Mend or replace the load, and read the circuit again.', check: 'It works in all its states.' },
  'find-leak': {
    text: 'Open the run where it lies wet or rubs, dry it, and replace the length that leaks.',
    check: 'Megohms from feed to return stay above ten.',
  },
  'find-short': {
    text: 'Keep the source off. Unplug one part after the other and read ohms from feed to return each time.',
    check: 'The reading jumps up at the part that holds the short.',
  },
  'makers-procedure': {
    text: 'Look up the maker’s procedure: whether this pair may be spliced, where, and how far the twist must run.',
    check: 'You have it before you; without it replace the pair from plug to plug.',
  },
} as const satisfies Readonly<Record<string, StepWords>>

export type StepCode = keyof typeof stepWords
