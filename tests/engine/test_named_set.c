/* The sets of strings that the program knows by name. */
#include "table/named_set.h"

#include <string.h>

#include "built.h"
#include "expected.h"

static void
test_names (void)
{
  g_assert_cmpint (rw_string_sets_count, >=, 8);
  g_assert_cmpint (rw_string_set_find ("no_such_set"), ==, -1);
  for (int i = 0; i < rw_string_sets_count; i++)
    {
      RwDesign by_name, by_text;

      rw_design_init (&by_name);
      rw_design_init (&by_text);
      g_assert_cmpint (rw_string_set_find (rw_string_sets[i].id), ==, i);
      g_assert_true (rw_design_read (&by_name, RW_P_strings_set, rw_string_sets[i].id, RW_STYLE_FILE, NULL));
      g_assert_true (rw_design_read (&by_text, RW_P_strings_set, rw_string_sets[i].strings, RW_STYLE_FILE, NULL));
      g_assert_true (rw_design_same (&by_name, &by_text, RW_P_strings_set));
    }
}

/* On the scale that it suits each string pulls as much as such strings do, 20 to 100 N, and at most three
 * quarters of what its wire holds: common practice, no source. */
static void
test_pulls (void)
{
  for (int i = 0; i < rw_string_sets_count; i++)
    {
      const RwNamedSet *set = &rw_string_sets[i];
      gboolean long_neck = strstr (set->id, "long_neck") != NULL;
      g_autofree char *changes = g_strdup_printf ("strings.set=%s|scale.length=%.1f|fifth.start_fret=%d", set->id,
                                                  set->scale_mm, long_neck ? 8 : 5);
      g_autoptr (Built) built = built_new (changes);

      for (int k = 1; k <= built->design.strings_set.count; k++)
        {
          const RwString *string = &built->design.strings_set.at[k - 1];
          g_autofree char *what = g_strdup_printf ("%s: pull of string %d", set->id, k);
          double wire = string->core_mm > 0 ? string->core_mm : string->outer_mm;
          double pull = built->result.value[RW_STRINGS_TENSION + k];

          expected_near (what, pull, 60, 40);
          g_assert_cmpfloat (pull / (G_PI * wire * wire / 4), <, 0.75 * rw_wire_strength (string->wire, wire));
        }
    }
}

/* Unit weights of nickel-wound strings, lb/in, from a string maker's brochure ("A complete technical
 * reference for fretted instrument string tensions"); 2.5 %, as two of its own series differ by 1.5 %. */
static void
test_wound_weights (void)
{
  static const struct
  {
    const char *set;
    int         string;
    double      lb_per_in;
  } rows[] = {
    { "six_guitar", 4, 0.00012671 },  /* .026 */
    { "tenor_gdae", 3, 0.00017236 },  /* .030 */
    { "six_guitar", 5, 0.00023964 },  /* .036 */
    { "tenor_gdae", 4, 0.00032279 },  /* .042 */
    { "six_guitar", 6, 0.00038216 },  /* .046 */
  };

  for (gsize i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autofree char *changes = g_strdup_printf ("strings.set=%s|scale.length=600", rows[i].set);
      g_autofree char *id = g_strdup_printf ("strings.tension[%d]", rows[i].string);
      g_autoptr (Built) built = built_new (changes);
      double published = rows[i].lb_per_in * 0.45359237 / 0.0254, twice = 1.2;
      const char *note = built->design.strings_set.at[rows[i].string - 1].note;
      double hertz = g_str_equal (note, "D3") ? 146.8324 : g_str_equal (note, "A2") ? 110
                     : g_str_equal (note, "G2") ? 97.99886 : 82.40689;
      double mass = built_value (built, id) / (twice * hertz * twice * hertz);

      expected_near (id, mass / published, 1, 0.025);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/named-set/names", test_names);
  g_test_add_func ("/named-set/pulls", test_pulls);
  g_test_add_func ("/named-set/wound-weights", test_wound_weights);
  return g_test_run ();
}
