/* A made part of which the design asks something else: found, with its numbers, and set right by changing the design
 * back. */
#include "making/making.h"
#include "making/remedy.h"

#include <math.h>
#include <string.h>

#include "check/answer.h"
#include "expected.h"

static void
mark (RwProject *project, RwStep step)
{
  g_autoptr (GError) error = NULL;

  rw_making_mark (project, step, "2026-05-04", &error);
  g_assert_no_error (error);
}

static const RwFinding *
misfit (const RwAnswer *answer)
{
  for (guint i = 0; i < answer->findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (answer->findings, i);

      if (strcmp (finding->rule, "made.misfit") == 0)
        return finding;
    }
  return NULL;
}

/* A project with a step made, and one number of the design changed after it. */
static RwProject *
changed_after (RwStep step, RwParamId id, double value)
{
  RwProject *project = rw_project_new ();

  mark (project, step);
  rw_design_set (&project->design, id, value, NULL);
  return project;
}

/* bore = head.nominal + 2 clearance: a head 2 mm larger wants a hoop 2 mm larger; its habit is 0.5 mm. */
static void
test_found (void)
{
  g_autoptr (RwProject) project = changed_after (RW_STEP_HOOP, RW_P_head_nominal, 281.4);
  g_autoptr (RwAnswer) answer = rw_answer_new (project);
  const RwFinding *finding = misfit (answer);

  g_assert_nonnull (finding);
  g_assert_cmpint (finding->severity, ==, RW_CAUTION);
  expected_near ("made", finding->values[0], 280.9, 1e-9);
  expected_near ("asked", finding->values[1], 282.9, 1e-9);
  expected_near ("off", finding->values[2], 2, 1e-9);
  g_assert_cmpstr (finding->ids[0], ==, "hoop.bore");
  g_assert_true (g_str_has_prefix (finding->text, "Hoop inside diameter: made to 280.9 mm"));
}

/* Within its tolerance, as made, or not made at all: nothing to say. */
static void
test_silent (void)
{
  g_autoptr (RwProject) little = changed_after (RW_STEP_HOOP, RW_P_head_nominal, 279.7), as_made = rw_project_new (),
                        unmade = rw_project_new ();

  mark (as_made, RW_STEP_HOOP);
  rw_design_set (&unmade->design, RW_P_head_nominal, 281.4, NULL);
  const RwProject *const projects[] = { little, as_made, unmade };
  for (gsize i = 0; i < G_N_ELEMENTS (projects); i++)
    {
      g_autoptr (RwAnswer) answer = rw_answer_new (projects[i]);

      g_assert_null (misfit (answer));
    }
}

static void
read_off (RwProject *project, const char *id, double value)
{
  g_autoptr (GError) error = NULL;

  rw_making_measure (project, id, &value, 1, "2026-05-05", "", &error);
  g_assert_no_error (error);
}

/* A hoop that came out 0.8 mm wider is no finding here, read before it was marked or after; a head that is changed
 * to suit it neither; a head that is changed otherwise is one, told by the reading. */
static void
test_readings (void)
{
  for (int first = 0; first < 2; first++)
    {
      g_autoptr (RwProject) project = rw_project_new ();

      if (first)
        read_off (project, "hoop.bore", 281.7);
      mark (project, RW_STEP_HOOP);
      if (!first)
        read_off (project, "hoop.bore", 281.7);
      g_autoptr (RwAnswer) came_out = rw_answer_new (project);
      g_assert_cmpstr (misfit (came_out) != NULL ? misfit (came_out)->text : NULL, ==, NULL);
      rw_design_set (&project->design, RW_P_head_nominal, 280.2, NULL);
      g_autoptr (RwAnswer) suited = rw_answer_new (project);
      g_assert_null (misfit (suited));
      rw_design_set (&project->design, RW_P_head_nominal, 278.4, NULL);
      g_autoptr (RwAnswer) changed = rw_answer_new (project);
      g_assert_nonnull (misfit (changed));
      expected_near ("read", misfit (changed)->values[0], 281.7, 1e-9);
      expected_near ("asked", misfit (changed)->values[1], 279.9, 1e-9);
    }
}

/* Segments in a rim that is turned are no parts any more. */
static void
test_used_up (void)
{
  g_autoptr (RwProject) project = rw_project_new ();

  mark (project, RW_STEP_SEGMENTS);
  read_off (project, "rim.outer_diameter", 282);
  g_autoptr (RwAnswer) before = rw_answer_new (project);
  g_assert_nonnull (misfit (before));
  mark (project, RW_STEP_TURN);
  g_autoptr (RwAnswer) after = rw_answer_new (project);
  g_assert_null (misfit (after));
}

/* Angles are told in degrees; one finding for each step, whatever number of its sizes is off. */
static void
test_one_for_a_step (void)
{
  g_autoptr (RwProject) project = changed_after (RW_STEP_SEGMENTS, RW_P_rim_outer_diameter, 290);
  g_autoptr (RwAnswer) answer = rw_answer_new (project);
  int count = 0;

  for (guint i = 0; i < answer->findings->len; i++)
    count += strcmp (((RwFinding *) g_ptr_array_index (answer->findings, i))->rule, "made.misfit") == 0;
  g_assert_cmpint (count, ==, 1);
  /* 2 (Ro + a) tan(18 degrees): from 142.5 to 148 mm. */
  expected_near ("long edge", misfit (answer)->values[2], 2 * 5.5 * tan (G_PI / 10), 1e-9);
}

/* The change undone is among what is offered, and each of it is proven; what is made no remedy touches. */
static void
test_remedies (void)
{
  static const struct
  {
    RwStep    step;
    RwParamId id;
    double    value;
  } changes[] = {
    { RW_STEP_HOOP, RW_P_head_nominal, 281.4 },
    { RW_STEP_SEGMENTS, RW_P_rim_outer_diameter, 283 },
    { RW_STEP_FRETBOARD, RW_P_head_nominal, 283 },
    { RW_STEP_SHOES, RW_P_rim_outer_diameter, 281 },
    { RW_STEP_FIT, RW_P_rim_tone_ring_height, 4 },
  };

  for (gsize i = 0; i < G_N_ELEMENTS (changes); i++)
    {
      g_autoptr (RwProject) project = changed_after (changes[i].step, changes[i].id, changes[i].value);
      g_autoptr (RwAnswer) answer = rw_answer_new (project);
      const RwFinding *finding = misfit (answer);
      double before = g_ascii_strtod (rw_param (changes[i].id)->initial, NULL), nearest = INFINITY;

      g_assert_nonnull (finding);
      g_autoptr (GPtrArray) remedies = rw_remedies (&project->design, &answer->measured, finding);
      for (guint k = 0; k < remedies->len; k++)
        {
          const RwRemedy *remedy = g_ptr_array_index (remedies, k);
          g_autoptr (RwProject) after = rw_project_copy (project);

          g_test_message ("%s: %s", finding->text, remedy->text);
          after->design = remedy->design;
          g_autoptr (RwAnswer) then = rw_answer_new (after);
          g_assert_true (misfit (then) == NULL || strcmp (misfit (then)->ids[0], finding->ids[0]) != 0);
          if (remedy->param == changes[i].id)
            nearest = fmin (nearest, fabs (remedy->values[0] - before));
        }
      expected_near (rw_param (changes[i].id)->id, nearest, 0, 0.05);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/misfit/found", test_found);
  g_test_add_func ("/misfit/silent", test_silent);
  g_test_add_func ("/misfit/readings", test_readings);
  g_test_add_func ("/misfit/used-up", test_used_up);
  g_test_add_func ("/misfit/one-for-a-step", test_one_for_a_step);
  g_test_add_func ("/misfit/remedies", test_remedies);
  return g_test_run ();
}
