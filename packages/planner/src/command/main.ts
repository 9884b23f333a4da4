#!/usr/bin/env node
import { stderr, stdin, stdout } from 'node:process'
import { run } from './run.ts'

process.exitCode = await run(process.argv.slice(2), { stdin, stdout, stderr })
