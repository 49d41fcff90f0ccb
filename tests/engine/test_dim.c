#include <string.h>

#include "table/dim.h"

static void
test_rows (void)
{
  g_autoptr (GHashTable) ids = g_hash_table_new (g_str_hash, g_str_equal);
  int                    slots = 0;

  for (int i = 0; i < rw_dims_count; i++)
    {
      const RwDim *dim = &rw_dims[i];
      double       value;

      g_assert_true (g_hash_table_add (ids, (gpointer) dim->id));
      g_assert_cmpint (dim->first, ==, slots);
      g_assert_true ((strchr (dim->id, '[') != NULL) == (dim->span > 1));
      g_assert_true (dim->tolerance >= 0);
      g_assert_true (*dim->label != '\0' && *dim->definition != '\0' && *dim->part != '\0');
      g_assert_true (rw_quantity_read ("1", dim->unit, NULL, '.', &value, NULL));
      slots += dim->span;
    }
  g_assert_cmpint (slots, ==, RW_SLOT_COUNT);
}

static void
test_slot_belongs_to_row (void)
{
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    {
      const RwDim *dim = rw_slot_dim ((RwSlot) slot);

      g_assert_true (slot >= (int) dim->first && slot < (int) dim->first + dim->span);
    }
}

/* Slots that an index counts are found by the id that they write; slot 0 of a run counted from 1 is not. */
static void
test_ids_find_back (void)
{
  int found = 0;

  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    {
      const RwDim     *dim = rw_slot_dim ((RwSlot) slot);
      int              place = slot - (int) dim->first;
      gboolean         counted = dim->span == RW_SPAN_ONE || dim->span == RW_SPAN_FRET
                                 || (dim->span == RW_SPAN_STRING_FRET ? place >= RW_SPAN_FRET : place >= 1);
      g_autofree char *id = rw_slot_id ((RwSlot) slot);

      g_assert_cmpint (rw_slot_find (id), ==, counted ? slot : -1);
      found += counted;
    }
  g_assert_cmpint (found, >, 900);
}

static void
test_ids (void)
{
  static const struct
  {
    const char *id;
    int         slot;
  } cases[] = {
    { "frets.position[7]", RW_FRETS_POSITION + 7 },
    { "frets.position[0]", RW_FRETS_POSITION },
    { "setup.cents[3][12]", RW_SLOT2 (RW_SETUP_CENTS, 3, 12) },
    { "hooks.arc[48]", RW_HOOKS_ARC + 48 },
    { "neck.angle", RW_NECK_ANGLE },
    { "rim.ply.length[170]", RW_RIM_PLY_LENGTH + 170 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *id = rw_slot_id ((RwSlot) cases[i].slot);

      g_assert_cmpstr (id, ==, cases[i].id);
      g_assert_cmpint (rw_slot_find (cases[i].id), ==, cases[i].slot);
    }
}

static void
test_no_such_id (void)
{
  static const char *const bad[] = {
    "", "[", "[1]", "frets", "frets.position", "frets.position[", "frets.position[]",
    "frets.position[n]", "frets.position[+7]", "frets.position[-1]", "frets.position[ 7]", "frets.position[7 ]",
    "frets.position[07]", "frets.position[00]", "frets.position[31]", "frets.position[7",
    "frets.position[7]x", "frets.position[7][1]",
    "frets.position[4294967303]", "Frets.position[7]", "hooks.arc[0]", "hooks.arc[49]", "neck.angle[1]",
    "neck.angle ", "setup.cents[3]", "setup.cents[0][3]", "setup.cents[9][3]", "setup.cents[3][31]",
    "setup.cents[3][1][1]", "setup.cents[3] [1]",
  };

  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    g_assert_cmpint (rw_slot_find (bad[i]), ==, -1);
}

static void
test_labels (void)
{
  static const struct
  {
    const char *id, *label;
  } cases[] = {
    { "strings.nut_y[2]", "String 2 at the nut" },
    { "frets.position[7]", "Nut to fret 7" },
    { "hooks.arc[3]", "Hook 3 round the rim" },
    { "setup.cents[3][12]", "Pitch error of string 3 at fret 12" },
    { "neck.facet_back_treble[12]", "First facet on the back treble side, fret 12" },
    { "strings.start_y[5]", "Short string at its start fret, string 5" },
    { "rim.inner_diameter", "Rim inside diameter" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *label = rw_slot_label ((RwSlot) rw_slot_find (cases[i].id));

      g_assert_cmpstr (label, ==, cases[i].label);
    }
}

static const char *
into_german (const char *english)
{
  if (strcmp (english, "Nut to fret n") == 0)
    return "Sattel bis Bund n";
  return strcmp (english, "%s, fret %d") == 0 ? "%s, Bund %d" : english;
}

static void
test_translated_labels (void)
{
  g_autofree char *inside = rw_slot_label_in (RW_FRETS_POSITION + 7, into_german);
  g_autofree char *after = rw_slot_label_in (RW_NECK_FACET_BACK_BASS + 5, into_german);

  g_assert_cmpstr (inside, ==, "Sattel bis Bund 7");
  g_assert_cmpstr (after, ==, "First facet on the back bass side, Bund 5");
}

static void
test_steps (void)
{
  g_autoptr (GHashTable) titles = g_hash_table_new (g_str_hash, g_str_equal);

  g_assert_cmpint (RW_STEP_COUNT, ==, 21);
  for (int i = 0; i < RW_STEP_COUNT; i++)
    g_assert_true (g_hash_table_add (titles, (gpointer) rw_step_title ((RwStep) i)));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/dim/rows", test_rows);
  g_test_add_func ("/dim/slot/belongs-to-row", test_slot_belongs_to_row);
  g_test_add_func ("/dim/id/finds-back", test_ids_find_back);
  g_test_add_func ("/dim/id/table", test_ids);
  g_test_add_func ("/dim/id/unknown", test_no_such_id);
  g_test_add_func ("/dim/label/table", test_labels);
  g_test_add_func ("/dim/label/translated", test_translated_labels);
  g_test_add_func ("/dim/steps", test_steps);
  return g_test_run ();
}
