import type { SameCodes } from '../catalogues.ts'
import type { comparisonWords as english } from '../en/faults.ts'

/** من أين جاءت قواعد مقارنة الأعطال، وما يشهد لكل صنف، وما يستحق القول عن الفحوص. */
export const comparisonWords: SameCodes<typeof english> = {
  'explanation-source.reset-silence':
    'الممارسة العامة للمهنة 4.5 و4.6؛ وكون إعادة التشغيل تُسكت الوحدة استنتاج',
  'explanation-source.muted-silence': 'ISO 14229-1، الخدمة 28؛ الممارسة العامة للمهنة 4.5 و4.6',
  'explanation-source.supply-low-supply-codes':
    'الممارسة العامة للمهنة 4.6؛ معاني الرموز SAE J2012، من الذاكرة',
  'explanation-source.supply-low-silence': 'الممارسة العامة للمهنة 4.5',
  'explanation-source.key-refused': 'الممارسة العامة للمهنة 1.2.13 و4.6؛ معاني الرموز SAE J2012، من الذاكرة',
  'explanation-source.immobiliser-teaching':
    'الممارسة العامة للمهنة 1.2.13 و4.6؛ معاني الرموز SAE J2012، من الذاكرة',
  'explanation-source.battery-off-steering': 'ممارسة شائعة بلا مصدر؛ معنى الرمز SAE J2012، من الذاكرة',

  'evidence.recorded': '{recording}، {seconds} s',
  'evidence.recorded-detail': '{recording}، {seconds} s، {detail}',
  'evidence.recorded.at': '{recording}، {time}',
  'evidence.recorded-detail.at': '{recording}، {time}، {detail}',
  'evidence.session-opened': 'فُتحت جلسة التعريف {at}',
  'evidence.key-refused': 'رُفض مفتاح {at}',
  'evidence.supply-fell': 'هبطت التغذية إلى {minimum}، والحد الأدنى {floor}',
  'evidence.noted': '{words}',
  'evidence.other-failure-type': '{phase}: الرمز نفسه بنوع إخفاق آخر',
  'evidence.reported-as': '{phase}: ذُكر على هيئة {raw}',

  'fault-finding.no-before-scan': 'لا فحص من قبل العمل: لا يمكن وصف أي عطل بأنه جديد أو قديم.',
  'fault-finding.unit-not-read-before': 'لم تُقرأ {unit} قبل العمل: لا يمكن مقارنة أعطالها.',
  'fault-finding.unit-not-read-again': 'قُرئت {unit} قبل العمل ولم تُقرأ بعده.',
  'fault-finding.cleared-not-retested': '{unit}: مُسح {codes} ولم يُختبر من جديد بعد.',
  'fault-finding.fault-code-unreadable': '«{code}» ليس رمز عطل بصيغة SAE J2012؛ يُقارن كما كُتب.',
  'fault-finding.units-perhaps-one':
    'قد تكون «{unit}» و«{other}» وحدة تحكم واحدة؛ وهما تُقارنان على أنهما اثنتان.',
  'fault-finding-do.no-before-scan': 'اذكر ذلك في التسليم. في المرة القادمة افحص كل وحدة قبل أن يُمس شيء.',
  'fault-finding-do.unit-not-read-before': 'اذكر ذلك في التسليم.',
  'fault-finding-do.unit-not-read-again': 'افحص هذه الوحدة مرة أخرى.',
  'fault-finding-do.cleared-not-retested': 'أغلق الإشعال، ودع السيارة تنام، ثم افتحه وافحص مرة أخرى.',
  'fault-finding-do.cleared-not-retested.cycled':
    'دع الاختبارات تجري (بالسير أو بالانتظار كما تريد السيارة) ثم افحص مرة أخرى.',
  'fault-finding-do.fault-code-unreadable': 'اقرأه مرة أخرى من المصدر.',
  'fault-finding-do.units-perhaps-one': 'اذكر هل هما واحدة.',

  'report-finding.no-code-found': 'لم يُعثر فيه على رمز عطل ولا على عبارة «لا أعطال».',
  'report-finding.line-too-long':
    'في السطر {length, plural, zero {لا خانات} one {خانة واحدة} two {خانتان} few {# خانات} many {# خانة} other {# خانة}}؛ لم يُقرأ إلا أول {read}.',
  'report-finding.report-too-long':
    'في التقرير {length, plural, zero {لا خانات} one {خانة واحدة} two {خانتان} few {# خانات} many {# خانة} other {# خانة}}؛ لم يُقرأ إلا أول {read}.',
  'report-finding-do.no-code-found': 'أدخل الأعطال كتابةً، أو أضف التقرير إلى المهمة ملفًا.',
  'report-finding-do.line-too-long': 'انظر في بقيته بنفسك.',
  'report-finding-do.report-too-long': 'قسّمه إلى أجزاء.',
}
