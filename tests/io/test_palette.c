/* Tints told apart, and lettering that can be read, for every kind of colour vision.
 *
 * sRGB to linear light, XYZ and L*a*b*: IEC 61966-2-1:1999 and CIE 15:2004 (from memory).  Contrast: W3C, Web Content
 * Accessibility Guidelines 2.1 (2018), 1.4.3 and the definitions of relative luminance and contrast ratio.
 * Colour-vision deficiencies: G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A Physiologically-based Model for
 * Simulation of Color Vision Deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (2009),
 * severity 1.0 (from memory). Just noticeable: delta E*ab 2.3, M. Mahy, L. Van Eycken, A. Oosterlinck, "Evaluation of
 * Uniform Color Spaces Developed after the Adoption of CIELAB and CIELUV", Color Research and Application 19 (1994)
 * (from memory). */
#include "io/paint_cairo.h"

#include <math.h>

/* Between any two materials, and between each of them and the paper: more than twice just noticeable. */
#define LEAST_DIFFERENCE 6.0

/* WCAG 2.1 level AA: text, and (1.4.11) what must be seen that is not text. */
#define TEXT_CONTRAST 4.5
#define LINE_CONTRAST 3.0

/* Level AAA, 1.4.6. */
#define HIGH_CONTRAST 7.0

typedef struct
{
  const char *name;
  double      m[3][3]; /* of linear light */
} Vision;

static const Vision visions[] = {
  { "three cones", { { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 } } },
  { "protanopia",
    { { 0.152286, 1.052583, -0.204868 }, { 0.114503, 0.786281, 0.099216 }, { -0.003882, -0.048116, 1.051998 } } },
  { "deuteranopia",
    { { 0.367322, 0.860646, -0.227968 }, { 0.280085, 0.672501, 0.047413 }, { -0.011820, 0.042940, 0.968881 } } },
  { "tritanopia",
    { { 1.255528, -0.076749, -0.178779 }, { -0.078411, 0.930809, 0.147602 }, { 0.004733, 0.691367, 0.303900 } } },
};

static const struct
{
  const char      *name;
  const RwPalette *palette;
} looks[] = { { "light", &rw_palette_light },
            { "dark", &rw_palette_dark },
            { "print", &rw_palette_print },
            { "high contrast", &rw_palette_contrast },
            { "high contrast, dark", &rw_palette_contrast_dark } };

static double
linear (double channel)
{
  return channel <= 0.04045 ? channel / 12.92 : pow ((channel + 0.055) / 1.055, 2.4);
}

/* ---- how colours look ---- */

static double
lab_curve (double t)
{
  return t > 216.0 / 24389 ? cbrt (t) : (24389.0 / 27 * t + 16) / 116;
}

/* L*, a*, b* of a colour as someone sees it, white of D65. */
static void
seen (const RwColour *colour, const Vision *vision, double lab[3])
{
  static const double to_xyz[3][3] = { { 0.4124564, 0.3575761, 0.1804375 },
                                       { 0.2126729, 0.7151522, 0.0721750 },
                                       { 0.0193339, 0.1191920, 0.9503041 } };
  static const double white[3] = { 0.95047, 1, 1.08883 };
  const double light[3] = { linear (colour->r), linear (colour->g), linear (colour->b) };
  double left[3], f[3];

  for (int i = 0; i < 3; i++)
    {
      const double *m = vision->m[i];

      left[i] = CLAMP (m[0] * light[0] + m[1] * light[1] + m[2] * light[2], 0, 1);
    }
  for (int i = 0; i < 3; i++)
    f[i] = lab_curve ((to_xyz[i][0] * left[0] + to_xyz[i][1] * left[1] + to_xyz[i][2] * left[2]) / white[i]);
  lab[0] = 116 * f[1] - 16;
  lab[1] = 500 * (f[0] - f[1]);
  lab[2] = 200 * (f[1] - f[2]);
}

static double
difference (const RwColour *a, const RwColour *b, const Vision *vision)
{
  double x[3], y[3];

  seen (a, vision, x);
  seen (b, vision, y);
  return sqrt ((x[0] - y[0]) * (x[0] - y[0]) + (x[1] - y[1]) * (x[1] - y[1]) + (x[2] - y[2]) * (x[2] - y[2]));
}

/* The tools themselves: white and mid grey have the lightness that the standard gives, red and green are far apart to
 * three cones and less than half of that without the long ones or the middle ones, and no one sees colour in grey. */
static void
test_vision (void)
{
  const RwColour white = { 1, 1, 1 }, grey = { 0.5, 0.5, 0.5 }, red = { 0.8, 0.2, 0.2 }, green = { 0.45, 0.5, 0.1 };

  for (guint i = 0; i < G_N_ELEMENTS (visions); i++)
    {
      double lab[3];

      seen (&white, &visions[i], lab);
      g_assert_cmpfloat_with_epsilon (lab[0], 100, 0.01);
      seen (&grey, &visions[i], lab);
      g_assert_cmpfloat_with_epsilon (lab[0], 53.39, 0.01); /* 116 cbrt (0.21404) - 16 */
      g_assert_cmpfloat_with_epsilon (hypot (lab[1], lab[2]), 0, 0.05);
    }
  g_assert_cmpfloat (difference (&red, &green, &visions[1]), <, difference (&red, &green, &visions[0]) / 2);
  g_assert_cmpfloat (difference (&red, &green, &visions[2]), <, difference (&red, &green, &visions[0]) / 2);
}

static void
test_tints (void)
{
  for (guint look = 0; look < G_N_ELEMENTS (looks); look++)
    for (guint v = 0; v < G_N_ELEMENTS (visions); v++)
      for (int a = RW_TINT_PAPER; a < RW_TINT_COUNT; a++)
        for (int b = a + 1; b < RW_TINT_COUNT; b++)
          {
            const RwColour *tint = looks[look].palette->tint;
            double apart = difference (&tint[a], &tint[b], &visions[v]);

            if (apart < LEAST_DIFFERENCE)
              g_error ("%s, %s: tints %d and %d are only %.1f apart", looks[look].name, visions[v].name, a, b,
                       apart);
          }
}

/* ---- what can be read ---- */

static double
luminance (const RwColour *colour)
{
  return 0.2126 * linear (colour->r) + 0.7152 * linear (colour->g) + 0.0722 * linear (colour->b);
}

static double
contrast (const RwColour *a, const RwColour *b)
{
  double x = luminance (a), y = luminance (b);

  return (MAX (x, y) + 0.05) / (MIN (x, y) + 0.05);
}

/* Lettering may stand on any tint; what is in the accent stands on paper. */
static void
test_contrast (void)
{
  const RwColour white = { 1, 1, 1 }, black = { 0, 0, 0 };

  g_assert_cmpfloat_with_epsilon (contrast (&white, &black), 21, 1e-9); /* as the guidelines say */
  for (guint look = 0; look < G_N_ELEMENTS (looks); look++)
    {
      const RwPalette *palette = looks[look].palette;

      g_assert_cmpfloat (contrast (&palette->ink, &palette->paper), >=, TEXT_CONTRAST);
      for (int tint = RW_TINT_PAPER; tint < RW_TINT_COUNT; tint++)
        g_assert_cmpfloat (contrast (&palette->ink, &palette->tint[tint]), >=, TEXT_CONTRAST);
      g_assert_cmpfloat (contrast (&palette->accent, &palette->paper), >=, TEXT_CONTRAST);
      g_assert_cmpfloat (contrast (&palette->pale, &palette->paper), >=, LINE_CONTRAST);
    }
}

/* Where high contrast is asked for, lettering and every line hold it on whatever they cross. */
static void
test_high_contrast (void)
{
  const RwPalette *palettes[] = { &rw_palette_contrast, &rw_palette_contrast_dark };

  for (guint i = 0; i < G_N_ELEMENTS (palettes); i++)
    {
      const RwPalette *palette = palettes[i];

      g_assert_cmpfloat (contrast (&palette->accent, &palette->paper), >=, HIGH_CONTRAST);
      g_assert_cmpfloat (palette->weight, >, 1);
      for (int tint = RW_TINT_PAPER; tint < RW_TINT_COUNT; tint++)
        {
          g_assert_cmpfloat (contrast (&palette->ink, &palette->tint[tint]), >=, HIGH_CONTRAST);
          g_assert_cmpfloat (contrast (&palette->pale, &palette->tint[tint]), >=, HIGH_CONTRAST);
        }
    }
}

/* In grey, the materials stand in the same order by light and by dark. */
static void
test_order (void)
{
  static const RwTint order[] = { RW_TINT_BONE, RW_TINT_HEAD, RW_TINT_LIGHT_WOOD, RW_TINT_METAL, RW_TINT_DARK_WOOD };

  for (guint look = 0; look < G_N_ELEMENTS (looks); look++)
    for (guint i = 1; i < G_N_ELEMENTS (order); i++)
      g_assert_cmpfloat (luminance (&looks[look].palette->tint[order[i - 1]]), >,
                         luminance (&looks[look].palette->tint[order[i]]));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);

  g_test_add_func ("/palette/vision", test_vision);
  g_test_add_func ("/palette/tints", test_tints);
  g_test_add_func ("/palette/contrast", test_contrast);
  g_test_add_func ("/palette/high-contrast", test_high_contrast);
  g_test_add_func ("/palette/order", test_order);
  return g_test_run ();
}
