import { en } from '#words/en/index.ts'
import { setWords } from '#words/words.ts'

/** Every test reads the page in American English unless it sets another language. */
setWords('en', en, 'en-US')
