import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join, relative, resolve, sep } from 'node:path'
import react from '@vitejs/plugin-react'
import type { Plugin } from 'vite'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  // Relative addresses, so the built page runs from any folder of any host.
  base: './',
  plugins: [react(), forbidOtherOrigins(), fillInServiceWorker()],
  build: { target: 'es2023' },
  server: { port: 4810 },
  preview: { port: 4820 },
  test: {
    // Property tests run as long as their cases need; none asserts a time, and a busy machine is no failure.
    testTimeout: 300_000,
    include: ['tests/**/*.test.{ts,tsx}'],
    setupFiles: ['tests/support/seedProperties.ts', 'tests/support/inEnglish.ts'],
    environment: 'node',
  },
})

/**
 * The built page may load and ask for nothing but its own files, whatever a link or a dropped file contains.
 * Styles may stand in attributes (charts and drags set them); the development server needs more and is left alone.
 */
function forbidOtherOrigins(): Plugin {
  const policy = [
    "default-src 'self'",
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    'media-src blob:',
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ]
  return {
    name: 'ridewright:content-security-policy',
    apply: 'build',
    transformIndexHtml: () => [
      { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: policy.join('; ') }, injectTo: 'head-prepend' },
    ],
  }
}

/** Tells the built service worker which files make up this build, and gives it a version that changes when any of them does. */
function fillInServiceWorker(): Plugin {
  let folder = ''
  let entry = ''
  return {
    name: 'ridewright:service-worker',
    apply: 'build',
    configResolved: (config) => {
      folder = resolve(config.root, config.build.outDir)
    },
    generateBundle: (_, bundle) => {
      entry = Object.values(bundle).find((output) => output.type === 'chunk' && output.isEntry)?.fileName ?? ''
    },
    writeBundle: () => {
      const worker = join(folder, 'sw.js')
      const files = filesOf(folder).filter((file) => file !== 'sw.js')
      const hash = createHash('sha256')
      for (const file of files) hash.update(file).update(readFileSync(join(folder, file)))
      const version = hash.digest('hex').slice(0, 12)
      const build = { version, entry, files: ['./', ...files.filter((file) => file !== 'index.html')] }
      writeFileSync(worker, readFileSync(worker, 'utf8').replace(/^const BUILD = .*$/m, `const BUILD = ${JSON.stringify(build)}`))
    },
  }
}

/** Every file below a folder, as sorted relative addresses. */
function filesOf(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).replaceAll(sep, '/'))
    .sort()
}
