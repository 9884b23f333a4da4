export interface BrokenFragment {
  readonly name: string
  readonly fragment: string
  readonly fault: 'version' | 'too-long' | 'damaged' | 'not-a-job' | 'markup'
}

const letters = (binary: string): string => btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')

/** The check word of a link, implemented again so that a test can build links that fail after it. */
function checkWord(text: string): string {
  let hash = 0x811c9dc5
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193)
  return (hash >>> 0).toString(36).padStart(7, '0')
}

/** Thirty and more broken variants of one good fragment. */
export function brokenFragments(good: string, deflate: (text: string) => string): readonly BrokenFragment[] {
  const [, check = '', data = ''] = good.split('.')
  const holding = (text: string) => `job1.${checkWord(text)}.${letters(deflate(text))}`
  const job = { version: 1, circuit: { kind: 'motor', supplyV: 12 } }
  const script = '<script>alert(1)</script>'
  const with_ = (change: object) => holding(JSON.stringify({ ...job, ...change }))
  const cut = [0.1, 0.25, 0.5, 0.75, 0.9].map((share) => ({ name: `cut to ${share}`, fragment: good.slice(0, Math.ceil(good.length * share)) }))
  return [
    ...cut.map((item) => ({ ...item, fault: 'damaged' as const })),
    { name: 'without its last letter', fragment: good.slice(0, -1), fault: 'damaged' },
    { name: 'without its first letters', fragment: `job1.${check}.${data.slice(3)}`, fault: 'damaged' },
    { name: 'without data', fragment: `job1.${check}.`, fault: 'damaged' },
    { name: 'without check word', fragment: `job1.${data}`, fault: 'damaged' },
    { name: 'the prefix alone', fragment: 'job1.', fault: 'damaged' },
    { name: 'no version', fragment: 'job.', fault: 'damaged' },
    { name: 'an old version', fragment: `job0.${check}.${data}`, fault: 'version' },
    { name: 'a later version', fragment: `job2.${check}.${data}`, fault: 'version' },
    { name: 'a far later version', fragment: `job99999.${check}.${data}`, fault: 'version' },
    { name: 'another check word', fragment: `job1.0000000.${data}`, fault: 'damaged' },
    { name: 'two letters swapped', fragment: `job1.${check}.${data.slice(0, 40)}${data[41]}${data[40]}${data.slice(42)}`, fault: 'damaged' },
    { name: 'the data twice', fragment: `${good}.${data}`, fault: 'damaged' },
    { name: 'spaces in it', fragment: `job1.${check}.${data.slice(0, 20)}%20${data.slice(20)}`, fault: 'damaged' },
    { name: 'characters outside the alphabet', fragment: `job1.${check}.${data.slice(0, 20)}é${data.slice(21)}`, fault: 'damaged' },
    { name: 'a script behind the data', fragment: `${good}${script}`, fault: 'damaged' },
    { name: 'a script as data', fragment: `job1.${check}.${script}`, fault: 'damaged' },
    { name: 'huge', fragment: `job1.${check}.${'A'.repeat(100_000)}`, fault: 'too-long' },
    { name: 'huge and valid letters', fragment: `${good}${data.repeat(100)}`, fault: 'too-long' },
    { name: 'unpacking to far more than a job', fragment: holding(`[${'0,'.repeat(2_000_000)}0]`), fault: 'too-long' },
    { name: 'not packed at all', fragment: `job1.${checkWord('{}')}.${letters('{}')}`, fault: 'damaged' },
    { name: 'no JSON', fragment: holding('title: pump'), fault: 'damaged' },
    { name: 'half of a JSON', fragment: holding('{"version":1,"circuit":'), fault: 'damaged' },
    { name: 'an empty object', fragment: holding('{}'), fault: 'not-a-job' },
    { name: 'a list', fragment: holding('[]'), fault: 'not-a-job' },
    { name: 'a number', fragment: holding('7'), fault: 'not-a-job' },
    { name: 'null', fragment: holding('null'), fault: 'not-a-job' },
    { name: 'nested far deeper than any job', fragment: holding(`${'['.repeat(90_000)}${']'.repeat(90_000)}`), fault: 'not-a-job' },
    {
      name: 'a title nested far deeper than any job',
      fragment: holding(`{"version":1,"title":${'{"a":'.repeat(20_000)}0${'}'.repeat(20_000)}}`),
      fault: 'not-a-job',
    },
    { name: 'a job with half of its answers', fragment: with_({}), fault: 'not-a-job' },
    { name: 'a job of an old version', fragment: with_({ version: 0 }), fault: 'not-a-job' },
    { name: 'an unknown field', fragment: with_({ onload: 'alert(1)' }), fault: 'not-a-job' },
    { name: 'a prototype', fragment: holding('{"version":1,"__proto__":{"polluted":true}}'), fault: 'not-a-job' },
    { name: 'a script in the title', fragment: with_({ title: script }), fault: 'markup' },
    { name: 'a script in a choice', fragment: with_({ circuit: { kind: script, supplyV: 12 } }), fault: 'markup' },
    { name: 'a script in a number', fragment: with_({ circuit: { kind: 'motor', supply: `12 V${script}` } }), fault: 'markup' },
    { name: 'a script as a field', fragment: with_({ [script]: 1 }), fault: 'markup' },
    { name: 'an image in a tool’s name', fragment: with_({ tools: [{ name: '<img src=x onerror=alert(1)>', kind: 'iron', powerW: 60 }] }), fault: 'markup' },
  ]
}
