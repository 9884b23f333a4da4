#!/usr/bin/env node
// Committed as it is: npm links a command only if its file exists when it installs, and dist is built later.
import { existsSync } from 'node:fs'

const main = new URL('../dist/command/main.js', import.meta.url)
if (existsSync(main)) await import(main.href)
else {
  process.stderr.write('strandwise: not built yet; run "npm start" or "npm run build" in the clone first\n')
  process.exitCode = 3
}
