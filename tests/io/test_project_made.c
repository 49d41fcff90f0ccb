/* What is made and what papers left, in project files: read back to the last bit, foreign members kept, nonsense
 * refused in one sentence. */
#include "io/project_file.h"

#include <string.h>

#include "making/making.h"
#include "built.h"
#include "random_design.h"

#define ROUNDS 60

static RwProject *
read_good (const char *text)
{
  g_autoptr (GError) error = NULL;
  RwProject *project = rw_project_from_text (text, -1, &error);

  g_assert_no_error (error);
  return project;
}

static void
issue (RwProject *project, const char *date, RwUnits units)
{
  const char *const papers[] = { "rim-strip", "heel", NULL };
  g_autofree RwResult *now = built_result (project);

  rw_issued_add (project->issued, date, units, papers, rw_making_record (now));
}

static void
test_round_trip (void)
{
  for (int round = 0; round < ROUNDS; round++)
    {
      g_autoptr (RwProject) project = rw_project_new (), back = NULL;
      g_autofree char *text = NULL, *again = NULL;

      random_design_near (&project->design, 8);
      for (RwStep step = 0; step < RW_STEP_COUNT; step++)
        if (g_test_rand_bit ())
          rw_making_mark (project, step, g_test_rand_bit () ? "2026-05-04" : NULL, NULL);
      if (g_test_rand_bit ())
        issue (project, "2026-05-06", RW_UNITS_FRACTION_32);
      text = rw_project_to_text (project);
      back = read_good (text);
      again = rw_project_to_text (back);
      g_assert_true (rw_project_equal (project, back));
      g_assert_cmpstr (text, ==, again);
    }
}

/* Where nothing is made and nothing has left, a file says nothing of it. */
static void
test_left_out (void)
{
  g_autoptr (RwProject) project = rw_project_new ();
  g_autofree char *text = rw_project_to_text (project);

  g_assert_null (strstr (text, "\"made\""));
  g_assert_null (strstr (text, "\"issued\""));
}

static void
test_strangers (void)
{
  static const char file[]
      = "{ \"rimwright\": 1, \"made\": ["
        "{ \"step\": \"turn\", \"date\": \"2026-05-04\", \"values\": { \"rim.wall\": 14, \"rim.colour\": \"red\" },"
        "  \"by\": \"lamp light\" }, { \"step\": \"gilding\", \"leaf\": 2 } ],"
        "\"issued\": [ { \"papers\": [ \"heel\" ], \"values\": { \"hoop.bore\": 281, \"hoop.gloss\": 3 }, "
        "\"ink\": 1 } ] }";
  g_autoptr (RwProject) project = read_good (file), back = NULL;
  g_autofree char *text = rw_project_to_text (project);
  static const char *const kept[] = { "\"rim.colour\": \"red\"", "\"by\": \"lamp light\"", "\"gilding\"",
                                      "\"leaf\": 2", "\"hoop.gloss\": 3", "\"ink\": 1" };

  for (guint i = 0; i < G_N_ELEMENTS (kept); i++)
    g_assert_nonnull (strstr (text, kept[i]));
  back = read_good (text);
  g_assert_true (rw_project_equal (project, back));
  g_assert_cmpfloat (rw_made_find (project->made, RW_STEP_TURN)->held->design.rim_wall, ==, 14);
}

typedef struct
{
  const char *name, *text;
  int         code;
  const char *says;
} Refusal;

static const Refusal refusals[] = {
  { "made-no-list", "\"made\": {}", RW_FILE_ERROR_DAMAGED, "“made”" },
  { "made-no-step", "\"made\": [ { \"date\": \"\" } ]", RW_FILE_ERROR_DAMAGED, "“made”" },
  { "made-no-values", "\"made\": [ { \"step\": \"turn\" } ]", RW_FILE_ERROR_DAMAGED, "“values”" },
  { "made-twice",
    "\"made\": [ { \"step\": \"turn\", \"values\": {} }, { \"step\": \"turn\", \"values\": {} } ]",
    RW_FILE_ERROR_DAMAGED, "“turn”" },
  { "made-date", "\"made\": [ { \"step\": \"turn\", \"date\": \"4 May\", \"values\": {} } ]", RW_FILE_ERROR_VALUE,
    "“turn”" },
  { "made-range", "\"made\": [ { \"step\": \"turn\", \"values\": { \"rim.wall\": 900 } } ]", RW_FILE_ERROR_VALUE,
    "rim.wall" },
  { "made-text", "\"made\": [ { \"step\": \"turn\", \"values\": { \"rim.circumference\": \"long\" } } ]",
    RW_FILE_ERROR_VALUE, "“rim.circumference”" },
  { "made-limit", "\"made\": [ { \"step\": \"turn\", \"values\": { \"limits.relief\": 0.5 } } ]", RW_FILE_ERROR_VALUE,
    "limits.relief" },
  { "issued-no-list", "\"issued\": 1", RW_FILE_ERROR_DAMAGED, "“issued”" },
  { "issued-no-object", "\"issued\": [ 1 ]", RW_FILE_ERROR_DAMAGED, "“issued”" },
  { "issued-no-papers", "\"issued\": [ { \"values\": {} } ]", RW_FILE_ERROR_DAMAGED, "“papers”" },
  { "issued-units", "\"issued\": [ { \"units\": \"ells\", \"papers\": [ \"heel\" ], \"values\": {} } ]",
    RW_FILE_ERROR_VALUE, "“ells”" },
};

static void
test_refusal (gconstpointer data)
{
  const Refusal *refusal = data;
  g_autofree char *file = g_strdup_printf ("{ \"rimwright\": 1, %s }", refusal->text);
  g_autoptr (GError) error = NULL;

  g_assert_null (rw_project_from_text (file, -1, &error));
  g_assert_error (error, RW_FILE_ERROR, refusal->code);
  if (strstr (error->message, refusal->says) == NULL)
    g_error ("%s", error->message);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/project-made/round-trip", test_round_trip);
  g_test_add_func ("/project-made/left-out", test_left_out);
  g_test_add_func ("/project-made/strangers", test_strangers);
  for (guint i = 0; i < G_N_ELEMENTS (refusals); i++)
    {
      g_autofree char *path = g_strconcat ("/project-made/refused/", refusals[i].name, NULL);

      g_test_add_data_func (path, &refusals[i], test_refusal);
    }
  return g_test_run ();
}
