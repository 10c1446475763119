import { createReadStream } from 'node:fs'
import { stat } from 'node:fs/promises'
import { createServer, type Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { extname, join, normalize } from 'node:path'

export interface StaticServer {
  /** Ends in a slash. */
  url: string
  /** Frees the port and drops open connections, as a machine that goes away does. */
  stop: () => Promise<void>
}

const TYPES: Record<string, string> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
}

/** Serves a folder's files on a free port of this machine, as the plainest web host would: no fallback, no rewriting. */
export async function serveFolder(folder: string, port = 0): Promise<StaticServer> {
  const server = createServer(async (request, response) => {
    const file = fileFor(folder, request.url ?? '/')
    const found = file !== undefined && (await stat(file).catch(() => undefined))?.isFile()
    if (!found) {
      response.writeHead(404, { 'content-type': 'text/plain' }).end('Not found')
      return
    }
    response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream', 'cache-control': 'no-cache' })
    createReadStream(file).pipe(response)
  })
  await new Promise<void>((resolve) => server.listen(port, '127.0.0.1', resolve))
  return { url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`, stop: () => stop(server) }
}

function fileFor(folder: string, address: string): string | undefined {
  const path = normalize(decodeURIComponent(new URL(address, 'http://localhost').pathname))
  return path.includes('..') ? undefined : join(folder, path.endsWith('/') ? `${path}index.html` : path)
}

function stop(server: Server): Promise<void> {
  server.closeAllConnections()
  return new Promise((resolve) => server.close(() => resolve()))
}
