/* Which limit a finding comes from. */
#include "check/limit.h"

#include "built.h"

/* The limits of the first finding of a rule. */
static GArray *
limits_of (const char *changes, const char *rule)
{
  g_autoptr (Built) built = built_new (changes);
  g_autoptr (GPtrArray) findings = rw_check (&built->design, &built->measured, &built->result);

  for (guint i = 0; i < findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (findings, i);

      if (g_str_equal (finding->rule, rule))
        return rw_finding_limits (finding, &built->design, &built->measured, &built->result);
    }
  g_test_fail_printf ("no %s", rule);
  return g_array_new (FALSE, FALSE, sizeof (RwParamId));
}

static void
test_one (void)
{
  g_autoptr (GArray) limits = limits_of ("limits.rim_wall=20", "rim.wall_thin");

  g_assert_cmpuint (limits->len, ==, 1);
  g_assert_cmpint (g_array_index (limits, RwParamId, 0), ==, RW_P_limits_rim_wall);
}

/* The tension stands between two limits, and the finding names both. */
static void
test_two (void)
{
  g_autoptr (GArray) limits = limits_of ("head.tension=12000", "head.tension_unusual");

  g_assert_cmpuint (limits->len, ==, 2);
  g_assert_cmpint (g_array_index (limits, RwParamId, 0), ==, RW_P_limits_tension_low);
  g_assert_cmpint (g_array_index (limits, RwParamId, 1), ==, RW_P_limits_tension_high);
}

/* A bridge that would stand lower than the nut is no matter of opinion. */
static void
test_none (void)
{
  g_autoptr (GArray) limits = limits_of ("neck.solve_for=action|bridge.height=8", "side.bridge_under_nut");

  g_assert_cmpuint (limits->len, ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/limit/one", test_one);
  g_test_add_func ("/limit/two", test_two);
  g_test_add_func ("/limit/none", test_none);
  return g_test_run ();
}
