import { frozen } from '../errors/inner.ts'
import { dropRead, inTheWet } from './conditions.ts'
import type { PracticeRule } from './practiceRule.ts'
import { tradePractice } from './sources.ts'

/**
 * How to take a reading and what it proves, as rules.
 *
 * @source each rule carries its own
 */
export const readingMethodRules: readonly PracticeRule[] = /* @__PURE__ */ frozen([
  {
    id: 'rd-two-wire-floor',
    decides: 'readings',
    statement:
      'Do not judge a joint below a couple of ohms with the ohms range and two leads: the leads alone are about a fifth of an ohm, so a good and a bad splice read alike.',
    conditions: [{ field: 'reading', op: '=', values: ['resistance'] }],
    effect: 'limits',
    methods: [],
    values: { testLeadOhm: 0.2, twoWireUntrustedBelowOhm: 2, errorShareAt2Ohm: 0.1 },
    source: { status: 'published', source: "Instrument maker's note on low-resistance measurement (four-wire article)" },
  },
  {
    id: 'rd-continuity-cannot',
    decides: 'readings',
    statement: 'A beep or a low ohms reading proves only that something conducts: one strand left of many passes it and still cannot feed a motor or heater.',
    conditions: [{ field: 'reading', op: '=', values: ['resistance'] }],
    effect: 'limits',
    methods: [],
    values: { oneStrandExampleOhm: 0.1 },
    source: { status: 'published', source: 'Automotive training article on loaded testing' },
  },
  {
    id: 'rd-wiggle',
    decides: 'readings',
    statement:
      'Move, pull lightly and tap the harness every few centimetres while watching the drop under load or a min/max record; a jump marks the place, a steady high value means corrosion or a thin section.',
    conditions: [
      { field: 'damage', op: '=', values: ['broken', 'unknown'] },
      { field: 'situation', op: '=', values: ['intermittent-fault'] },
    ],
    effect: 'requires',
    methods: [],
    values: { stepMm: 50 },
    source: tradePractice,
  },
  {
    id: 'rd-lead-null',
    decides: 'readings',
    statement:
      'Short the tips together on the same points you will use, store that reading as zero, and subtract it; what the tips add by their contact is not taken out.',
    conditions: [{ field: 'reading', op: '=', values: ['resistance'] }],
    effect: 'requires',
    methods: [],
    values: { nullBeforeEachSeries: true },
    source: { status: 'published', source: 'Meter application note on removing two-wire lead error' },
  },
  {
    id: 'rd-lead-scatter',
    decides: 'readings',
    statement: 'After nulling, hand-held tips still scatter by about 0.05 ohm from one touch to the next; repeat and take the spread.',
    conditions: [{ field: 'reading', op: '=', values: ['resistance'] }],
    effect: 'informs',
    methods: [],
    values: { tipScatterOhm: 0.05 },
    source: tradePractice,
  },
  {
    id: 'rd-four-wire',
    decides: 'readings',
    statement:
      'Read milliohms with separate current and sense leads, sense tips inside the current tips, and state exactly which length of wire lies between the sense tips.',
    conditions: [{ field: 'reading', op: '=', values: ['resistance', 'four-wire'] }],
    effect: 'favours',
    methods: [],
    values: { leadsCount: 4, senseInsideCurrent: true },
    source: {
      status: 'published',
      source: "Instrument makers' notes on Kelvin measurement; ASTM B539 (connection resistance defined between termination points)",
    },
  },
  {
    id: 'rd-thermal-emf',
    decides: 'readings',
    statement:
      'Two unlike metals at unlike temperatures make a small voltage that adds to a millivolt reading. Cancel it: subtract the reading with no current from the reading with current, or take half the difference between the two current directions.',
    conditions: [
      { field: 'reading', op: '=', values: ['drop', 'four-wire'] },
      { field: 'situation', op: '=', values: ['joint-still-warm'] },
    ],
    effect: 'requires',
    methods: [],
    values: { formulaOnOff: 'R = (V_on - V_off) / I', formulaReversed: 'R = (V_forward - V_reverse) / (2 I)' },
    source: { status: 'published', source: "Meter maker's note on offset compensation; ASTM B539-02 clause 9 (current reversal)" },
  },
  {
    id: 'rd-thermal-emf-size',
    decides: 'readings',
    statement:
      'Clean copper crimped on copper makes at most about 0.2 microvolt per degree, but copper to oxidised copper up to about a millivolt per degree, so a corroded joint can make its own offset.',
    conditions: [
      { field: 'reading', op: '=', values: ['drop', 'four-wire'] },
      { field: 'situation', op: '=', values: ['joint-still-warm'] },
    ],
    effect: 'informs',
    methods: [],
    values: { copperCopperMaxVPerK: 2e-7, copperOxideMaxVPerK: 0.001 },
    source: { status: 'published', source: 'Low-level measurement note (Seebeck coefficients of copper pairs)' },
  },
  {
    id: 'rd-contact-tin-emf',
    decides: 'readings',
    statement: 'Copper to tin-lead makes one to three microvolts per degree.',
    conditions: [
      { field: 'reading', op: '=', values: ['drop', 'four-wire'] },
      { field: 'situation', op: '=', values: ['joint-still-warm'] },
    ],
    effect: 'informs',
    methods: [],
    values: { copperTinLeadVPerK: [1e-6, 3e-6] },
    source: { status: 'from memory', source: 'Low-level measurement handbooks' },
  },
  {
    id: 'rd-dry-circuit',
    decides: 'readings',
    statement:
      'To see a film before the test burns it through, keep open-circuit voltage and current small; a joint that is bad at low level and good at rated current has an oxide film.',
    conditions: [
      { field: 'circuit', op: '=', values: ['signal'] },
      { field: 'reading', op: '=', values: ['resistance', 'four-wire'] },
    ],
    effect: 'favours',
    methods: [],
    values: { openCircuitMaxV: 0.02, currentMaxA: 0.1 },
    source: { status: 'published', source: 'ASTM B539', edition: '2002', clause: 'dry circuit method' },
  },
  {
    id: 'rd-rated-current',
    decides: 'readings',
    statement:
      'For power wires read the drop at a current like the real load and wait until the number stops moving; the joint warms and its resistance follows.',
    conditions: [
      { field: 'circuit', op: '=', values: ['power', 'motor', 'lighting'] },
      { field: 'reading', op: '=', values: ['drop', 'four-wire'] },
    ],
    effect: 'requires',
    methods: [],
    values: { current: 'rated or real load', waitUntilStable: true },
    source: { status: 'published', source: 'ASTM B539', edition: '2002', clause: 'rated current method' },
  },
  {
    id: 'rd-load-flowing',
    decides: 'readings',
    statement:
      'A drop test only means something while current flows: with the key off or the plug out a path of very high resistance still shows full voltage.',
    conditions: [{ field: 'reading', op: '=', values: ['drop', 'voltage'] }],
    effect: 'requires',
    methods: [],
    values: { loadRequired: true },
    source: { status: 'published', source: 'Automotive trade training page on voltage-drop testing' },
  },
  {
    id: 'rd-meter-burden',
    decides: 'readings',
    statement:
      "A lead resistance or amps jack in series is part of the circuit: a drop read at the meter's own current says nothing of the drop at 20 A. Scale from ohms only as a floor, since a burnt or filmed contact gets worse with heat.",
    conditions: [{ field: 'reading', op: '=', values: ['resistance', 'drop'] }],
    effect: 'informs',
    methods: [],
    values: { scaleDownAllowed: false },
    source: tradePractice,
  },
  {
    id: 'rd-mv-drop-method',
    decides: 'readings',
    statement:
      'Where no milliohm meter is at hand, pass a known current and read the millivolt drop: the circular accepts it as the other way of measuring a bond.',
    conditions: [dropRead],
    effect: 'favours',
    methods: [],
    values: { formula: 'R = V / I' },
    source: { status: 'published', source: 'FAA AC 43.13-1B', edition: '1998 with change 1, 2001', clause: 'chapter 11, para 11-188 j, figure 11-19' },
  },
  {
    id: 'rd-disconnect-resistance',
    decides: 'readings',
    statement: 'Take power off and discharge capacitors before any ohms, diode or continuity reading.',
    conditions: [{ field: 'reading', op: '=', values: ['resistance', 'four-wire'] }],
    effect: 'requires',
    methods: [],
    values: { powerOff: true },
    source: { status: 'published', source: 'Multimeter safety instructions (several makers)' },
  },
  {
    id: 'rd-meter-category',
    decides: 'readings',
    statement:
      'Measurement category describes how much fault energy can come through the leads; meter, leads and accessories all count and the lowest rating governs.',
    conditions: [{ field: 'step', op: '=', values: ['measuring'] }],
    effect: 'informs',
    methods: [],
    values: { categories: ['I', 'II', 'III', 'IV'], lowestRatedPartGoverns: true },
    source: { status: 'published', source: 'IEC 61010 categories as explained in public training text and meter instructions' },
  },
  {
    id: 'rd-battery-fault-energy',
    decides: 'readings',
    statement:
      "A low-voltage battery system lies outside the mains categories, yet a large battery can drive thousands of amperes through a slipped probe: fused leads, and one hand's probe insulated to the tip.",
    conditions: [{ field: 'step', op: '=', values: ['measuring'] }],
    effect: 'informs',
    methods: [],
    values: { fusedLeads: true },
    source: tradePractice,
  },
  {
    id: 'rd-amps-jack',
    decides: 'readings',
    statement:
      'A meter set to amps is a short circuit: across a battery it can destroy itself or burn you. Use a clamp or a shunt for load currents, and only a meter with proper fuses in the amps input.',
    conditions: [{ field: 'step', op: '=', values: ['measuring'] }],
    effect: 'forbids',
    methods: [],
    values: { doNotConnectAmpsAcrossSource: true },
    source: { status: 'published', source: 'Multimeter instructions and public training text' },
  },
  {
    id: 'rd-no-probe-pierce',
    decides: 'readings',
    statement:
      'Do not leave a pierced insulation open: water enters at the hole and the wire corrodes from inside. Back-probe without spreading the contact, or seal the hole at once.',
    conditions: [inTheWet, { field: 'step', op: '=', values: ['measuring'] }],
    effect: 'forbids',
    methods: [],
    values: { sealAfterPiercing: true },
    source: { status: 'published', source: 'Passenger-car workshop manual note; mobile-technician magazine article' },
  },
  {
    id: 'rd-no-test-lamp',
    decides: 'readings',
    statement:
      'No test lamp on electronic circuits: its current can burn out a control unit. Use a meter of 10 megohm; a lamp that draws under 0.3 A only where a procedure names it.',
    conditions: [
      { field: 'circuit', op: '=', values: ['signal', 'data-pair', 'safety', 'airbag'] },
      { field: 'step', op: '=', values: ['measuring'] },
    ],
    effect: 'forbids',
    methods: [],
    values: { minMeterOhm: 1e7, lampMaxA: 0.3 },
    source: { status: 'published', source: "Car makers' service bulletin and workshop manual; marine engine service manual" },
  },
  {
    id: 'rd-wet-wire-under-load',
    decides: 'readings',
    statement:
      'A voltmeter alone can show battery voltage through a salt bridge or one strand; load the power wire with a lamp or resistor, through a fuse, before believing it. Not on wires of electronic or restraint systems.',
    conditions: [inTheWet, { field: 'reading', op: '=', values: ['voltage'] }, { field: 'circuit', op: '=', values: ['power', 'motor', 'lighting'] }],
    effect: 'requires',
    methods: [],
    values: { testLoadA: [0.2, 2] },
    source: tradePractice,
  },
])
