import type { SameCodes } from '../catalogues.ts'
import type {
  explanationWords as englishExplanations,
  faultWords as englishFaults,
  readingWords as englishReadings,
} from '../en/evidence.ts'

/** من أين جاءت القراءات ومتى أُخذت. */
export const readingWords: SameCodes<typeof englishReadings> = {
  'vin-source.glass': 'الزجاج',
  'vin-source.plate': 'اللوحة',
  'vin-source.document': 'الوثيقة',
  'vin-source.bus': 'السيارة نفسها',
  'battery.flooded': 'بطارية رصاص حمضية سائلة',
  'battery.efb': 'بطارية رصاص سائلة معزّزة',
  'battery.agm': 'بطارية رصاص بالألياف الزجاجية',
  'battery.gel': 'بطارية رصاص هلامية',
  'battery.lithium': 'بطارية ليثيوم',
  'battery.unknown': 'نوع البطارية غير معروف',
  'during.rest': 'في السكون',
  'during.session': 'أثناء الجلسة',
  'during.after': 'بعد العمل',
  'rule.replace-all': 'جلسة استبدال الكل: كان المقرر كتابة قائمة المفاتيح المقبولة من جديد',
  'rule.append': 'إضافة مفتاح: كان المقرر إضافة المفاتيح الجديدة إلى القائمة',
  'rule.append-drop-oldest':
    'إضافة مفتاح: كان المقرر إضافة المفاتيح الجديدة، والقائمة الممتلئة تُسقط أقدم مواضعها',
  'rule.numbered-slots': 'مواضع مرقمة: كان المقرر وضع كل مفتاح في موضع خاص به',
  'rule.unknown': 'لم تكن قاعدة التعريف معروفة فعوملت على أنها استبدال للكل',
  'break.supply': 'انقطعت التغذية',
  'break.link': 'انقطع الاتصال',
  'break.time-out': 'انتهت المهلة',
  'break.key-refused': 'رُفض مفتاح',
  'break.ignition-off': 'أُغلق الإشعال',
  'break.operator': 'أوقفها الفني',
  'break.unknown': 'السبب غير معروف',
}

/** لماذا قد يكون العمل أثار عطلًا، بحسب قاعدة مقارنة الأعطال. */
export const explanationWords: SameCodes<typeof englishExplanations> = {
  'explanation.reset-silence': 'أعاد العمل تشغيل وحدة التحكم التي يسميها هذا الرمز؛ فصمتت لحظة.',
  'explanation.muted-silence': 'أمر العمل وحدة التحكم التي يسميها هذا الرمز بالصمت مدة.',
  'explanation.supply-low-supply-codes': 'كانت التغذية منخفضة أو منقطعة أثناء العمل.',
  'explanation.supply-low-silence':
    'كانت التغذية منخفضة أو منقطعة أثناء العمل؛ عندئذ تصمت وحدات التحكم واحدة بعد أخرى.',
  'explanation.key-refused': 'عُرض أثناء العمل مفتاح لا تعرفه السيارة.',
  'explanation.immobiliser-teaching': 'كان مانع التشغيل في جلسته أثناء العمل.',
  'explanation.battery-off-steering':
    'كانت البطارية مفصولة؛ يجد المقود وسطه من جديد حين يُدار من أقصى جهة إلى أقصى الأخرى.',
}

/** أصناف الأعطال للعميل: عنوان، وما يجوز قوله عنها لا أكثر. */
export const faultWords: SameCodes<typeof englishFaults> = {
  'phase.before': 'قبل العمل',
  'phase.after': 'بعد العمل',
  'phase.cleared': 'بعد المسح',
  'phase.cycled': 'بعد دورة إشعال',
  'fault-class.there-before-still': 'كانت موجودة قبل العمل وما زالت',
  'fault-class.there-before-gone': 'كانت موجودة قبل العمل ولم تُذكر في الفحص الأخير',
  'fault-class.there-before-back': 'كانت موجودة قبل العمل ومُسحت وعادت',
  'fault-class.raised-by-work': 'أثارها العمل',
  'fault-class.new-unexplained': 'جديدة وبلا تفسير',
  'fault-class.permanent': 'دائمة',
  'fault-class.not-comparable': 'تعذرت مقارنتها',
  'fault-means.there-before-still':
    'أبلغت السيارة عنها قبل أن يُمس شيء، ثم في الفحص الأخير. لم يأت بها العمل.',
  'fault-means.there-before-gone':
    'أبلغت السيارة عنها قبل أن يُمس شيء، ولم تُبلغ عنها في الفحص الأخير. زوال الرمز لا يثبت أن سببه أُصلح.',
  'fault-means.there-before-back': 'أبلغت السيارة عنها قبل أن يُمس شيء. مُسحت ثم عادت.',
  'fault-means.raised-by-work':
    'لم تكن موجودة من قبل. ظهرت مع العمل للسبب المذكور. يقول العمود الأخير هل زالت.',
  'fault-means.new-unexplained':
    'لم تكن موجودة قبل العمل، ولا يحوي السجل سببًا لها. قد تكون لها صلة بالعمل وقد لا تكون.',
  'fault-means.permanent':
    'لا تمسحها إلا السيارة نفسها بعد نجاح اختباراتها. لا يستطيع أي جهاز مسحها (SAE J1979، الخدمة 0A).',
  'fault-means.not-comparable':
    'لم تُقرأ وحدة التحكم قبل العمل وبعده معًا، أو أظهرت أقل مما يكفي. لا يمكن قول شيء عما تغيّر.',
  'claim.failing-now': 'قائم وقت الفحص',
  'claim.pending': 'معلّق',
  'claim.confirmed': 'مؤكد',
  'claim.failed-this-cycle': 'أخفق في هذه الدورة',
  'claim.failed-since-clear': 'أخفق منذ المسح',
  'claim.warning-lamp': 'يطلب مصباح التحذير الخاص به',
  'claim.permanent': 'في القائمة الدائمة',
  'claim.not-tested-since-clear': 'لم يُختبر منذ المسح',
  'claim.not-tested-this-cycle': 'لم يُختبر في هذه الدورة',
  'claim.unit-not-read': 'لم تُقرأ وحدة التحكم',
  'claim.absent': 'لم يُذكر',
  'claim.absent-but-untested': 'لم يُذكر، لكنه لم يُختبر بعد',
  'claim.none': 'مذكور',
}
