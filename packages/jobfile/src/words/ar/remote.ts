import type { SameCodes } from '../catalogues.ts'
import type { remoteWords as english } from '../en/remote.ts'

/** هل جهازا تحكم من عائلة راديو واحدة: الاستنتاج وأسبابه وما صودف أثناء القياس. */
export const remoteWords: SameCodes<typeof english> = {
  'remote-verdict.same': 'عائلة الراديو نفسها',
  'remote-verdict.different': 'راديو مختلف',
  'remote-verdict.unsure': 'غير مؤكد',

  'remote-reason.modulation':
    '{same, select, yes {كلاهما يرسل بـ{original}.} other {الأصلي يرسل بـ{original} والجديد بـ{new}.}}',
  'remote-reason.modulation-unknown': 'طريقة الإرسال غير واضحة: الأصلي {original}، الجديد {new}.',
  'remote-reason.carrier': 'بين الحاملين {difference}: الأصلي {original}، الجديد {new}.',
  'remote-reason.carrier-unknown': 'التردد المركزي لأحد التسجيلين غير معروف، لذا لا يمكن مقارنة الحاملين.',
  'remote-reason.carrier-drifted':
    'الحامل الجديد منحرف بمقدار {difference}. قد لا يسمعه مستقبل ضيق في السيارة إلا من قرب، مع أن خليته جديدة.',
  'remote-reason.timing':
    '{unmatched, select, both {لكل منهما أطوال نبضات ليست في الآخر} other {أطوال النبضات تختلف بنسبة {percent} %}}: الأصلي {original} ميكروثانية، الجديد {new} ميكروثانية.',
  'remote-reason.timing-part':
    'لا يمكن مقارنة إلا جزء من أطوال النبضات: الأصلي {original} ميكروثانية، الجديد {new} ميكروثانية.',
  'remote-reason.deviation': 'إزاحتا التردد تختلفان بنسبة {percent} %: الأصلي {original}، الجديد {new}.',
  'remote-reason.symbol-rate':
    'معدلا الرموز يختلفان بنسبة {percent} %: الأصلي {original}، الجديد {new} في الثانية.',
  'remote-reason.other-sender-matches':
    'مرسل أضعف في أحد التسجيلين يوافق التسجيل الآخر: ربما لم يكن الأقوى هو جهاز التحكم.',
  'remote-reason.no-sender':
    '{side, select, original {الأصلي} other {جهاز التحكم الجديد}}: لم يُعثر على مرسل.',
  'remote-reason.weak':
    '{side, select, original {الأصلي} other {جهاز التحكم الجديد}}: {snr} dB فقط فوق الضجيج؛ المطلوب 6 dB.',
  'remote-reason.off-centre':
    '{side, select, original {الأصلي} other {جهاز التحكم الجديد}}: الحامل عند حافة ما سُجِّل، بعيد عن المركز بـ{offset}.',
  'remote-reason.clipped':
    '{side, select, original {الأصلي} other {جهاز التحكم الجديد}}: {percent} % من التسجيل متشبّع.',
  'remote-reason.foreign-on-top':
    '{side, select, original {الأصلي} other {جهاز التحكم الجديد}}: مرسل آخر يعلوه.',
  'remote-reason.several-senders':
    '{side, select, original {الأصلي} other {جهاز التحكم الجديد}}: مرسلان متقاربا القوة.',
  'remote-reason.few-pulses':
    '{side, select, original {الأصلي} other {جهاز التحكم الجديد}}: النبضات أقل مما يكفي للقياس.',

  'remote-finding.no-sender': 'لم يُعثر على مرسل. سجّل مرة أخرى واضغط الزر ثانيتين.',
  'remote-finding.weak': '{snrDb} dB فقط فوق الضجيج؛ المطلوب 6 dB. قرّب جهاز التحكم وسجّل مرة أخرى.',
  'remote-finding.off-centre': 'الحامل بعيد عن المركز بـ{offset}. اضبط المستقبل أقرب إليه وسجّل مرة أخرى.',
  'remote-finding.clipped': '{percent} % من القيم متشبّعة. خفّض الكسب أو ابتعد، وسجّل مرة أخرى.',
  'remote-finding.foreign-on-top': 'مرسل آخر يعلوه. انتظر حتى يصمت وسجّل مرة أخرى.',
  'remote-finding.several-senders': 'مرسلان متقاربا القوة. أمسك جهاز التحكم قريبًا من المستقبل وسجّل مرة أخرى.',
  'remote-finding.few-pulses': 'النبضات أقل مما يكفي للقياس. اضغط الزر ثانيتين وسجّل مرة أخرى.',
  'remote-finding.rate-unknown': 'معدل العينات غير معروف. أدخله في الأسفل.',
  'remote-finding.rate-unusable': 'لا يمكن استعمال معدل عينات قدره {rate} في الثانية. راجعه في الأسفل.',
  'remote-finding.format-unknown': 'صيغة العينات غير معروفة. اخترها في الأسفل.',
  'remote-finding.centre-unknown': 'التردد المركزي غير معروف، لذا يُذكر الحامل نسبةً إلى المركز فقط.',
  'remote-finding.empty-recording': 'في التسجيل {samples} عينة: أقل مما يكفي للقياس.',
  'remote-finding.cut-sample':
    'البايتات الأخيرة لا تكوّن عينة كاملة فتُركت. إن بدت القيم خاطئة فراجع صيغة العينات.',
  'remote-finding.not-numbers': '{values} من القيم ليست أعدادًا. راجع صيغة العينات.',
  'remote-finding.parts-dropped': 'التسجيل طويل: تُرك {share} % الأهدأ منه. إن كانت الضغطة غائبة فسجّل أقصر.',
  'remote-finding.other-sender':
    'سُمع مرسل آخر على بعد {offset} من المركز. لا يهم ذلك إن كان جهاز التحكم هو الأقوى.',
  'remote-finding.some-clipping': '{percent} % من القيم متشبّعة؛ ولا يضر ذلك ما يُقاس هنا.',
  'remote-finding.carrier-wanders':
    'يتحرك الحامل بمقدار {drift} داخل التسجيل. راجع خلية جهاز التحكم هذا ولوحته.',
  'remote-finding.sigmf-unreadable': 'لا يمكن قراءة ملف SigMF. أدخل القيم في الأسفل.',
  'remote-finding.sigmf-field': 'لا يذكر ملف SigMF الحقل {field}. أدخل القيمة في الأسفل.',
  'remote-finding.sigmf-datatype': 'صيغة عينات SigMF المسماة {datatype} غير معروفة هنا. حوّل التسجيل.',
  'remote-finding.sigmf-channels': 'في التسجيل {channels} قنوات في ملف واحد. اكتب قناة واحدة في ملف مستقل.',
  'remote-finding.sigmf-retuned':
    'غُيّر ضبط المستقبل أثناء التسجيل؛ يُستعمل تردده المركزي الأول. الأفضل أن تسجّل مرة أخرى.',
}
