import type { SameCodes } from '../catalogues.ts'
import type { authorityWords as englishAuthority, cautionWords as englishCautions } from '../en/authority.ts'

/** نوع المهمة، وصاحب الطلب، وما وُقّع، وما يُحفظ. */
export const authorityWords: SameCodes<typeof englishAuthority> = {
  'work.add-a-key': 'إضافة مفتاح',
  'work.all-keys-lost': 'فقدان كل المفاتيح',
  'work.replace-keys': 'استبدال المفاتيح',
  'customer.private': 'عميل خاص',
  'customer.trade': 'عميل تجاري',
  'customer.fleet': 'عميل أسطول',
  'role.identity': 'الهوية',
  'role.entitlement': 'الأحقية',
  'decision.refused': 'مرفوض',
  'decision.held': 'معلَّق',
  'decision.released': 'مُطلَق',
  'consent.absent-keys-stop': 'المفاتيح التي ليست هنا قد تتوقف عن تشغيل هذه السيارة',
  'consent.no-check-before': 'لم يمكن فحص شيء قبل العمل، لأن لا مفتاح يعمل',
  'consent.clear-faults': 'يجوز مسح الأعطال؛ وقد حُفظت حالتها أولًا',
  'retention.invoice': 'الفاتورة',
  'retention.authority-record': 'ما عُوين من الهوية والأحقية',
  'retention.identity-image': 'صور وثائق الهوية',
  'retention.photo': 'الصور',
  'retention.recording': 'تسجيلات السيارة',
  'retention.vehicle-secret': 'بيانات المركبة المختومة (نسخة احتياطية)',
  'retention.job-rest': 'كل ما عدا ذلك من المهمة',
}

/** التنبيهات: اسم والجملة المعتادة. المصادر كما في الملف الإنجليزي. */
export const cautionWords: SameCodes<typeof englishCautions> = {
  'caution.defers': 'هذه هي التنبيهات المعتادة. القانون المحلي والممارسة المرخَّصة مقدَّمان.',
  'caution.airbag': 'الوسادة الهوائية',
  'caution-means.airbag':
    'عطل الوسادة الهوائية الذي كان موجودًا قبل العمل يُترك كما وُجد. اعرضه على ورشة مرخَّصة للوسائد الهوائية.',
  'caution.keyless-can-move': 'سيارة بلا مفتاح تقليدي قد تصبح جاهزة للسير',
  'caution-means.keyless-can-move':
    'السيارة ذات مفتاح القرب قد تشتغل لمجرد قرب المفتاح. أبعد المفاتيح عن السيارة ما دام أحد يعمل عليها.',
  'caution.high-voltage': 'الجهد العالي',
  'caution-means.high-voltage':
    'السيارة الكهربائية أو الهجينة تحمل جهدًا خطرًا حتى وهي مطفأة. لا يفتح تلك الأجزاء أو يلمسها إلا من تدرّب على ذلك.',
  'caution.carbon-monoxide': 'أول أكسيد الكربون',
  'caution-means.carbon-monoxide':
    'لا تدع المحرك يعمل في مرآب أو مكان مسقوف أبدًا. مع مفتاح القرب تأكد من أن المحرك مطفأ قبل أن تبتعد.',
  'caution.roadside': 'العمل على جانب الطريق',
  'caution-means.roadside':
    'حركة المرور العابرة هي الخطر الأكبر على جانب الطريق. قف بعيدًا عن جهة المرور، وعند الشك انقل السيارة أولًا إلى مكان آمن.',
  'caution.lone-work': 'العمل منفردًا',
  'caution-means.lone-work': 'من يعمل وحده يبقى على اتصال بشخص آخر يعرف المكان ووقت العودة.',
  'caution.button-cells': 'الخلايا الزرّية',
  'caution-means.button-cells':
    'قد تحرق خلية زرّية مبتلَعة طفلًا خلال ساعتين. أبعد الخلايا عن الأطفال؛ وإن ابتُلعت إحداها فاطلب العون الطبي فورًا.',
  'caution.locked-in': 'لا يبقى كائن حي في الداخل',
  'caution-means.locked-in':
    'يبقى الأطفال والحيوانات خارج السيارة أثناء العمل على المفاتيح: قد تُقفل الأبواب من تلقاء نفسها.',
  'caution.steering-lock': 'قفل المقود',
  'caution-means.steering-lock':
    'لا تقطر السيارة ولا تدفعها حتى ترى أن قفل المقود قد انفتح. قد يبقى مقفلًا بعد جلسة أخفقت.',
}
