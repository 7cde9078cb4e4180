/** The light the page is read in: as the device says, or chosen. Kept on this device only. */
export const themes = ['auto', 'light', 'dark', 'sun'] as const
export type Theme = (typeof themes)[number]

const place = 'shearline-theme'

/** The theme chosen on this device; `auto` follows the device. */
export function chosenTheme(): Theme {
  const kept = localStorage.getItem(place)
  return themes.find((theme) => theme === kept) ?? 'auto'
}

/** Shows a theme and remembers it. */
export function showTheme(theme: Theme): void {
  if (theme === 'auto') delete document.documentElement.dataset.theme
  else document.documentElement.dataset.theme = theme
  localStorage.setItem(place, theme)
}
