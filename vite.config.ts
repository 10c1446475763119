import react from '@vitejs/plugin-react'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  // Relative addresses, so the built page runs from any folder of any host.
  base: './',
  plugins: [react()],
  build: { target: 'es2023' },
  test: { include: ['tests/**/*.test.{ts,tsx}'], environment: 'node' },
})
