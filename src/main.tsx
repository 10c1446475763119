import { start } from '#app/wiring.tsx'

const root = document.getElementById('root')!

start(root).catch((error: unknown) => {
  // In English, since it may be the words that could not be fetched.
  root.textContent = `Ridewright could not start. Everything saved on this device is untouched; reload the page. Details: ${error}`
  throw error
})
