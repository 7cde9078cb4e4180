import { useSyncExternalStore } from 'react'
import { language } from '../words/index.ts'
import { onLanguage } from '../words/languages.ts'
import { App } from './App.tsx'

/** The bench in the language that is spoken now. A change builds it anew: every string of it is another one. */
export function Spoken() {
  const spoken = useSyncExternalStore(onLanguage, language)
  return <App key={spoken} />
}
