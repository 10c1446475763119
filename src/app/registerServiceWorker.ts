/**
 * Lets the page open without a connection from the second visit on, where the browser allows it.
 * Only in a build: the development server's files change under the same name.
 */
export function registerServiceWorker(): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return
  addEventListener('load', () => {
    // Refused from a file on disk or in some private windows. The page then works as long as it is open, so nothing is said.
    navigator.serviceWorker.register('./sw.js').catch(() => {})
  })
}
