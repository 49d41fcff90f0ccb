/* Worked backwards: a neck cut to a known angle gives a height, and the height gives the angle back. */
#include "making/backwards.h"

#include <math.h>

#include "making/making.h"
#include "built.h"

/* Bisection and the solver's brackets: well under what a bevel can show. */
#define ANGLE_CLOSE 1e-6 /* deg */
#define LENGTH_CLOSE 1e-6 /* mm */

static double
value_of (const RwProject *project, RwSlot slot)
{
  g_autofree RwResult *result = built_result (project);

  return result->value[slot];
}

static void
measure (RwProject *project, const char *id, double value)
{
  g_autoptr (GError) error = NULL;

  rw_making_measure (project, id, &value, 1, NULL, NULL, &error);
  g_assert_no_error (error);
}

/* A project with a neck at an angle and the bridge that was planned, and what is measured on it. */
static RwProject *
strung (double angle, const char *id)
{
  g_autoptr (RwProject) known = rw_project_new ();
  RwProject *project = rw_project_new ();

  measure (known, "neck.angle", angle);
  measure (known, "bridge.height", project->design.bridge_height);
  measure (project, id, value_of (known, (RwSlot) rw_slot_find (id)));
  return project;
}

static void
test_angle_comes_back (void)
{
  static const char *const ids[] = { "setup.action[12]", "setup.action[7]", "setup.action[19]", "strings.over_hoop" };

  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    for (double angle = 1; angle < 3.6; angle += 0.5)
      {
        g_autoptr (RwProject) project = strung (angle, ids[i]);
        RwBackwards backwards;

        g_assert_true (rw_backwards (project, &backwards));
        g_assert_cmpint ((int) backwards.slot, ==, rw_slot_find (ids[i]));
        g_assert_cmpfloat_with_epsilon (backwards.angle, angle, ANGLE_CLOSE);
        g_assert_cmpfloat_with_epsilon (backwards.bridge, project->design.bridge_height, LENGTH_CLOSE);
      }
}

/* What is proposed really gives the wanted action: the bridge with the angle reached, and the angle of the shim with
 * the bridge that there is. */
static void
test_remedies_give_the_action (void)
{
  g_autoptr (RwProject) project = strung (1.4, "setup.action[12]");
  g_autoptr (RwProject) with_bridge = rw_project_new (), with_shim = rw_project_new ();
  double wanted = project->design.setup_action;
  RwBackwards b;

  g_assert_true (rw_backwards (project, &b));
  measure (with_bridge, "neck.angle", b.angle);
  measure (with_bridge, "bridge.height", b.wanted_bridge);
  g_assert_cmpfloat_with_epsilon (value_of (with_bridge, RW_SETUP_ACTION + 12), wanted, LENGTH_CLOSE);

  measure (with_shim, "neck.angle", b.wanted_angle);
  measure (with_shim, "bridge.height", b.bridge);
  g_assert_cmpfloat_with_epsilon (value_of (with_shim, RW_SETUP_ACTION + 12), wanted, LENGTH_CLOSE);
}

/* Too little angle: the strings stand high, a lower bridge helps, or a shim at the head end, as thick as the heel is
 * deep times the tangent of what is missing. */
static void
test_signs (void)
{
  g_autoptr (RwProject) flat = strung (1.4, "setup.action[12]"), steep = strung (2.6, "setup.action[12]");
  RwBackwards b;

  g_assert_true (rw_backwards (flat, &b));
  g_assert_cmpfloat (b.measured, >, flat->design.setup_action);
  g_assert_cmpfloat (b.wanted_bridge, <, b.bridge);
  g_assert_cmpfloat (b.shim, >, 0);
  g_assert_cmpfloat_with_epsilon (b.shim, 62 * tan ((b.wanted_angle - 1.4) * G_PI / 180), 1e-6);

  g_assert_true (rw_backwards (steep, &b));
  g_assert_cmpfloat (b.wanted_bridge, >, b.bridge);
  g_assert_cmpfloat (b.shim, <, 0);
}

static void
test_nothing_measured (void)
{
  g_autoptr (RwProject) project = rw_project_new ();
  RwBackwards b;

  g_assert_false (rw_backwards (project, &b));
  measure (project, "rim.outer_diameter", 279.4);
  g_assert_false (rw_backwards (project, &b));
  measure (project, "setup.action[12]", 200); /* no neck angle explains this */
  g_assert_false (rw_backwards (project, &b));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/backwards/angle-comes-back", test_angle_comes_back);
  g_test_add_func ("/backwards/remedies-give-the-action", test_remedies_give_the_action);
  g_test_add_func ("/backwards/signs", test_signs);
  g_test_add_func ("/backwards/nothing-measured", test_nothing_measured);
  return g_test_run ();
}
