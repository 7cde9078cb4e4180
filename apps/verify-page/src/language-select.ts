/** @module The choice of the language, each by the name it calls itself. */
import { type Language, languages } from '@shearline/jobfile'
import { element } from './dom.ts'
import { ownNames } from './words/languages.ts'
import { speak, spokenLanguage, t } from './words.ts'

/** The labelled select; `changed` is called once the page speaks the chosen language. */
export function languageSelect(changed: () => void): HTMLElement {
  const select = element(
    'select',
    { id: 'language' },
    ...languages.map((one) => element('option', { value: one, lang: one }, ownNames[one])),
  )
  select.value = spokenLanguage()
  select.addEventListener('change', () => {
    speak(select.value as Language)
    changed()
    // The select was made anew with its label; whoever works by keyboard goes on from it.
    document.getElementById('language')?.focus()
  })
  return element(
    'div',
    { class: 'language' },
    element('label', { for: 'language' }, t('page.language')),
    select,
  )
}
