import { fileURLToPath } from 'node:url'
import { mergeConfig } from 'vite'
import page from '../../vite.config.ts'
import { noteWhatIsDrawn } from './drawn.ts'

const root = fileURLToPath(new URL('../..', import.meta.url))

/** The page as it is published, but for a note of each control that is drawn. */
export default mergeConfig(page, { root, plugins: [noteWhatIsDrawn(root)] })
