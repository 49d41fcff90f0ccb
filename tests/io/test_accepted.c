/* What the maker accepts: kept in the file as it is, undone like anything else, and gone back on where it got worse. */
#include "check/acceptance.h"
#include "check/answer.h"
#include "io/list_file.h"
#include "io/project_file.h"
#include "project/history.h"

#include <string.h>

#define RULE "hooks.clear_heel"
#define ABOUT "hooks.heel_gap"

/* The built-in build with the first hook so far from the heel. */
static RwProject *
project_new (double heel_gap)
{
  RwProject *project = rw_project_new ();

  project->design.hooks_heel_gap = heel_gap;
  return project;
}

static const RwFinding *
find (const RwAnswer *answer)
{
  for (guint i = 0; i < answer->findings->len; i++)
    {
      const RwFinding *finding = g_ptr_array_index (answer->findings, i);

      if (strcmp (finding->rule, RULE) == 0)
        return finding;
    }
  return NULL;
}

static void
test_round_trip (void)
{
  g_autoptr (RwProject) project = project_new (10);
  g_autoptr (GError) error = NULL;

  rw_accepted_add (project->accepted, RULE, ABOUT, RW_CAUTION, "2026-05-04", "“as on the old one”, he said");
  rw_accepted_add (project->accepted, "no.such_rule", "rim.wall", RW_NOTE, NULL, NULL);
  g_autofree char *text = rw_project_to_text (project);
  g_autoptr (RwProject) again = rw_project_from_text (text, -1, &error);
  g_assert_no_error (error);
  g_assert_true (rw_project_equal (project, again));
  g_autofree char *same = rw_project_to_text (again);
  g_assert_cmpstr (same, ==, text);
}

/* A file of a version that knows more: what it says besides is kept. */
static void
test_strangers (void)
{
  const char *text = "{\"rimwright\": 1, \"accepted\": [{\"rule\": \"rim.loads\", \"about\": \"rim.wall\","
                     " \"severity\": \"note\", \"until\": \"spring\"}]}";
  g_autoptr (RwProject) project = rw_project_from_text (text, -1, NULL);

  g_assert_nonnull (project);
  g_assert_cmpuint (project->accepted->items->len, ==, 1);
  g_autofree char *written = rw_project_to_text (project);
  g_assert_nonnull (strstr (written, "\"until\": \"spring\""));
}

static const char *const damaged[] = {
  "{\"rimwright\": 1, \"accepted\": {}}",
  "{\"rimwright\": 1, \"accepted\": [7]}",
  "{\"rimwright\": 1, \"accepted\": [{\"rule\": \"rim.loads\", \"severity\": \"note\"}]}",
  "{\"rimwright\": 1, \"accepted\": [{\"rule\": \"a\", \"about\": \"b\", \"severity\": \"grave\"}]}",
  "{\"rimwright\": 1, \"accepted\": [{\"rule\": \"a\", \"about\": \"b\", \"severity\": \"note\", \"date\": \"May\"}]}",
  "{\"rimwright\": 1, \"accepted\": [{\"rule\": \"a\", \"about\": \"b\", \"severity\": \"note\", \"reason\": 1}]}",
  ("{\"rimwright\": 1, \"accepted\": [{\"rule\": \"a\", \"about\": \"b\", \"severity\": \"note\"},"
   " {\"rule\": \"a\", \"about\": \"b\", \"severity\": \"stop\"}]}"),
};

static void
test_damaged (void)
{
  for (gsize i = 0; i < G_N_ELEMENTS (damaged); i++)
    {
      g_autoptr (GError) error = NULL;
      g_autoptr (RwProject) project = rw_project_from_text (damaged[i], -1, &error);

      if (project != NULL)
        g_test_fail_printf ("was read: %s", damaged[i]);
      else
        g_assert_cmpuint (error->domain, ==, RW_FILE_ERROR);
    }
}

/* Accepted, it is the last of the findings, counts no more, and its reason stands in the lists. */
static void
test_accepted (void)
{
  g_autoptr (RwProject) project = project_new (5);
  g_autoptr (RwAnswer) before = rw_answer_new (project);

  g_assert_cmpint (find (before)->severity, ==, RW_STOP);
  g_assert_true (rw_answer_stops (before));
  rw_accepted_add (project->accepted, RULE, ABOUT, RW_STOP, "2026-05-04", "shoes filed thin there");
  g_autoptr (RwAnswer) after = rw_answer_new (project);
  const RwFinding *finding = find (after);

  g_assert_cmpstr (finding->reason, ==, "shoes filed thin there");
  g_assert_cmpstr (finding->accepted_on, ==, "2026-05-04");
  g_assert_true (finding == g_ptr_array_index (after->findings, after->findings->len - 1));
  g_assert_false (rw_answer_stops (after));
  g_assert_cmpuint (rw_findings_open (after->findings, RW_STOP), ==, 0);
  g_autofree char *text = rw_findings_write (project, after, FALSE, RW_LIST_TEXT, RW_UNITS_MM);
  g_autofree char *json = rw_findings_write (project, after, FALSE, RW_LIST_JSON, RW_UNITS_MM);
  g_assert_nonnull (strstr (text, "accepted: shoes filed thin there (2026-05-04)"));
  g_assert_nonnull (strstr (json, "\"accepted\": \"shoes filed thin there\""));
}

/* A caution that was accepted and is a stop now is back; one that has become milder is not. */
static void
test_worse (void)
{
  g_autoptr (RwProject) project = project_new (10);

  rw_accepted_add (project->accepted, RULE, ABOUT, RW_CAUTION, NULL, "enough for my wrench");
  g_autoptr (RwAnswer) now = rw_answer_new (project);
  g_assert_nonnull (find (now)->reason);
  project->design.hooks_heel_gap = 5;
  g_autoptr (RwAnswer) worse = rw_answer_new (project);
  g_assert_null (find (worse)->reason);
  g_assert_true (rw_answer_stops (worse));
  rw_accepted_add (project->accepted, RULE, ABOUT, RW_STOP, NULL, "that too");
  project->design.hooks_heel_gap = 10;
  g_autoptr (RwAnswer) milder = rw_answer_new (project);
  g_assert_cmpstr (find (milder)->reason, ==, "that too");
}

static void
test_undo (void)
{
  RwHistory *history = rw_history_new (project_new (10));
  RwProject *next = rw_project_copy (rw_history_present (history));

  rw_accepted_add (next->accepted, RULE, ABOUT, RW_CAUTION, NULL, "enough");
  rw_history_put (history, next, "Accept a finding", NULL);
  g_assert_cmpuint (rw_history_present (history)->accepted->items->len, ==, 1);
  g_assert_true (rw_history_undo (history));
  g_assert_cmpuint (rw_history_present (history)->accepted->items->len, ==, 0);
  g_assert_true (rw_history_redo (history));
  g_assert_nonnull (rw_accepted_find (rw_history_present (history)->accepted, RULE, ABOUT));
  rw_history_free (history);
}

static void
test_remove (void)
{
  g_autoptr (RwAccepted) accepted = rw_accepted_new ();

  rw_accepted_add (accepted, RULE, ABOUT, RW_CAUTION, NULL, "one");
  rw_accepted_add (accepted, RULE, ABOUT, RW_NOTE, NULL, "two");
  g_assert_cmpuint (accepted->items->len, ==, 1);
  g_assert_cmpstr (rw_accepted_find (accepted, RULE, ABOUT)->reason, ==, "two");
  g_assert_false (rw_accepted_remove (accepted, RULE, "rim.wall"));
  g_assert_true (rw_accepted_remove (accepted, RULE, ABOUT));
  g_assert_null (rw_accepted_find (accepted, RULE, ABOUT));
}

/* The parameters that a remedy is listed with do what it says. */
static void
test_remedies (void)
{
  g_autoptr (RwProject) project = project_new (10);
  g_autoptr (RwAnswer) answer = rw_answer_new (project);
  g_autofree char *text = rw_findings_write (project, answer, TRUE, RW_LIST_TEXT, RW_UNITS_MM);
  g_autofree char *json = rw_findings_write (project, answer, TRUE, RW_LIST_JSON, RW_UNITS_MM);

  g_assert_nonnull (strstr (text, "remedy: Start the hooks 2.5 mm farther from the heel [hooks.heel_gap=12.5]"));
  g_assert_nonnull (strstr (json, "\"set\": { \"hooks.heel_gap\": \"12.5\" }"));
  project->design.hooks_heel_gap = 12.5;
  g_autoptr (RwAnswer) cured = rw_answer_new (project);
  g_assert_null (find (cured));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/accepted/file/round-trip", test_round_trip);
  g_test_add_func ("/accepted/file/strangers", test_strangers);
  g_test_add_func ("/accepted/file/damaged", test_damaged);
  g_test_add_func ("/accepted/answer", test_accepted);
  g_test_add_func ("/accepted/worse", test_worse);
  g_test_add_func ("/accepted/undo", test_undo);
  g_test_add_func ("/accepted/remove", test_remove);
  g_test_add_func ("/accepted/remedies", test_remedies);
  return g_test_run ();
}
