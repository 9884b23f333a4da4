import { defineConfig } from 'astro/config'
import { handbookIntegration } from './src/handbook/integration.ts'
import { publishedFiguresIntegration } from './src/learn/checks/integration.ts'
import { methodFactsIntegration } from './src/methodPage/integration.ts'
import { offlineIntegration } from './src/offline/integration.ts'
import { quotedRules } from './src/plan/quotedRules.ts'

export default defineConfig({
  output: 'static',
  base: process.env.STRANDWISE_BASE ?? '/',
  trailingSlash: 'always',
  integrations: [handbookIntegration(), methodFactsIntegration(), publishedFiguresIntegration(), offlineIntegration()],
  markdown: { syntaxHighlight: false },
  devToolbar: { enabled: false },
  // Reading and planning come to the worker one after the other.
  vite: { worker: { format: 'es', plugins: () => [quotedRules()] } },
  build: { inlineStylesheets: 'never' },
  security: {
    csp: {
      algorithm: 'SHA-256',
      directives: [
        "default-src 'none'",
        "img-src 'self' data:",
        "font-src 'self'",
        "connect-src 'self'",
        "manifest-src 'self'",
        "worker-src 'self'",
        "base-uri 'none'",
        "form-action 'none'",
      ],
    },
  },
})
