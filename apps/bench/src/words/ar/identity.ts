import type { SameCodes } from '@shearline/jobfile'
import type { identityWords as english } from '../en/identity.ts'

/** أي مفتاح وأي وحدة تحكم: ما تُظهره السيارة، والأسماء التي قد تعني واحدًا. */
export const identityWords: SameCodes<typeof english> = {
  'keys.shown-as': 'كيف تُظهر السيارة هذا المفتاح',
  'keys.shown-as.hint':
    'بعض السيارات ترقم كل مفتاح أو تُظهر هويته: «المفتاح 3». المفاتيح التي تظهر متماثلة مفتاح واحد عند السيارة.',
  'keys.shown-as.is': 'تُظهره السيارة هكذا: {words}',
  'keys.shown-as.title': 'كيف تُظهر السيارة كل مفتاح',
  'keys.shown-as.record': 'تسجيل ما تُظهره السيارة',
  'tally.shown-as':
    '{words}: {count, plural, zero {لا مفتاح {keys}} one {المفتاح {keys}} two {المفتاحان {keys}، وهما مفتاح واحد عند السيارة} few {المفاتيح {keys}، وهي مفتاح واحد عند السيارة} many {المفاتيح {keys}، وهي مفتاح واحد عند السيارة} other {المفاتيح {keys}، وهي مفتاح واحد عند السيارة}}',
  'units.ask.title': 'وحدة تحكم واحدة أم اثنتان؟',
  'units.ask':
    'تسمي الفحوص «{unit}» و«{other}». أنت وحدك تستطيع أن ترى هل هما وحدة التحكم نفسها. وحتى تقول ذلك تُقارنان على أنهما اثنتان.',
  'units.ask.same': 'وحدة واحدة',
  'units.ask.two': 'وحدتان',
  'faults.unit.also': '{unit} (أيضًا: {names})',
  'fact.unit-matched.same': '{unit} و{other} وحدة تحكم واحدة',
  'fact.unit-matched.two': '{unit} و{other} وحدتا تحكم',
}
