/** Reports kept beside what was understood, and what was confirmed before clearing. */
export const reportWords = {
  'report.kept-beside':
    'The report is kept beside this list as text. Opening codes, telephone numbers and mail addresses in it are blotted out first.',
  'report.kept.title': 'Reports on record',
  'report.kept.one': 'Scan {phase}, {day} {time}: {name}',
  'report.kept.pasted': 'pasted text',
  'report.kept.loading': 'The report is being fetched.',
  'report.kept.gone':
    'The report is not here: it was deleted when its time was over, or this device has no connection.',
  'clear.airbag':
    'Airbag codes from before the work stay, and so does all else in their unit. Nobody clears them to make a lamp go out.',
  'fact.clear-acknowledged.scan-saved': 'Confirmed: every code is on record first.',
  'fact.clear-acknowledged.airbag': 'Confirmed: airbag codes from before the work stay.',
  'fact.clear-acknowledged.emissions': 'Confirmed: emissions readiness starts anew.',
  'fact.clear-acknowledged.permanent': 'Confirmed: permanent codes stay until the car clears them.',
} as const
