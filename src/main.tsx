import { start } from '#app/wiring.tsx'

void start(document.getElementById('root')!)
