import { start } from '#app/wiring.tsx'

const root = document.getElementById('root')!

start(root).catch((error: unknown) => {
  root.textContent = `Ridewright could not start. What is saved on this machine is untouched; load the page again. What the program said: ${error}`
  throw error
})
