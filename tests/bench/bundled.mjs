import { fileURLToPath, pathToFileURL } from 'node:url'
import { build } from 'vite'

/**
 * A module of this folder bundled as the page is, since code that runs module by module is slower than what people get.
 *
 * @param {string} name of the bundle
 * @param {string} input its path from this folder
 */
export async function bundled(name, input) {
  const folder = fileURLToPath(new URL(`../../.cache/${name}/`, import.meta.url))
  await build({
    configFile: false,
    logLevel: 'error',
    build: {
      ssr: true,
      outDir: folder,
      emptyOutDir: true,
      rolldownOptions: {
        input: fileURLToPath(new URL(input, import.meta.url)),
        external: /^#ci\//,
        output: { entryFileNames: `${name}.mjs` },
      },
    },
  })
  return import(pathToFileURL(`${folder}${name}.mjs`).href)
}
