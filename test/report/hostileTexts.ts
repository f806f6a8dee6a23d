/** What people may write, by accident or not, that is markup somewhere. */
export const hostileTexts: readonly string[] = [
  '#let x = 1; #panic("no")',
  '*bold* _slanted_ `raw` ~ @label <label>',
  '$ x^2 $ and \\ and \\u{41} and //comment /* more */',
  '= Heading\n- item\n+ item\n/ term: x',
  '<script>alert(1)</script><img src=x onerror=alert(1)>',
  '"quoted" \'single\' & &amp; &#60; ]]> <!-- --> </style></svg></p>',
  ['{{ template }} $', '{value} %s %n'].join(''),
  'C:\\temp\\..\\x ../../etc/passwd file:///x https://example.org/?a=1&b=2',
  '=HYPERLINK("https://example.org")',
  'ﬁne ‘quotes’ – — … µ η λ Ω ±×·√≤≥≈⁻¹₀',
  'x'.repeat(300),
]
