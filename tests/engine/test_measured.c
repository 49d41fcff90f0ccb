#include <math.h>
#include <string.h>

#include "project/measured.h"

static int
count_set (const RwMeasured *measured)
{
  int count = 0;

  for (guint i = 0; i < G_N_ELEMENTS (measured->param); i++)
    count += !isnan (measured->param[i]);
  for (guint i = 0; i < G_N_ELEMENTS (measured->course_thickness); i++)
    count += !isnan (measured->course_thickness[i]);
  for (guint i = 0; i < G_N_ELEMENTS (measured->slot); i++)
    count += !isnan (measured->slot[i]);
  return count;
}

static void
test_empty (void)
{
  g_autofree RwMeasured *measured = g_new0 (RwMeasured, 1);

  rw_measured_init (measured);
  g_assert_cmpint (count_set (measured), ==, 0);
}

/* One value of each sort, and nothing else. */
static void
test_set (void)
{
  g_autofree RwMeasured *measured = g_new (RwMeasured, 1);

  rw_measured_init (measured);
  g_assert_true (rw_measured_set (measured, "rim.outer_diameter", 279.2, NULL));
  g_assert_cmpfloat (measured->param[RW_P_rim_outer_diameter], ==, 279.2);
  g_assert_true (rw_measured_set (measured, "hooks.arc[3]", 101.5, NULL));
  g_assert_cmpfloat (measured->slot[RW_HOOKS_ARC + 3], ==, 101.5);
  g_assert_true (rw_measured_set (measured, "rim.course_thickness[2]", 23.8, NULL));
  g_assert_cmpfloat (measured->course_thickness[1], ==, 23.8);
  g_assert_true (rw_measured_set (measured, "hooks.count", 20, NULL));
  g_assert_cmpint (count_set (measured), ==, 4);
}

/* Where an id is both, it is one value. */
static void
test_both (void)
{
  static const struct
  {
    const char *id;
    RwParamId   param;
    RwSlot      slot;
    double      value;
  } both[] = {
    { "neck.angle", RW_P_neck_angle, RW_NECK_ANGLE, 2.1 },
    { "bridge.height", RW_P_bridge_height, RW_BRIDGE_HEIGHT, 15.7 },
    { "head.tension", RW_P_head_tension, RW_HEAD_TENSION, 5500 },
    { "head.tap_frequency", RW_P_head_tap_frequency, RW_HEAD_TAP_FREQUENCY, 480 },
  };
  g_autofree RwMeasured *measured = g_new (RwMeasured, 1);

  rw_measured_init (measured);
  for (guint i = 0; i < G_N_ELEMENTS (both); i++)
    {
      g_assert_true (rw_measured_set (measured, both[i].id, both[i].value, NULL));
      g_assert_cmpfloat (measured->param[both[i].param], ==, both[i].value);
      g_assert_cmpfloat (measured->slot[both[i].slot], ==, both[i].value);
    }
  g_assert_cmpint (count_set (measured), ==, 8);
}

static void
test_refused (void)
{
  static const struct
  {
    const char *id;
    double      value;
    int         code;
  } cases[] = {
    { "rim.colour", 1, RW_PARAM_ERROR_UNKNOWN },
    { "", 1, RW_PARAM_ERROR_UNKNOWN },
    { "hooks.arc[0]", 1, RW_PARAM_ERROR_UNKNOWN },
    { "hooks.arc", 1, RW_PARAM_ERROR_UNKNOWN },
    { "rim.course_thickness[0]", 20, RW_PARAM_ERROR_UNKNOWN },
    { "rim.course_thickness[13]", 20, RW_PARAM_ERROR_UNKNOWN },
    { "rim.course_thickness[01]", 20, RW_PARAM_ERROR_UNKNOWN },
    { "build.handed", 1, RW_PARAM_ERROR_VALUE },
    { "neck.wood", 1, RW_PARAM_ERROR_VALUE },
    { "strings.set", 1, RW_PARAM_ERROR_VALUE },
    { "rim.course_wood", 1, RW_PARAM_ERROR_VALUE },
    { "rim.outer_diameter", 9999, RW_PARAM_ERROR_RANGE },
    { "hooks.count", 17.5, RW_PARAM_ERROR_RANGE },
    { "hooks.arc[3]", 1e7, RW_PARAM_ERROR_RANGE },
    { "rim.course_thickness[1]", 0, RW_PARAM_ERROR_RANGE },
    { "rim.course_thickness", 20, RW_PARAM_ERROR_VALUE },
  };
  g_autofree RwMeasured *measured = g_new (RwMeasured, 1);

  rw_measured_init (measured);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autoptr (GError) error = NULL;

      g_test_message ("%s=%g", cases[i].id, cases[i].value);
      g_assert_false (rw_measured_set (measured, cases[i].id, cases[i].value, &error));
      g_assert_error (error, RW_PARAM_ERROR, cases[i].code);
    }
  g_assert_cmpint (count_set (measured), ==, 0);
}

static void
test_not_finite (void)
{
  static const char *const ids[] = { "rim.wall", "hooks.arc[3]", "neck.angle", "rim.course_thickness[1]" };
  g_autofree RwMeasured   *measured = g_new (RwMeasured, 1);

  rw_measured_init (measured);
  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    {
      g_assert_false (rw_measured_set (measured, ids[i], NAN, NULL));
      g_assert_false (rw_measured_set (measured, ids[i], INFINITY, NULL));
    }
  g_assert_false (rw_measured_set (measured, "rim.course_thickness", 20, NULL));
  g_assert_cmpint (count_set (measured), ==, 0);
}

static void
test_units (void)
{
  g_assert_cmpstr (rw_measurable_unit ("rim.outer_diameter"), ==, "mm");
  g_assert_cmpstr (rw_measurable_unit ("neck.angle"), ==, "deg");
  g_assert_cmpstr (rw_measurable_unit ("strings.tension[1]"), ==, "N");
  g_assert_cmpstr (rw_measurable_unit ("rim.course_thickness"), ==, "mm");
  g_assert_cmpstr (rw_measurable_unit ("rim.course_thickness[12]"), ==, "mm");
  g_assert_cmpstr (rw_measurable_unit ("hooks.count"), ==, "");
  g_assert_null (rw_measurable_unit ("build.handed"));
  g_assert_null (rw_measurable_unit ("strings.set"));
  g_assert_null (rw_measurable_unit ("hooks.arc"));
  g_assert_null (rw_measurable_unit ("nothing"));
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/measured/empty", test_empty);
  g_test_add_func ("/measured/set", test_set);
  g_test_add_func ("/measured/both", test_both);
  g_test_add_func ("/measured/refused", test_refused);
  g_test_add_func ("/measured/not-finite", test_not_finite);
  g_test_add_func ("/measured/units", test_units);
  return g_test_run ();
}
