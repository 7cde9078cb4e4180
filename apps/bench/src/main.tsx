import '@fontsource-variable/atkinson-hyperlegible-next/index.css'
import '@fontsource-variable/atkinson-hyperlegible-mono/index.css'
import './tokens/tokens.css'
import './tokens/base.css'
import { StrictMode } from 'react'
import { createRoot } from 'react-dom/client'
import { App } from './app/App.tsx'
import { chosenTheme, showTheme } from './tokens/theme.ts'

showTheme(chosenTheme())

const place = document.getElementById('bench')
if (place === null)
  throw new Error('The page has no place for the bench: index.html must hold an element "bench".')
createRoot(place).render(
  <StrictMode>
    <App />
  </StrictMode>,
)
