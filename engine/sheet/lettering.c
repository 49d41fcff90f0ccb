#include "layout.h"

/* Advance widths of DejaVu Sans, whose em is 2048 and whose capitals stand 1493 high, so that lettering of
 * size h has an em of 2048/1493 h.  Where another family stands in, the painter narrows a text that came out
 * wider than this table says. */
#define CAPITAL_HEIGHT 1493

static const guint16 ascii[] = { /* U+0020 to U+007E */
  651, 821, 942, 1716, 1303, 1946, 1597, 563, 799, 799, 1024, 1716, 651, 739, 651, 690,
  1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 1303, 690, 690, 1716, 1716, 1716, 1087,
  2048, 1401, 1405, 1430, 1577, 1294, 1178, 1587, 1540, 604, 604, 1343, 1141, 1767, 1532, 1612,
  1235, 1612, 1423, 1300, 1251, 1499, 1401, 2025, 1403, 1251, 1403, 799, 690, 799, 1716, 1024,
  1024, 1255, 1300, 1126, 1300, 1260, 721, 1300, 1298, 569, 569, 1186, 569, 1995, 1298, 1253,
  1300, 1300, 842, 1067, 803, 1298, 1212, 1675, 1212, 1212, 1075, 1303, 690, 1303, 1716,
};

static const guint16 latin[] = { /* U+00A0 to U+00FF: accents, and ° ± ² ³ ¼ ½ ¾ × ø */
  651, 821, 1303, 1303, 1303, 1303, 690, 1024, 1024, 2048, 965, 1253, 1716, 739, 2048, 1024,
  1024, 1716, 821, 821, 1024, 1303, 1303, 651, 1024, 821, 965, 1253, 1985, 1985, 1985, 1087,
  1401, 1401, 1401, 1401, 1401, 1401, 1995, 1430, 1294, 1294, 1294, 1294, 604, 604, 604, 604,
  1587, 1532, 1612, 1612, 1612, 1612, 1612, 1716, 1612, 1499, 1499, 1499, 1499, 1251, 1239, 1290,
  1255, 1255, 1255, 1255, 1255, 1255, 2011, 1126, 1260, 1260, 1260, 1260, 569, 569, 569, 569,
  1253, 1298, 1253, 1253, 1253, 1253, 1253, 1716, 1253, 1298, 1298, 1298, 1298, 1212, 1300, 1212,
};

static const struct
{
  guint16 sign;
  guint16 width;
} signs[] = {
  { 0x0152, 2191 }, /* Œ */
  { 0x0153, 2095 }, /* œ */
  { 0x2013, 1024 }, /* – */
  { 0x2018, 651 },  /* ‘ */
  { 0x2019, 651 },  /* ’ */
  { 0x201c, 1061 }, /* “ */
  { 0x201d, 1061 }, /* ” */
  { 0x201e, 1061 }, /* „ */
  { 0x2032, 465 },  /* ′ */
  { 0x2033, 765 },  /* ″ */
  { 0x2044, 342 },  /* ⁄ */
  { 0x20ac, 1303 }, /* € */
  { 0x215b, 1985 }, /* ⅛ */
  { 0x215c, 1985 }, /* ⅜ */
  { 0x215d, 1985 }, /* ⅝ */
  { 0x215e, 1985 }, /* ⅞ */
  { 0x2190, 1716 }, /* ← */
  { 0x2192, 1716 }, /* → */
  { 0x2212, 1716 }, /* − */
  { 0x2248, 1716 }, /* ≈ */
  { 0x2264, 1716 }, /* ≤ */
  { 0x2265, 1716 }, /* ≥ */
  { 0x2300, 1233 }, /* ⌀ */
};

static int
advance_width (gunichar c)
{
  if (c >= 0x20 && c < 0x20 + G_N_ELEMENTS (ascii))
    return ascii[c - 0x20];
  if (c >= 0xa0 && c < 0xa0 + G_N_ELEMENTS (latin))
    return latin[c - 0xa0];
  for (guint i = 0; i < G_N_ELEMENTS (signs); i++)
    if (signs[i].sign == c)
      return signs[i].width;
  return g_unichar_iszerowidth (c) ? 0 : 2048; /* a whole em: room enough for what is not known */
}

double
rw_lettering_width (const char *text)
{
  int sum = 0;

  for (const char *p = text; *p != '\0'; p = g_utf8_next_char (p))
    sum += advance_width (g_utf8_get_char (p));
  return (double) sum / CAPITAL_HEIGHT;
}
