/* Since the last papers: what has changed, and which papers show it. */
#include "paper/since.h"

#include <math.h>
#include <string.h>

#include "making/making.h"
#include "paper/paper.h"
#include "paper/paper_shows.h"
#include "built.h"

static void
issue (RwProject *project, const char *date, const char *paper, const char *other)
{
  const char *const papers[] = { paper, other, NULL };
  g_autofree RwResult *now = built_result (project);

  rw_issued_add (project->issued, date, RW_UNITS_MM, papers, rw_making_record (now));
}

static RwSince *
since (const RwProject *project)
{
  g_autofree RwResult *now = built_result (project);

  return rw_since_new (project, now);
}

static const RwSincePaper *
paper_of (const RwSince *since, const char *paper)
{
  for (guint i = 0; i < since->papers->len; i++)
    {
      const RwSincePaper *found = g_ptr_array_index (since->papers, i);

      if (strcmp (found->paper, paper) == 0)
        return found;
    }
  return NULL;
}

static const RwSinceRow *
row_of (const RwSince *since, const char *id)
{
  for (guint i = 0; i < since->rows->len; i++)
    {
      const RwSinceRow *row = g_ptr_array_index (since->rows, i);

      if (strcmp (row->id, id) == 0)
        return row;
    }
  return NULL;
}

static void
test_none (void)
{
  g_autoptr (RwProject) project = rw_project_new ();
  g_autoptr (RwSince) none = since (project);

  g_assert_null (none->last);
  g_assert_cmpuint (none->rows->len, ==, 0);
  g_assert_cmpuint (none->papers->len, ==, 0);
}

static void
test_unchanged (void)
{
  g_autoptr (RwProject) project = rw_project_new ();
  g_autoptr (RwSince) same = NULL;

  issue (project, "2026-05-04", "rim-strip", "headstock");
  same = since (project);
  g_assert_cmpuint (same->rows->len, ==, 0);
  g_assert_cmpuint (same->papers->len, ==, 2);
  g_assert_cmpuint (rw_since_out_of_date (same), ==, 0);
}

/* A rim that came out 0.4 mm large: pi times as much round it, to be seen on the strip and not on the headstock. */
static void
test_rim_changes_strip (void)
{
  const double measured = 279.4;
  g_autoptr (RwProject) project = rw_project_new ();
  g_autoptr (RwSince) changed = NULL;
  const RwSinceRow *row;

  issue (project, "2026-05-04", "rim-strip", "headstock");
  g_assert_true (rw_making_measure (project, "rim.outer_diameter", &measured, 1, NULL, NULL, NULL));
  changed = since (project);
  row = row_of (changed, "rim.circumference");
  g_assert_nonnull (row);
  g_assert_cmpfloat_with_epsilon (row->before, G_PI * 279, 1e-9);
  g_assert_cmpfloat_with_epsilon (row->now, G_PI * 279.4, 1e-9);
  g_assert_cmpuint (paper_of (changed, "rim-strip")->changed->len, >, 0);
  g_assert_cmpuint (paper_of (changed, "headstock")->changed->len, ==, 0);
  g_assert_cmpuint (rw_since_out_of_date (changed), ==, 1);
}

/* What can't be seen in hundredths of a millimetre is no change. */
static void
test_below_what_is_shown (void)
{
  g_autoptr (RwProject) project = rw_project_new ();
  g_autoptr (RwSince) same = NULL;

  project->design.headstock_length = 152.001;
  issue (project, "2026-05-04", "headstock", NULL);
  project->design.headstock_length = 152.0014;
  same = since (project);
  g_assert_cmpuint (same->rows->len, ==, 0);
}

static void
test_choice_in_words (void)
{
  g_autoptr (RwProject) project = rw_project_new ();
  g_autoptr (RwSince) changed = NULL;
  const RwSinceRow *row;

  issue (project, "2026-05-04", "hooks-hoop", NULL);
  g_assert_true (rw_design_read (&project->design, RW_P_hoop_seat, "groove", RW_STYLE_FILE, NULL));
  changed = since (project);
  row = row_of (changed, "hoop.seat");
  g_assert_nonnull (row);
  g_assert_cmpstr (row->words_before, ==, "notches");
  g_assert_cmpstr (row->words_now, ==, "groove");
}

/* Each paper counts from its own last leaving; an issue that counts for none is forgotten. */
static void
test_several_issues (void)
{
  g_autoptr (RwProject) project = rw_project_new ();
  g_autoptr (RwSince) changed = NULL;

  issue (project, "2026-05-04", "rim-strip", "headstock");
  project->design.headstock_length = 160;
  issue (project, "2026-05-06", "rim-strip", NULL);
  g_assert_cmpuint (project->issued->issues->len, ==, 2);
  changed = since (project);
  g_assert_cmpstr (changed->last->date, ==, "2026-05-06");
  g_assert_cmpuint (changed->rows->len, ==, 0);
  g_assert_cmpuint (paper_of (changed, "headstock")->changed->len, >, 0);

  issue (project, "2026-05-07", "headstock", NULL);
  issue (project, "2026-05-08", "rim-strip", NULL);
  g_assert_cmpuint (project->issued->issues->len, ==, 2);
}

/* Every pattern of the table stands for something, and every paper in it exists. */
static gboolean
stands_for_something (const char *paper, const char *pattern)
{
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    if (g_pattern_match_simple (pattern, rw_param (id)->id))
      return rw_paper_shows (paper, rw_param (id)->id);
  for (int i = 0; i < rw_dims_count; i++)
    {
      g_auto (GStrv) parts = g_strsplit (rw_dims[i].id, "[", 2);

      if (g_pattern_match_simple (pattern, rw_dims[i].id) || strcmp (pattern, parts[0]) == 0)
        {
          g_autofree char *id = rw_slot_id (rw_dims[i].first);

          return rw_paper_shows (paper, id);
        }
    }
  return FALSE;
}

static void
test_contents (void)
{
  for (int i = 0; i < rw_paper_contents_count; i++)
    {
      g_auto (GStrv) patterns = g_strsplit (rw_paper_contents[i].patterns, " ", -1);

      g_assert_cmpint (rw_paper_kind_find (rw_paper_contents[i].paper), >=, 0);
      for (int k = 0; patterns[k] != NULL; k++)
        if (!stands_for_something (rw_paper_contents[i].paper, patterns[k]))
          g_error ("%s: %s", rw_paper_contents[i].paper, patterns[k]);
    }
  g_assert_true (rw_paper_shows ("rim-strip", "hooks.arc[3]"));
  g_assert_false (rw_paper_shows ("rim-strip", "frets.position[7]"));
  g_assert_true (rw_paper_shows ("a paper of tomorrow", "frets.position[7]"));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/since/none", test_none);
  g_test_add_func ("/since/unchanged", test_unchanged);
  g_test_add_func ("/since/rim-changes-strip", test_rim_changes_strip);
  g_test_add_func ("/since/below-what-is-shown", test_below_what_is_shown);
  g_test_add_func ("/since/choice-in-words", test_choice_in_words);
  g_test_add_func ("/since/several-issues", test_several_issues);
  g_test_add_func ("/since/contents", test_contents);
  return g_test_run ();
}
