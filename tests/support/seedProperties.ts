import fc from 'fast-check'
import { SEED } from './seed.ts'

fc.configureGlobal({ seed: SEED })
