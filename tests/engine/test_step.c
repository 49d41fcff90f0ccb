/* The list of steps follows the build, can be walked from the first cut to the strings, and names what there is. */
#include "making/making.h"

#include <math.h>
#include <string.h>

#include "built.h"
#include "random_design.h"

static void
set (RwProject *project, const char *id, const char *text)
{
  g_assert_true (rw_design_read (&project->design, (RwParamId) rw_param_find (id), text, RW_STYLE_FILE, NULL));
}

/* ---- the table ---- */

static gboolean
names_something (const char *id)
{
  for (int i = 0; i < rw_dims_count; i++)
    if (strcmp (rw_dims[i].id, id) == 0)
      return TRUE;
  return rw_param_find (id) >= 0 || strcmp (id, "rim.course_thickness[k]") == 0;
}

static void
test_ids (void)
{
  for (int i = 0; i < rw_step_infos_count; i++)
    {
      g_autofree char *both = g_strjoin (" ", rw_step_infos[i].given, rw_step_infos[i].yields, NULL);
      g_auto (GStrv) ids = g_strsplit (both, " ", -1);

      for (int k = 0; ids[k] != NULL; k++)
        if (*ids[k] != '\0' && !names_something (ids[k]))
          g_error ("%s: %s", rw_step_name (rw_step_infos[i].step), ids[k]);
      g_assert_true (rw_step_infos[i].needs[0] != '\0' && rw_step_infos[i].work[0] != '\0');
    }
}

static void
test_names (void)
{
  for (RwStep step = 0; step < RW_STEP_COUNT; step++)
    g_assert_cmpint (rw_step_find (rw_step_name (step)), ==, (int) step);
  g_assert_cmpint (rw_step_find ("turning"), ==, -1);
}

/* What is given and what is yielded can be measured, as the ledger takes it. */
static void
test_measurable (void)
{
  g_autoptr (RwProject) project = rw_project_new ();
  g_autofree RwResult *result = built_result (project);
  const RwStepInfo *steps[RW_STEP_COUNT];
  int count = rw_steps_of (&project->design, steps);

  for (int i = 0; i < count; i++)
    {
      g_auto (GStrv) given = rw_step_given (steps[i], result), yields = rw_step_yields (steps[i], result);

      for (int k = 0; given[k] != NULL; k++)
        g_assert_nonnull (rw_measurable_unit (given[k]));
      for (int k = 0; yields[k] != NULL; k++)
        g_assert_nonnull (rw_measurable_unit (yields[k]));
    }
}

/* ---- it follows the build ---- */

typedef struct
{
  const char *name, *id, *value;
  RwStep      step;
  const char *title; /* NULL: there is no such step */
} Variant;

static const Variant variants[] = {
  { "segments", "rim.construction", "segments", RW_STEP_SEGMENTS, "Saw the segments" },
  { "staves", "rim.construction", "staves", RW_STEP_SEGMENTS, "Saw the staves" },
  { "plies", "rim.construction", "plies", RW_STEP_COURSES, "Laminate the plies" },
  { "no-stack-of-plies", "rim.construction", "plies", RW_STEP_STACK, NULL },
  { "rods", "joint.kind", "rods", RW_STEP_FIT, "Fit the neck to the rim" },
  { "stick", "joint.kind", "stick", RW_STEP_FIT, "Fit the stick and the neck to the rim" },
  { "tunnel", "fifth.route", "tunnel", RW_STEP_FIFTH, "Lay the short string’s tunnel" },
  { "no-short-string", "strings.set", "D4 0.254 p; B3 0.305 p; G3 0.33 p; D3 0.559 w 0.305", RW_STEP_FIFTH, NULL },
  { "fretless", "frets.count", "0", RW_STEP_FRETS, "Glue the fretboard" },
  { "tone-ring", "rim.tone_ring_height", "6", RW_STEP_EDGE, "Fit the tone ring and shape its seat" },
};

static void
test_variant (gconstpointer data)
{
  const Variant *variant = data;
  g_autoptr (RwProject) project = rw_project_new ();
  const RwStepInfo *info;

  set (project, variant->id, variant->value);
  info = rw_step_info (variant->step, &project->design);
  g_assert_cmpstr (info != NULL ? rw_step_info_title (info) : NULL, ==, variant->title);
}

static int
place_of (const RwProject *project, RwStep step)
{
  const RwStepInfo *steps[RW_STEP_COUNT];
  int count = rw_steps_of (&project->design, steps);

  for (int i = 0; i < count; i++)
    if (steps[i]->step == step)
      return i;
  return -1;
}

/* A tube goes in before the board is glued on; a peg waits for the side to be carved. */
static void
test_tunnel_before_board (void)
{
  g_autoptr (RwProject) project = rw_project_new ();

  g_assert_cmpint (place_of (project, RW_STEP_FIFTH), >, place_of (project, RW_STEP_CARVE));
  set (project, "fifth.route", "tunnel");
  g_assert_cmpint (place_of (project, RW_STEP_FIFTH), <, place_of (project, RW_STEP_FRETS));
}

/* ---- it can be walked ---- */

/* Any order in which only possible steps are taken comes to the end. */
static void
walk (RwProject *project)
{
  const RwStepInfo *steps[RW_STEP_COUNT];
  int count = rw_steps_of (&project->design, steps);

  for (int done = 0; done < count; done++)
    {
      const RwStepInfo *possible[RW_STEP_COUNT];
      int choices = 0;

      for (int i = 0; i < count; i++)
        if (rw_step_state (steps[i], project->made, &project->design, NULL) == RW_STEP_POSSIBLE)
          possible[choices++] = steps[i];
      g_assert_cmpint (choices, >, 0);
      rw_made_add (project->made, possible[g_test_rand_int_range (0, choices)]->step, NULL);
    }
  for (int i = 0; i < count; i++)
    g_assert_cmpint (rw_step_state (steps[i], project->made, &project->design, NULL), ==, RW_STEP_DONE);
}

static void
test_walk (void)
{
  for (int round = 0; round < 200; round++)
    {
      g_autoptr (RwProject) project = rw_project_new ();

      if (round > 0)
        random_design (&project->design);
      walk (project);
    }
}

static void
test_waits (void)
{
  g_autoptr (RwProject) project = rw_project_new ();
  const RwStepInfo *turn = rw_step_info (RW_STEP_TURN, &project->design);
  guint waits;

  g_assert_cmpint (rw_step_state (turn, project->made, &project->design, &waits), ==, RW_STEP_WAITING);
  g_assert_cmpuint (waits, ==, RW_STEP_BIT (RW_STEP_COURSES) | RW_STEP_BIT (RW_STEP_STACK));
  rw_made_add (project->made, RW_STEP_COURSES, NULL);
  rw_made_add (project->made, RW_STEP_STACK, NULL);
  g_assert_cmpint (rw_step_state (turn, project->made, &project->design, &waits), ==, RW_STEP_POSSIBLE);
  g_assert_cmpuint (waits, ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/step/ids", test_ids);
  g_test_add_func ("/step/names", test_names);
  g_test_add_func ("/step/measurable", test_measurable);
  g_test_add_func ("/step/tunnel-before-board", test_tunnel_before_board);
  g_test_add_func ("/step/walk", test_walk);
  g_test_add_func ("/step/waits", test_waits);
  for (guint i = 0; i < G_N_ELEMENTS (variants); i++)
    {
      g_autofree char *path = g_strconcat ("/step/variant/", variants[i].name, NULL);

      g_test_add_data_func (path, &variants[i], test_variant);
    }
  return g_test_run ();
}
