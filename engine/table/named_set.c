#include "named_set.h"

#include <string.h>

#include "param_text.h"

/* Gauges are what such sets are sold with, in thousandths of an inch: common practice, no source.  Cores
 * are from memory.  Wraps of nickel-plated steel and silvered copper at 7900 and 8900 kg/m3 (from memory)
 * bring wound strings to within 2.5 % of published unit weights. */
const RwNamedSet rw_string_sets[] = {
  { "five_light", N_("Five strings, light"), /* .009 .010 .013 .020w .009 */
    "D4 0.2286 p; B3 0.254 p; G3 0.3302 p; D3 0.508 w 0.305 rho=7900; G4 0.2286 p short", 650 },
  { "five_medium", N_("Five strings, medium"), /* .010 .012 .016 .023w .010 */
    "D4 0.254 p; B3 0.3048 p; G3 0.4064 p; D3 0.5842 w 0.33 rho=7900; G4 0.254 p short", 667 },
  { "five_low", N_("Five strings, tuned a third low"), /* .012 .014 .019 .028w .012 */
    "Bb3 0.3048 p; G3 0.3556 p; Eb3 0.4826 p; Bb2 0.7112 w 0.381 rho=7900; Eb4 0.3048 p short", 667 },
  { "five_long_neck", N_("Five strings, long neck in E"), /* .010 .012 .016 .023w .010 */
    "B3 0.254 p; G#3 0.3048 p; E3 0.4064 p; B2 0.5842 w 0.33 rho=7900; E4 0.254 p short", 818 },
  { "five_short_scale", N_("Five strings, short scale in A"), /* .009 .010 .013 .020w .009 */
    "E4 0.2286 p; C#4 0.254 p; A3 0.3302 p; E3 0.508 w 0.305 rho=7900; A4 0.2286 p short", 597 },
  { "five_nylon", N_("Five strings, nylon"), /* .019 .022 .027 .024w .019 */
    "D4 0.4826 p nylon; B3 0.5588 p nylon; G3 0.6858 p nylon; D3 0.6096 w 0.44 nylon rho=8900; "
    "G4 0.4826 p short nylon", 650 },
  { "five_gut_low", N_("Five strings, gut, old low tuning"), /* .022 .026 .030 .031w .021 */
    "A3 0.5588 p gut; F#3 0.6604 p gut; D3 0.762 p gut; G2 0.7874 w 0.56 gut rho=8900; "
    "D4 0.5334 p short gut", 711 },
  { "tenor_cgda", N_("Tenor in fifths, C G D A"), /* .009 .013 .022w .032w */
    "A4 0.2286 p; D4 0.3302 p; G3 0.5588 w 0.305 rho=7900; C3 0.8128 w 0.406 rho=7900", 565 },
  { "tenor_gdae", N_("Tenor an octave under the fiddle, G D A E"), /* .012 .020w .030w .042w */
    "E4 0.3048 p; A3 0.508 w 0.28 rho=7900; D3 0.762 w 0.381 rho=7900; G2 1.0668 w 0.432 rho=7900", 565 },
  { "plectrum_cgbd", N_("Plectrum, C G B D"), /* .010 .012 .016 .025w */
    "D4 0.254 p; B3 0.3048 p; G3 0.4064 p; C3 0.635 w 0.356 rho=7900", 667 },
  { "uke_nylon", N_("Banjo-ukulele, nylon"), /* .024 .032 .036 .026 */
    "A4 0.6096 p nylon; E4 0.8128 p nylon; C4 0.9144 p nylon; G4 0.6604 p nylon", 350 },
  { "six_guitar", N_("Six strings, as a guitar"), /* .010 .013 .017 .026w .036w .046w */
    "E4 0.254 p; B3 0.3302 p; G3 0.4318 p; D3 0.6604 w 0.356 rho=7900; A2 0.9144 w 0.406 rho=7900; "
    "E2 1.1684 w 0.432 rho=7900", 630 },
};
const int rw_string_sets_count = G_N_ELEMENTS (rw_string_sets);

int
rw_string_set_find (const char *id)
{
  for (int i = 0; i < rw_string_sets_count; i++)
    if (strcmp (rw_string_sets[i].id, id) == 0)
      return i;
  return -1;
}

void
rw_string_set_take (RwStringSet *set, int row)
{
  g_autoptr (GError) error = NULL;

  g_return_if_fail (row >= 0 && row < rw_string_sets_count);
  if (!rw_string_set_read (set, rw_string_sets[row].strings, RW_STYLE_FILE, "", &error))
    g_error ("Table of string sets: %s", error->message);
}
