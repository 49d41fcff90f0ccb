/* What differs between two builds. */
#include "draw/compare.h"

#include <math.h>

typedef struct
{
  RwDesign design;
  RwResult before, now;
} Pair;

static void
begin (Pair *pair)
{
  rw_design_init (&pair->design);
  rw_solve (&pair->design, NULL, &pair->before);
}

static GArray *
compare (Pair *pair)
{
  rw_solve (&pair->design, NULL, &pair->now);
  return rw_compare (&pair->before, &pair->now);
}

static const RwDifference *
find (const GArray *found, int param, int slot)
{
  for (guint i = 0; i < found->len; i++)
    {
      const RwDifference *difference = &g_array_index (found, RwDifference, i);

      if (difference->subject.param == param && difference->subject.slot == slot)
        return difference;
    }
  return NULL;
}

static void
test_same (void)
{
  g_autoptr (GArray) found = NULL;
  Pair pair;

  begin (&pair);
  found = compare (&pair);
  g_assert_cmpuint (found->len, ==, 0);
}

static void
test_length (void)
{
  g_autoptr (GArray) found = NULL;
  const RwDifference *rim, *round_rim;
  Pair pair;

  begin (&pair);
  pair.design.rim_outer_diameter = 281;
  found = compare (&pair);

  rim = find (found, RW_P_rim_outer_diameter, -1);
  g_assert_nonnull (rim);
  g_assert_true (rim == &g_array_index (found, RwDifference, 0)); /* what was set comes first */
  g_assert_cmpfloat (rim->before, ==, 279);
  g_assert_cmpfloat (rim->now, ==, 281);

  /* pi times 2 mm more */
  round_rim = find (found, -1, RW_RIM_CIRCUMFERENCE);
  g_assert_nonnull (round_rim);
  g_assert_cmpfloat_with_epsilon (round_rim->now - round_rim->before, 2 * G_PI, 1e-9);

  /* the frets have nothing to do with the rim */
  for (int n = 0; n <= RW_FRETS_MAX; n++)
    g_assert_null (find (found, -1, RW_FRETS_POSITION + n));
}

/* All 19 frets move with the scale, the last of them by most: L (1 - 2^(-19/12)). */
static void
test_family (void)
{
  g_autoptr (GArray) found = NULL;
  const RwDifference *frets;
  Pair pair;

  begin (&pair);
  pair.design.scale_length = 660;
  found = compare (&pair);
  frets = find (found, -1, RW_FRETS_POSITION + 19);
  g_assert_nonnull (frets);
  g_assert_cmpint (frets->more, ==, 18);
  g_assert_cmpfloat_with_epsilon (frets->now - frets->before, 10 * (1 - exp2 (-19 / 12.0)), 1e-9);
  g_assert_null (find (found, -1, RW_FRETS_POSITION + 18));
}

static void
test_choice (void)
{
  g_autoptr (GArray) found = NULL;
  const RwDifference *joint, *stick;
  Pair pair;

  begin (&pair);
  pair.design.joint_kind = RW_JOINT_STICK;
  found = compare (&pair);
  joint = find (found, RW_P_joint_kind, -1);
  g_assert_nonnull (joint);
  g_assert_true (isnan (joint->before) && isnan (joint->now));

  /* a row that only one of the two has */
  stick = find (found, -1, RW_JOINT_STICK_ON_HEEL);
  g_assert_nonnull (stick);
  g_assert_true (isnan (stick->before));
  g_assert_cmpfloat_with_epsilon (stick->now, 2.4 + 36, 1e-9); /* set height and stick_below */
}

/* The neck angle is a parameter and a dimension; while it is worked out only the dimension counts. */
static void
test_twin (void)
{
  g_autoptr (GArray) found = NULL;
  Pair pair;

  begin (&pair);
  pair.design.neck_angle = 4;
  found = compare (&pair);
  g_assert_cmpuint (found->len, ==, 0);
}

int
main (int argc, char *argv[])
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/compare/same", test_same);
  g_test_add_func ("/compare/length", test_length);
  g_test_add_func ("/compare/family", test_family);
  g_test_add_func ("/compare/choice", test_choice);
  g_test_add_func ("/compare/twin", test_twin);
  return g_test_run ();
}
