import '@fontsource-variable/atkinson-hyperlegible-next/index.css'
import '@fontsource-variable/atkinson-hyperlegible-mono/index.css'
import './tokens/tokens.css'
import './tokens/base.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { Spoken } from './app/Spoken.tsx'
import { sayWhatIsUnfit } from './app/unfit.ts'
import { chosenTheme, showTheme } from './tokens/theme.ts'
import { chosenLanguage, speak } from './words/languages.ts'

showTheme(chosenTheme())
sayWhatIsUnfit()

const place = document.getElementById('bench')
if (place === null)
  throw new Error('The page has no place for the bench: index.html must hold an element "bench".')
const show = () =>
  createRoot(place).render(
    <StrictMode>
      <Spoken />
    </StrictMode>,
  )
// Words that cannot be brought must not keep anyone from his jobs: English is always there.
speak(chosenLanguage()).then(show, show)
