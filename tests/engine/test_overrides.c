/* The points where a measured value takes over: all that a maker can measure and something else depends on.  At each,
 * what is downstream moves, and what is upstream does not. */
#include "making/making.h"

#include <math.h>

#include "built.h"

typedef struct
{
  const char *id;
  double      by;         /* measured so much over what is worked out or set */
  const char *downstream; /* moves */
  const char *upstream;   /* stays, to the last bit */
  const char *settings;   /* "id=value" with a space between; NULL: the built-in build */
} Point;

static const Point points[] = {
  { "rim.outer_diameter", 0.8, "rim.circumference", "frets.position[7]", NULL },
  { "rim.wall", 0.5, "joint.inside_length", "rim.circumference", NULL },
  { "rim.height", -1, "hooks.tip_over_back", "rim.circumference", NULL },
  { "rim.course_thickness[2]", -0.7, "rim.blank_height", "rim.segment.outer_edge", NULL },
  { "head.nominal", 0.6, "hoop.bore", "rim.circumference", NULL },
  { "head.collar", 0.7, "hooks.leg", "hoop.bore", NULL },
  { "hoop.bore", 0.8, "hoop.outer_diameter", "rim.circumference", NULL },
  { "hoop.thickness", 0.4, "hoop.outer_diameter", "hoop.bore", NULL },
  { "hoop.height", 0.5, "hooks.leg", "hoop.bore", NULL },
  { "hoop.notch_depth", 0.5, "hooks.leg", "hoop.bore", NULL },
  { "hooks.leg", 2, "hooks.tip_over_back", "hoop.bore", NULL },
  { "shoes.stand_off", 1, "hooks.lean", "hooks.arc[3]", NULL },
  { "shoes.hole_below_edge", 1.5, "hooks.leg", "hoop.bore", NULL },
  { "fretboard.thickness", -0.4, "frets.floor", "frets.position[7]", NULL },
  { "neck.width[12]", 0.6, "frets.length[12]", "frets.position[7]", NULL },
  { "neck.width_at_rim", 0.8, "joint.heel_width", "frets.position[7]", NULL },
  { "frets.position[12]", 0.3, "setup.cents[1][12]", "frets.position[11]", NULL },
  { "frets.crown_height", 0.2, "neck.angle", "frets.position[7]", NULL },
  { "neck.angle", 0.4, "bridge.height", "rim.circumference", NULL },
  { "neck.angle", 0.4, "joint.heel_angle", "hoop.bore", NULL },
  { "neck.side_angle", 0.3, "bridge.line_angle", "frets.position[7]", NULL },
  { "neck.set_height", 0.5, "neck.angle", "rim.circumference", NULL },
  { "neck.nut_to_rim", 1.2, "neck.board_length", "rim.circumference", NULL },
  { "headstock.angle", 1, "neck.blank_length", "neck.angle", NULL },
  { "bridge.height", 0.6, "neck.angle", "rim.circumference", NULL },
  { "setup.action", 0.5, "neck.angle", "rim.circumference", NULL },
  { "head.tap_frequency", 20, "head.tension", "rim.circumference", "head.tension_from=tap_frequency" },
  { "head.tap_frequency", 20, "bridge.sag", "hoop.bore", "head.tension_from=tap_frequency" },
  { "rim.tone_ring_height", 1, "shoes.hole_below_edge", "rim.circumference", NULL },
  { "joint.rod_upper", 1, "joint.hole_on_rim[1]", "rim.circumference", NULL },
};

static RwProject *
project_with (const char *settings)
{
  RwProject *project = rw_project_new ();
  g_auto (GStrv) all = g_strsplit (settings != NULL ? settings : "", " ", -1);

  for (int i = 0; all[i] != NULL && *all[i] != '\0'; i++)
    {
      g_auto (GStrv) parts = g_strsplit (all[i], "=", 2);

      g_assert_true (rw_design_read (&project->design, (RwParamId) rw_param_find (parts[0]), parts[1],
                                     RW_STYLE_FILE, NULL));
    }
  return project;
}

static double
value_of (const RwResult *result, const char *id)
{
  int slot = rw_slot_find (id), param = rw_param_find (id);

  if (slot >= 0)
    return result->value[slot];
  if (param >= 0)
    return rw_design_get (&result->used, (RwParamId) param);
  return result->used.rim_course_thickness.at[1]; /* rim.course_thickness[2] */
}

static void
test_point (gconstpointer data)
{
  const Point *point = data;
  g_autoptr (RwProject) project = project_with (point->settings);
  g_autofree RwResult *before = built_result (project), *after = NULL;
  double value = value_of (before, point->id) + point->by;
  g_autoptr (GError) error = NULL;

  rw_making_measure (project, point->id, &value, 1, NULL, NULL, &error);
  g_assert_no_error (error);
  after = built_result (project);
  g_assert_cmpfloat (value_of (after, point->id), ==, value);
  g_assert_cmpfloat (fabs (value_of (after, point->downstream) - value_of (before, point->downstream)), >, 1e-4);
  g_assert_cmpfloat (value_of (after, point->upstream), ==, value_of (before, point->upstream));
}

/* Measured as it was worked out, it changes nothing. */
static void
test_equal (gconstpointer data)
{
  const Point *point = data;
  g_autoptr (RwProject) project = project_with (point->settings);
  g_autofree RwResult *before = built_result (project), *after = NULL;
  double value = value_of (before, point->id);

  g_assert_true (rw_making_measure (project, point->id, &value, 1, NULL, NULL, NULL));
  after = built_result (project);
  for (int slot = 0; slot < RW_SLOT_COUNT; slot++)
    if (isfinite (before->value[slot]))
      g_assert_cmpfloat_with_epsilon (after->value[slot], before->value[slot],
                                      1e-6 * fmax (1, fabs (before->value[slot])));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (points); i++)
    {
      g_autofree char *moves = g_strdup_printf ("/overrides/%s/moves-%s", points[i].id, points[i].downstream);
      g_autofree char *equal = g_strdup_printf ("/overrides/%s/equal-changes-nothing-%u", points[i].id, i);

      g_test_add_data_func (moves, &points[i], test_point);
      g_test_add_data_func (equal, &points[i], test_equal);
    }
  return g_test_run ();
}
