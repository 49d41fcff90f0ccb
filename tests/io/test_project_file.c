/* Project files: what is written reads back to the last bit, what is foreign is kept, what is damaged is
 * refused in one sentence. */
#include "io/project_file.h"

#include <glib/gstdio.h>
#include <locale.h>
#include <string.h>

#include "random_design.h"

#define ROUNDS 2000

static RwProject *
read_good (const char *text)
{
  g_autoptr (GError) error = NULL;
  RwProject *project = rw_project_from_text (text, -1, &error);

  g_assert_no_error (error);
  return project;
}

/* Lines of two texts that are not the same. */
static guint
count_different_lines (const char *a, const char *b)
{
  g_auto (GStrv) lines_a = g_strsplit (a, "\n", -1), lines_b = g_strsplit (b, "\n", -1);
  guint different = 0;

  g_assert_cmpuint (g_strv_length (lines_a), ==, g_strv_length (lines_b));
  for (int i = 0; lines_a[i] != NULL; i++)
    different += !g_str_equal (lines_a[i], lines_b[i]);
  return different;
}

/* ---- there and back ---- */

static void
measure_something (RwLedger *ledger)
{
  static const char *const ids[] = { "rim.outer_diameter", "rim.course_thickness[3]", "neck.angle",
                                     "frets.position[12]", "hooks.leg" };

  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    if (g_test_rand_bit ())
      {
        /* In the range of each of these; third and seventh parts have no end in binary. */
        double low = g_str_equal (ids[i], "rim.outer_diameter") ? 120 : 1;
        double readings[2] = { low + g_test_rand_double () / 3, low + g_test_rand_double () / 7 };

        g_assert_true (rw_ledger_put (ledger, ids[i], readings, 1 + (guint) g_test_rand_bit (), "2026-05-04",
                                      "a \"note\"\nin two lines \\ \t \x01 \xC3\xA4", NULL));
      }
}

/* To the last bit, parameter by parameter: what lies between the members of a design is no part of it.
 * But zero is zero: + 0.0 takes the sign off -0. */
static void
assert_same_design (const RwDesign *a, const RwDesign *b)
{
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    {
      if (rw_param_is_number (rw_param (id)))
        {
          double value_a = rw_design_get (a, id) + 0.0, value_b = rw_design_get (b, id) + 0.0;

          g_assert_cmpmem (&value_a, sizeof value_a, &value_b, sizeof value_b);
        }
      g_assert_true (rw_design_same (a, b, id));
    }
  g_assert_cmpmem (a->rim_course_thickness.at, sizeof (double) * (gsize) a->rim_course_thickness.count,
                   b->rim_course_thickness.at, sizeof (double) * (gsize) b->rim_course_thickness.count);
}

static void
round_trips (int count)
{
  for (int i = 0; i < count; i++)
    {
      g_autoptr (RwProject) project = rw_project_new (), back = NULL;
      g_autofree char *text = NULL, *again = NULL;

      random_design (&project->design);
      measure_something (project->ledger);
      text = rw_project_to_text (project);
      back = read_good (text);
      again = rw_project_to_text (back);

      assert_same_design (&project->design, &back->design);
      g_assert_true (rw_project_equal (project, back));
      g_assert_cmpuint (count_different_lines (text, again), ==, 0);
    }
}

static void
test_round_trip (void)
{
  round_trips (ROUNDS);
}

/* The same where the locale writes decimal commas; and the text is the same as without. */
static void
test_comma_locale (void)
{
  g_autoptr (RwProject) project = rw_project_new ();
  g_autofree char *plain = NULL, *comma = NULL;
  char probe[16];

  random_design (&project->design);
  plain = rw_project_to_text (project);
  if (setlocale (LC_ALL, "de_DE.UTF-8") == NULL)
    {
      g_test_skip ("there is no locale de_DE.UTF-8 here");
      return;
    }
  g_snprintf (probe, sizeof probe, "%.1f", 0.5);
  g_assert_cmpstr (probe, ==, "0,5");
  comma = rw_project_to_text (project);
  g_assert_cmpuint (count_different_lines (plain, comma), ==, 0);
  round_trips (ROUNDS / 10);
  setlocale (LC_ALL, "C");
}

static void
test_texts (void)
{
  g_autoptr (RwProject) project = rw_project_new (), back = NULL;
  g_autofree char *text = NULL;

  g_free (project->name);
  project->name = g_strdup ("No. 3, \"cherry\" \\ h\xC3\xA4lt \xF0\x9F\x98\x80");
  g_free (project->notes);
  project->notes = g_strdup ("first line\r\n\tsecond\x01\x1f\x7f");
  text = rw_project_to_text (project);
  back = read_good (text);
  g_assert_cmpstr (back->name, ==, project->name);
  g_assert_cmpstr (back->notes, ==, project->notes);
}

/* A file that names nothing is the built-in build. */
static void
test_defaults (void)
{
  g_autoptr (RwProject) project = read_good ("{\"rimwright\": 1}"), built_in = rw_project_new ();

  g_assert_true (rw_project_equal (project, built_in));
}

/* Numbers written by hand in other ways are the same numbers. */
static void
test_number_forms (void)
{
  g_autoptr (RwProject) project = read_good (
    "{\"rimwright\": 1, \"parameters\": {\"scale.length\": 6.5e2, \"rim.wall\": 1.45E+1,"
    " \"frets.count\": 22.0,"
    " \"nut.width\": 3205e-2, \"neck.set_height\": -0, \"rim.course_thickness\": [2e1, 24.50]}}");

  g_assert_cmpfloat (project->design.scale_length, ==, 650);
  g_assert_cmpfloat (project->design.rim_wall, ==, 14.5);
  g_assert_cmpfloat (project->design.frets_count, ==, 22);
  g_assert_cmpfloat (project->design.nut_width, ==, 32.05);
  g_assert_cmpfloat (project->design.neck_set_height, ==, 0);
  g_assert_cmpint (project->design.rim_course_thickness.count, ==, 2);
  g_assert_cmpfloat (project->design.rim_course_thickness.at[0], ==, 20);
  g_assert_cmpfloat (project->design.rim_course_thickness.at[1], ==, 24.5);
}

/* ---- two versions differ in the lines that changed ---- */

static void
test_one_line_a_parameter (void)
{
  g_autoptr (RwProject) project = rw_project_new ();
  g_autofree char *before = rw_project_to_text (project);
  guint changed = 0;
  RwDesign other;

  random_design (&other);
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    if (!rw_design_same (&project->design, &other, id))
      {
        g_autoptr (RwProject) next = rw_project_copy (project);
        g_autofree char *after = NULL;

        rw_design_copy (&next->design, &other, id);
        after = rw_project_to_text (next);
        g_assert_cmpuint (count_different_lines (before, after), ==, 1);
        g_assert_nonnull (strstr (after, rw_param (id)->id));
        changed++;
      }
  g_assert_cmpuint (changed, >, RW_PARAM_COUNT / 2);
}

/* ---- members that this version does not know ---- */

static const char with_strangers[] =
  "{ \"rimwright\": 1, \"zither\": {\"b\": [1, 2.5, null, true, {}], \"a\": \"\\u00e4\\n\"},"
  " \"parameters\": { \"rim.polish\": 0.1, \"scale.length\": 640, \"a/b~c\": [] },"
  " \"measured\": [ { \"id\": \"rim.gloss\", \"readings\": [ 4 ], \"by\": \"eye\" },"
  "                 { \"id\": \"rim.wall\", \"readings\": [ 14 ], \"by/with\": \"calliper\", \"at\": 3 } ],"
  " \"\": -7, \"/x\": 9007199254740993 }";

static void
test_strangers_kept (void)
{
  static const char *const kept[] = {
    "\n  \"\": -7", "\n  \"/x\": 9007199254740993",
    "\n  \"zither\": { \"b\": [ 1, 2.5, null, true, {} ], \"a\": \"\xC3\xA4\\n\" }",
    "\n    \"rim.polish\": 0.1", "\n    \"a/b~c\": []",
    "{ \"id\": \"rim.gloss\", \"readings\": [ 4 ], \"by\": \"eye\" }",
    ("{ \"id\": \"rim.wall\", \"readings\": [ 14 ], \"date\": \"\", \"note\": \"\","
     " \"at\": 3, \"by/with\": \"calliper\" }"),
  };
  g_autoptr (RwProject) project = read_good (with_strangers), back = NULL;
  g_autofree char *text = rw_project_to_text (project), *again = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (kept); i++)
    g_assert_nonnull (strstr (text, kept[i]));
  g_assert_cmpfloat (project->design.scale_length, ==, 640);
  g_assert_cmpuint (project->ledger->entries->len, ==, 1);

  back = read_good (text);
  again = rw_project_to_text (back);
  g_assert_true (rw_project_equal (project, back));
  g_assert_cmpuint (count_different_lines (text, again), ==, 0);
}

/* They stay while all the rest changes, and are part of what makes two projects equal. */
static void
test_strangers_stay (void)
{
  g_autoptr (RwProject) project = read_good (with_strangers), copy = rw_project_copy (project), bare = NULL;
  g_autofree char *text = NULL;
  double reading = 13.5;

  g_assert_true (rw_project_equal (project, copy));
  random_design (&copy->design);
  g_assert_true (rw_ledger_put (copy->ledger, "rim.wall", &reading, 1, "", "", NULL));
  text = rw_project_to_text (copy);
  g_assert_nonnull (strstr (text, "\"readings\": [ 13.5 ], \"date\": \"\", \"note\": \"\", \"at\": 3,"));
  g_assert_nonnull (strstr (text, "\"zither\""));

  bare = rw_project_copy (project);
  g_hash_table_remove (bare->unknown, "/zither");
  g_assert_false (rw_project_equal (project, bare));
}

/* An entry that has been taken away takes its foreign members with it. */
static void
test_strangers_of_removed_entry (void)
{
  g_autoptr (RwProject) project = read_good (with_strangers);
  g_autofree char *text = NULL;

  g_assert_true (rw_ledger_remove (project->ledger, "rim.wall"));
  text = rw_project_to_text (project);
  g_assert_null (strstr (text, "calliper"));
  g_assert_nonnull (strstr (text, "rim.gloss"));
}

/* ---- damage ---- */

#define HEAD "{\"rimwright\": 1, "
#define PARAMETER(member) HEAD "\"parameters\": {" member "}}"
#define ENTRIES(entries) HEAD "\"measured\": [" entries "]}"
#define WALL "\"id\": \"rim.wall\", \"readings\": [14]"

typedef struct
{
  const char *name, *text;
  const char *says; /* a part of the message: the place, the member or the id */
} Damage;

static const Damage damaged[] = {
  { "no-json", "Dear diary", "column 1" },
  { "cut-off", HEAD "\"name\": \"x", "Line 1" },
  { "list", "[1]", "no project" },
  { "null", "null", "no project" },
  { "other-json", "{\"name\": \"x\"}", "rimwright" },
  { "version/text", "{\"rimwright\": \"1\"}", "rimwright" },
  { "version/zero", "{\"rimwright\": 0}", "rimwright" },
  { "version/part", "{\"rimwright\": 1.5}", "rimwright" },
  { "version/null", "{\"rimwright\": null}", "rimwright" },
  { "name", HEAD "\"name\": 5}", "name" },
  { "notes", HEAD "\"notes\": [\"x\"]}", "notes" },
  { "parameters", HEAD "\"parameters\": []}", "parameters" },
  { "measured/object", HEAD "\"measured\": {}}", "measured" },
  { "measured/no-entry", ENTRIES ("5"), "measured" },
  { "measured/no-id", ENTRIES ("{\"readings\": [1]}"), "measured" },
  { "measured/id", ENTRIES ("{\"id\": 4, \"readings\": [1]}"), "measured" },
  { "measured/twice", ENTRIES ("{" WALL "}, {" WALL "}"), "rim.wall" },
  { "measured/no-readings", ENTRIES ("{\"id\": \"rim.wall\"}"), "rim.wall" },
  { "measured/empty", ENTRIES ("{\"id\": \"rim.wall\", \"readings\": []}"), "rim.wall" },
  { "measured/text", ENTRIES ("{\"id\": \"rim.wall\", \"readings\": [14, \"14\"]}"), "rim.wall" },
  { "measured/note", ENTRIES ("{" WALL ", \"note\": 1}"), "note" },
};

static const Damage wrong_values[] = {
  { "number/text", PARAMETER ("\"rim.wall\": \"14\""), "rim.wall" },
  { "number/null", PARAMETER ("\"rim.wall\": null"), "rim.wall" },
  { "number/true", PARAMETER ("\"rim.wall\": true"), "rim.wall" },
  { "number/list", PARAMETER ("\"rim.wall\": [14]"), "rim.wall" },
  { "number/range", PARAMETER ("\"rim.wall\": 50.01"), "rim.wall" },
  { "number/not-whole", PARAMETER ("\"frets.count\": 19.5"), "frets.count" },
  { "choice/number", PARAMETER ("\"build.handed\": 1"), "build.handed" },
  { "choice/other", PARAMETER ("\"build.handed\": \"both\""), "build.handed" },
  { "choice/lines", PARAMETER ("\"build.handed\": \"a\\nb\""), "build.handed" },
  { "wood", PARAMETER ("\"neck.wood\": \"concrete\""), "neck.wood" },
  { "lengths/text", PARAMETER ("\"rim.course_thickness\": \"20; 24\""), "rim.course_thickness" },
  { "lengths/item", PARAMETER ("\"rim.course_thickness\": [20, \"24\"]"), "rim.course_thickness" },
  { "lengths/none", PARAMETER ("\"rim.course_thickness\": []"), "rim.course_thickness" },
  { "lengths/many", PARAMETER ("\"rim.course_thickness\": [5,5,5,5,5,5,5,5,5,5,5,5,5]"),
    "rim.course_thickness" },
  { "woods/joined", PARAMETER ("\"rim.course_wood\": [\"beech; beech\"]"), "rim.course_wood" },
  { "woods/number", PARAMETER ("\"rim.course_wood\": [1]"), "rim.course_wood" },
  { "strings/one", PARAMETER ("\"strings.set\": [\"D4 0.254 p\"]"), "strings.set" },
  { "strings/object", PARAMETER ("\"strings.set\": {}"), "strings.set" },
  { "measured/range", ENTRIES ("{\"id\": \"rim.wall\", \"readings\": [-1]}"), "rim.wall" },
  { "measured/chosen", ENTRIES ("{\"id\": \"build.handed\", \"readings\": [1]}"), "build.handed" },
  { "measured/date", ENTRIES ("{" WALL ", \"date\": \"May\"}"), "rim.wall" },
};

static const Damage too_new[] = {
  { "next", "{\"rimwright\": 2, \"parameters\": 7}", "2" },
  { "far", "{\"rimwright\": 9223372036854775807}", "version" },
};

static void
assert_one_sentence (const char *message)
{
  g_test_message ("%s", message);
  g_assert_true (g_utf8_validate (message, -1, NULL));
  g_assert_null (strchr (message, '\n'));
  g_assert_cmpuint (strlen (message), <, 500);
}

static void
assert_refused (const Damage *damage, int code)
{
  g_autoptr (GError) error = NULL;

  g_assert_null (rw_project_from_text (damage->text, -1, &error));
  g_assert_error (error, RW_FILE_ERROR, code);
  assert_one_sentence (error->message);
  g_assert_nonnull (strstr (error->message, damage->says));
}

static void
test_damaged (gconstpointer data)
{
  assert_refused (data, RW_FILE_ERROR_DAMAGED);
}

static void
test_wrong_value (gconstpointer data)
{
  assert_refused (data, RW_FILE_ERROR_VALUE);
}

static void
test_too_new (gconstpointer data)
{
  assert_refused (data, RW_FILE_ERROR_TOO_NEW);
}

/* Texts of any length in the file do not make messages of any length. */
static void
test_long_texts_in_messages (void)
{
  g_autofree char *filler = g_strnfill (100000, 'x');
  g_autofree char *wood = g_strdup_printf (PARAMETER ("\"neck.wood\": \"%s\\u000a\""), filler);
  g_autofree char *strings = g_strdup_printf (PARAMETER ("\"strings.set\": [\"%s\"]"), filler);
  g_autofree char *entry = g_strdup_printf (ENTRIES ("{\"id\": \"%s\"}"), filler);
  const char *texts[] = { wood, strings, entry };

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++)
    {
      g_autoptr (GError) error = NULL;

      g_assert_null (rw_project_from_text (texts[i], -1, &error));
      g_assert_nonnull (error);
      assert_one_sentence (error->message);
    }
}

/* ---- on the disk ---- */

static void
assert_cannot_load (const char *path, int code)
{
  g_autoptr (GError) error = NULL;

  g_assert_null (rw_project_load (path, &error));
  g_assert_error (error, RW_FILE_ERROR, code);
  assert_one_sentence (error->message);
}

static void
test_save_and_load (void)
{
  g_autofree char *folder = g_dir_make_tmp ("rimwright-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "build.rimwright", NULL);
  g_autoptr (RwProject) project = rw_project_new (), back = NULL;
  g_autoptr (GError) error = NULL;

  random_design (&project->design);
  g_assert_true (rw_project_save (project, path, &error));
  g_assert_no_error (error);
  back = rw_project_load (path, &error);
  g_assert_no_error (error);
  g_assert_true (rw_project_equal (project, back));
  g_assert_cmpint (g_remove (path), ==, 0);
  g_assert_cmpint (g_rmdir (folder), ==, 0);
}

static void
test_cannot_load (void)
{
  g_autofree char *folder = g_dir_make_tmp ("rimwright-XXXXXX", NULL);
  g_autofree char *path = g_build_filename (folder, "a\nb", NULL);

  assert_cannot_load (path, RW_FILE_ERROR_ACCESS);
  assert_cannot_load (folder, RW_FILE_ERROR_ACCESS);
  assert_cannot_load ("/dev/null", RW_FILE_ERROR_DAMAGED);
  assert_cannot_load ("/dev/zero", RW_FILE_ERROR_TOO_BIG);
  g_assert_cmpint (g_rmdir (folder), ==, 0);
}

static void
add_damages (const char *kind, const Damage *damages, guint count, GTestDataFunc test)
{
  for (guint i = 0; i < count; i++)
    {
      g_autofree char *path = g_strdup_printf ("/project-file/%s/%s", kind, damages[i].name);

      g_test_add_data_func (path, &damages[i], test);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/project-file/round-trip", test_round_trip);
  g_test_add_func ("/project-file/comma-locale", test_comma_locale);
  g_test_add_func ("/project-file/texts", test_texts);
  g_test_add_func ("/project-file/defaults", test_defaults);
  g_test_add_func ("/project-file/number-forms", test_number_forms);
  g_test_add_func ("/project-file/one-line-a-parameter", test_one_line_a_parameter);
  g_test_add_func ("/project-file/strangers/kept", test_strangers_kept);
  g_test_add_func ("/project-file/strangers/stay", test_strangers_stay);
  g_test_add_func ("/project-file/strangers/of-removed-entry", test_strangers_of_removed_entry);
  add_damages ("damaged", damaged, G_N_ELEMENTS (damaged), test_damaged);
  add_damages ("wrong-value", wrong_values, G_N_ELEMENTS (wrong_values), test_wrong_value);
  add_damages ("too-new", too_new, G_N_ELEMENTS (too_new), test_too_new);
  g_test_add_func ("/project-file/messages/long-texts", test_long_texts_in_messages);
  g_test_add_func ("/project-file/disk/save-and-load", test_save_and_load);
  g_test_add_func ("/project-file/disk/cannot-load", test_cannot_load);
  return g_test_run ();
}
