import type { SameCodes } from '@shearline/jobfile'
import type { vaultWords as english } from '../en/vault.ts'

/** الخزنة: من يستطيع فتح أسرار المركبة، وختم قراءتين، والفتح مع ذكر السبب. */
export const vaultWords: SameCodes<typeof english> = {
  'vault.recipients': 'من يستطيع فتح أسرار المركبة',
  'vault.recipients.about':
    'تُختم النسخ الاحتياطية لبيانات المركبة على هذا الجهاز قبل أن تُحفظ أو تُرسل. لا يستطيع فتحها إلا أصحاب هذه المفاتيح.',
  'vault.recipients.none': 'لا أحد بعد: حتى يوجد واحد لا يمكن ختم أي نسخة احتياطية هنا.',
  'vault.recipients.office': 'المكتب يختم لهذه المفاتيح أيضًا',
  'vault.recipients.office.about':
    'لا تأخذ مفتاحًا إلا إذا عرفت صاحبه: يستطيع صاحبه فتح كل ما يُختم هنا من الآن.',
  'vault.recipients.take': 'أخذه',
  'vault.recipients.take-named': 'أخذ مفتاح {name}',
  'vault.recipients.key': 'المفتاح العام',
  'vault.recipients.key.hint': 'يبدأ بـ age1. لا تُدخل هنا مفتاحًا خاصًا أبدًا.',
  'vault.recipients.name': 'لمن هذا المفتاح',
  'vault.recipients.add': 'إضافة هذا المفتاح',
  'vault.recipients.remove': 'حذف',
  'vault.recipients.remove-named': 'حذف {name}',
  'vault.seal.no-recipient': 'لم يُذكر مفتاح يمكنه فتح نسخة احتياطية مختومة.',
  'vault.seal.to-device': 'اذكر واحدًا في صفحة الجهاز',
  'vault.seal.about':
    'يُقارن الملفان ويُختم أحدهما على هذا الجهاز؛ لا يُحفظ ولا يُرسل إلا المختوم. يستطيع فتحه: {names}.',
  'vault.seal.first': 'اختيار القراءة الأولى',
  'vault.seal.second': 'اختيار القراءة الثانية',
  'vault.seal.none': 'لم يُختر بعد',
  'vault.seal.picked':
    '{name}، {count, plural, zero {بلا بايت} one {بايت واحد} two {بايتان} few {# بايتات} many {# بايتًا} other {# بايت}}',
  'vault.seal.same-file': 'هذا الملف نفسه مرتين. اقرأ الذاكرة مرة ثانية في ملف آخر.',
  'vault.seal.do': 'مقارنة وختم',
  'vault.seal.busy': 'تجري المقارنة والختم…',
  'vault.digest.first': 'القراءة الأولى (بصمة بمفتاح)',
  'vault.digest.second': 'القراءة الثانية (بصمة بمفتاح)',
  'vault.sealed-file': 'نسخة احتياطية مختومة',
  'vault.secrets': 'المختوم في هذه المهمة',
  'vault.secret':
    '{what}، {count, plural, zero {بلا بايت} one {بايت واحد} two {بايتان} few {# بايتات} many {# بايتًا} other {# بايت}}، خُتم {when}',
  'vault.secret.opened': 'فتحه {by} {when}: {reason}',
  'vault.open': 'فتحه',
  'vault.open.reason': 'لماذا يُفتح',
  'vault.open.reason.hint': 'يدخل السجل قبل أن يُفتح شيء.',
  'vault.open.identity': 'المفتاح الخاص',
  'vault.open.identity.hint': 'الملف كما طُبع أو حُفظ. لا يُحتفظ به.',
  'vault.open.identity.file': 'أخذه من ملفه',
  'vault.open.identity.show': 'إظهار المفتاح',
  'vault.open.identity.hide': 'إخفاء المفتاح',
  'vault.open.identity.no-key': 'الملف «{name}» أكبر من أن يكون مفتاحًا خاصًا.',
  'vault.open.passphrase': 'عبارة مرور ذلك المفتاح، إن كانت له',
  'vault.open.do': 'تسجيل السبب والفتح',
  'vault.open.save': 'حفظ الملف المفتوح',
  'vault.open.right': 'هو نفسه الذي سُجِّل عند ختمه. احذف الملف المحفوظ حالما تنتهي الحاجة إليه.',
  'vault.open.wrong': 'ليس هو الذي سُجِّل عند ختمه.',
  'vault.open.not-here': 'الملف المختوم ليس هنا ولا على الخادم.',
}
