import type { SameCodes } from '@shearline/jobfile'
import type { packTextWords as english } from '../en/pack-texts.ts'

export const packTextWords: SameCodes<typeof english> = {
  'pack-text.neutral': 'الإعداد المحايد',
  'pack-text.example-eu': 'مثال: الاتحاد الأوروبي، وفق القانون الألماني',
  'pack-text.example-uk': 'مثال: المملكة المتحدة',
  'pack-text.example-us': 'مثال: الولايات المتحدة',
  'pack-text.anywhere': 'أي منطقة',
  'pack-text.eu-germany': 'الاتحاد الأوروبي (ألمانيا)',
  'pack-text.uk': 'المملكة المتحدة',
  'pack-text.us': 'الولايات المتحدة (تختلف الولايات)',
  'pack-text.common-practice': 'عُرف شائع؛ راجع قانون بلدك',
  'pack-text.eu-papers':
    'التوجيه \u20661999/37/EC\u2069، المادتان 3 و4: شهادة التسجيل في جزء أو جزأين؛ اللائحة \u2066(EU) 2018/858\u2069، الملحق \u2066X\u2069، المعدَّلة باللائحة المفوَّضة \u2066(EU) 2021/1244\u2069: تُقيَّد الأعمال المتصلة بالأمان في سجل (من الذاكرة، تحقق)',
  'pack-text.de-owner':
    '\u2066BGB §§ 903, 985\u2069: القرار للمالك لا للحائز؛ وكثيرًا ما يكون الجزء الثاني من الأوراق عند المالك (من الذاكرة، تحقق)',
  'pack-text.de-trader':
    '\u2066GewO § 14\u2069: يُبلَّغ عن النشاط التجاري، فيمكن إظهار إشعاره (من الذاكرة، تحقق)',
  'pack-text.de-invoice':
    '\u2066UStG § 14b(1)\u2069: ثماني سنوات من نهاية السنة، أي حتى تسع (من الذاكرة، تحقق)',
  'pack-text.de-authority':
    '\u2066BGB §§ 195, 199(1)\u2069: ثلاث سنوات من نهاية السنة، أي حتى أربع (من الذاكرة، تحقق)؛ اللائحة العامة لحماية البيانات، المادة \u20665(1)(e)\u2069',
  'pack-text.de-identity':
    'اللائحة العامة لحماية البيانات، المادة \u20665(1)(c), (e)\u2069: لا مدة محددة، بقدر ما يقتضيه الغرض؛ \u2066PAuswG § 20(2)\u2069 في شأن النسخ (من الذاكرة، تحقق)',
  'pack-text.gdpr-no-period':
    'اللائحة العامة لحماية البيانات، المادة \u20665(1)(e)\u2069: لا مدة محددة، والقرار للشركة',
  'pack-text.gdpr-security':
    'اللائحة العامة لحماية البيانات، المادة \u20665(1)(f)\u2069؛ لا مدة محددة، والقرار للشركة',
  'pack-text.de-rest': '\u2066BGB §§ 195, 199(1)\u2069 (من الذاكرة، تحقق)',
  'pack-text.de-contract':
    'التوجيه \u20662011/83/EU\u2069، المواد 6 إلى 9 والمادة 16 (الزيارات العاجلة والبضائع المصنوعة حسب الطلب)؛ \u2066BGB §§ 312b, 312d, 312g\u2069؛ \u2066EGBGB 246a\u2069 (من الذاكرة، تحقق)',
  'pack-text.eu-radio': '\u2066ERC/REC 70-03\u2069، الملحق 1؛ \u2066ETSI EN 300 220-2\u2069',
  'pack-text.radio-every-region': 'لم تُختر منطقة: تُعرض صفوف كل المناطق',
  'pack-text.uk-one-and-one':
    'إرشاد المهنة: وثيقة هوية واحدة ووثيقة استحقاق واحدة، أصليتان، ويُحفظ رقم يمكن تتبعه لا نسخة؛ ويقول مستند \u2066V5C\u2069 نفسه إنه ليس دليل ملكية',
  'pack-text.uk-fleet': 'إرشاد المهنة: يُقبل خطاب الأسطول أو مرجع شركة التأمين بدل الأوراق',
  'pack-text.uk-invoice': 'دليل \u2066HMRC VATREC3032\u2069: ست سنوات، وسنة أخرى لنهاية الفترة المحاسبية',
  'pack-text.uk-authority': '\u2066UK GDPR 5(1)(e)\u2069: لا مدة محددة؛ ثلاث سنوات عُرف شائع',
  'pack-text.uk-identity': '\u2066UK GDPR 5(1)(c), (e)\u2069: لا مدة محددة، بقدر ما يقتضيه الغرض',
  'pack-text.uk-no-period': '\u2066UK GDPR 5(1)(e)\u2069: لا مدة محددة، والقرار للشركة',
  'pack-text.uk-security': '\u2066UK GDPR 5(1)(f)\u2069؛ لا مدة محددة، والقرار للشركة',
  'pack-text.uk-rest': '\u2066Limitation Act 1980\u2069، القسم 5: ست سنوات للعقد (من الذاكرة، تحقق)',
  'pack-text.uk-contract':
    '\u2066Consumer Contracts (Information, Cancellation and Additional Charges) Regulations 2013\u2069، البنود 10 و28 و29 و36 (28 و36 من الذاكرة، تحقق)',
  'pack-text.uk-radio':
    'متطلب الواجهة \u2066Ofcom IR 2030\u2069، على وفاق مع \u2066ERC/REC 70-03\u2069 (من الذاكرة، تحقق)',
  'pack-text.us-registry':
    'نماذج سجل أمن المركبات: الهوية ودليل ملكية واحد، يُفحصان حضوريًا قبل العمل؛ \u2066California Business and Professions Code 6980.53–6980.55\u2069',
  'pack-text.us-order': 'سجل أمن المركبات: أمر عمل موقَّع يذكر VIN والمكان ومن يأذن به',
  'pack-text.us-no-papers':
    'سياسة الجمعية للتحقق المؤكد من الهوية: عند الشك لا عمل إلا بحضور الشرطة، ويُحفظ الملف ثلاث سنوات',
  'pack-text.us-invoice':
    '\u206626 U.S.C. 6501(a)\u2069: ثلاث سنوات من تقديم الإقرار، أي حتى أربع (من الذاكرة، تحقق)؛ ميريلاند: الفواتير ثلاث سنوات',
  'pack-text.us-authority':
    'سياسة الجمعية: ثلاث سنوات؛ \u2066California Business and Professions Code 6980.55\u2069: سنتان',
  'pack-text.us-contract':
    '\u206616 CFR part 429\u2069: مهلة العدول عن البيع خارج مقر البائع (من الذاكرة، تحقق)؛ وتزيد الولايات عليها',
  'pack-text.us-radio': '\u206647 CFR 15.231, 15.249\u2069',
  'pack-text.band-overview': 'نصوص الصيانة عن الإقفال عن بُعد بحسب المنطقة',
  'pack-text.band-europe':
    '\u2066ERC/REC 70-03\u2069، الملحق 1؛ معيار الاختبار \u2066ETSI EN 300 220-2\u2069',
  'pack-text.ask-ook-or-fsk': '\u2066ASK/OOK\u2069 أو \u2066FSK\u2069',
  'pack-text.ask-or-fsk': '\u2066ASK\u2069 أو \u2066FSK\u2069',
  'pack-text.ask-or-fsk-older': '\u2066ASK\u2069 أو \u2066FSK\u2069، أقدم',
  'pack-text.ask-or-fsk-arib': '\u2066ASK\u2069 أو \u2066FSK\u2069 (\u2066ARIB STD-T93\u2069)',
  'pack-text.fsk-two-way': '\u2066FSK\u2069، بعض أجهزة التحكم ثنائية الاتجاه وبعيدة المدى',
  'pack-text.limit-433':
    '\u206610 mW e.r.p.\u2069 بزمن إرسال حتى \u206610 %\u2069، أو \u20661 mW e.r.p.\u2069 و\u2066-13 dBm/10 kHz\u2069',
  'pack-text.limit-434': '\u206610 mW e.r.p.\u2069 في قنوات لا تتجاوز \u206625 kHz\u2069',
  'pack-text.limit-868-0': '\u206625 mW e.r.p.\u2069 بزمن إرسال حتى \u20661 %\u2069، أو الاستماع قبل الإرسال',
  'pack-text.limit-868-7':
    '\u206625 mW e.r.p.\u2069 بزمن إرسال حتى \u20660.1 %\u2069، أو الاستماع قبل الإرسال',
  'pack-text.limit-869-4': '\u2066500 mW e.r.p.\u2069 بزمن إرسال حتى \u206610 %\u2069',
  'pack-text.limit-869-7':
    '\u20665 mW e.r.p.\u2069، أو \u206625 mW e.r.p.\u2069 بزمن إرسال حتى \u20661 %\u2069',
  'pack-text.limit-us-control':
    'إشارات تحكم فقط؛ شدة المجال على بعد \u20663 m\u2069 من \u20663750 µV/m\u2069 عند \u2066260 MHz\u2069 إلى \u206612500 µV/m\u2069 عند \u2066470 MHz\u2069؛ ينقطع خلال \u20665 s\u2069',
  'pack-text.limit-us-902': 'شدة المجال على بعد \u20663 m\u2069 حتى \u206650 mV/m\u2069',
}
