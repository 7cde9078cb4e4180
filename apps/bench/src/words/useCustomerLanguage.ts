import { type Language, languageFor } from '@shearline/jobfile'
import { useEffect, useState } from 'react'
import { bringEngineWords } from './languages.ts'

/**
 * The language a customer reads, once its words are here; null until then. It is the job's own, so that what was signed
 * stays the same words whoever looks at it later.
 */
export function useCustomerLanguage(tag: string | undefined): Language | null {
  const wanted = languageFor(tag ?? 'en')
  const [here, setHere] = useState<Language | null>(null)
  useEffect(() => {
    let wantedStill = true
    const show = (language: Language) => {
      if (wantedStill) setHere(language)
    }
    // Words that cannot be brought are no reason not to sign: English is always there, and it says so itself.
    bringEngineWords(wanted).then(
      () => show(wanted),
      () => show('en'),
    )
    return () => {
      wantedStill = false
    }
  }, [wanted])
  return here
}
