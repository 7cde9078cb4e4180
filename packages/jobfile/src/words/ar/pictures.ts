import type { SameCodes } from '../catalogues.ts'
import type { pictureWords as english } from '../en/pictures.ts'

/** عبارات أضافتها الطبعة الثانية من وثيقة التسليم: الصور وخطوط الحياة وكيف تُركت التغذية والرمز المربع. */
export const pictureWords: SameCodes<typeof english> = {
  'doc.code-alt': 'رمز مربع للمسح. يحوي SHA-256 للسجل وبصمة مفتاح الختم، وكلاهما مطبوع أدناه.',
  'doc.code-about':
    'امسح هذا الرمز للمقارنة آليًا: يحوي SHA-256 للسجل وبصمة المفتاح كما هما مطبوعان أدناه. لا يفتح صفحة ولا يطلب شبكة.',
  'doc.key-photo': 'صورة في السجل، يبدأ SHA-256 لها بـ {hash}.',
  'doc.key-photo-alt': 'صورة المفتاح {key}: {form}، بطاقة بلون {colour}. يحويها السجل بـ SHA-256 لها.',
  'doc.key-cell-rest': 'الخلية الزرّية، {rest} V في السكون: {verdict}.',
  'doc.key-cell-loaded': 'الخلية الزرّية، {loaded} V أثناء الإرسال: {verdict}.',
  'doc.key-cell-both': 'الخلية الزرّية، {rest} V في السكون و{loaded} V أثناء الإرسال: {verdict}.',
  'doc.key-cell-replaced': 'استُبدلت الخلية.',
  'doc.fault-strand': 'خط الحياة',
  'doc.fault-strand-alt': '{code}، خط الحياة: {life}',
  'doc.fault-strand-legend':
    'يمثل خط الحياة {phases}، من الأول إلى الأخير. القرص الممتلئ: مذكور. الحلقة: أجابت وحدة التحكم ولم تذكره. الشرطة القصيرة: لم تُقرأ.',
  'doc.power-verdict': 'المحسوب قبل العمل',
  'doc.power-supply-first': 'وصّل مصدرًا أولًا.',
  'doc.power-drain': 'التيار بعد الإقفال',
  'doc.power-drain-read':
    '{milliamperes} mA، بعد {minutes, plural, zero {لحظات} one {دقيقة واحدة} two {دقيقتين} few {# دقائق} many {# دقيقة} other {# دقيقة}} من الإقفال. {state}.',
  'doc.power-removed': 'مصدر الدعم',
  'doc.power-removed-state':
    '{removed, select, yes {فُصل قبل القراءة الأخيرة بعد العمل} other {كان ما زال موصولًا عند القراءة الأخيرة بعد العمل}}',
  'doc.handed': 'سُلّمت',
  'doc.handed-to': '{at}، إلى {to}. المفاتيح: {keys}',
  'doc.handed-to-unnamed': '{at}، إلى {to}. لا يذكر السجل أي مفاتيح.',
  'doc.handed-not': 'غير مسجل حين صُنعت هذه الوثيقة',
  'doc.stopped-button-away':
    'تشغيل السيارة وقفلها بالزر يُعرَّفان كل على حدة: المفتاح الذي لا يشغّل السيارة قد يظل يقفلها أو يفتحها بالزر. ولا يمكن تجريب ذلك بمفتاح ليس هنا.',
  'doc.consent-unsigned': '{about}. أُعطيت باسم {signer}؛ لا توقيع عليها في السجل.',
  'doc.consent-keys-unsigned': '{about}: {names}. أُعطيت باسم {signer}؛ لا توقيع عليها في السجل.',
  'doc.signatures': 'التوقيعات في السجل',
  'doc.signatures-none': 'لا توقيع في السجل.',
  'doc.signature-signer': 'الاسم',
  'doc.signature-for': 'لأجل',
  'doc.signature-how': 'كيف',
  'doc.signature-when': 'متى',
  'doc.signature-kept': 'بداية SHA-256',
  'doc.signature-for.consent': 'الموافقة',
  'doc.signature-for.plan': 'خطة العمل',
  'doc.signature-for.quote': 'عرض السعر',
  'doc.signature-for.handover': 'استلام السيارة والمفاتيح',
  'doc.signature-for.acknowledgement': 'العلم بالأعطال',
  'doc.signature-drawn': 'مرسوم باليد',
  'doc.signature-typed': 'اسم مكتوب بلوحة مفاتيح',
  'doc.signatures-limit':
    'التوقيعات نفسها غير مطبوعة هنا؛ يسمي السجل كلًّا منها ببصمته SHA-256. وهو يُظهر ما أُدخل ومتى، لا يد من كانت.',
  'doc.supply-readings': 'القراءات',
  'doc.price-tax': 'لا يقول السجل إن كان هذا السعر يشمل الضريبة.',
  'doc.span-day': '{date}، من {from} إلى {to} ({zone})',
  'doc.span-days': '{from} إلى {to}',
}
