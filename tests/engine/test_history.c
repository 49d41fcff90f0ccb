/* Undo and redo as scenarios: tables of commands with what must be there after each. */
#include "project/history.h"

typedef enum { PUT, MERGE, BEGIN, END, CANCEL, BARRIER, UNDO, REDO, SAVED, STOP } Command;

typedef struct
{
  Command     command;
  const char *state;    /* PUT, MERGE: the new state; MERGE merges under its own step's name */
  const char *step;     /* PUT, MERGE, BEGIN: the name of the step */
  const char *present;  /* after the command: the state ... */
  const char *undo;     /* ... the step that can be undone ... */
  const char *redo;     /* ... the step that can be redone ... */
  gboolean    modified; /* ... and whether the state is another than the saved one */
} Row;

/* The state is the project's name; every scenario begins with the saved state "0". */

static const Row plain[] = {
  { PUT, "1", "a", "1", "a", NULL, TRUE },
  { PUT, "2", "b", "2", "b", NULL, TRUE },
  { UNDO, NULL, NULL, "1", "a", "b", TRUE },
  { UNDO, NULL, NULL, "0", NULL, "a", FALSE },
  { UNDO, NULL, NULL, "0", NULL, "a", FALSE },
  { REDO, NULL, NULL, "1", "a", "b", TRUE },
  { PUT, "3", "c", "3", "c", NULL, TRUE },
  { REDO, NULL, NULL, "3", "c", NULL, TRUE },
  { UNDO, NULL, NULL, "1", "a", "c", TRUE },
  { .command = STOP },
};

static const Row same_state[] = {
  { PUT, "0", "a", "0", NULL, NULL, FALSE },
  { PUT, "1", "b", "1", "b", NULL, TRUE },
  { UNDO, NULL, NULL, "0", NULL, "b", FALSE },
  { PUT, "0", "c", "0", NULL, "b", FALSE },
  { .command = STOP },
};

static const Row merging[] = {
  { MERGE, "1", "a", "1", "a", NULL, TRUE },
  { MERGE, "2", "a", "2", "a", NULL, TRUE },
  { MERGE, "3", "b", "3", "b", NULL, TRUE },
  { MERGE, "4", "a", "4", "a", NULL, TRUE },
  { UNDO, NULL, NULL, "3", "b", "a", TRUE },
  { UNDO, NULL, NULL, "2", "a", "b", TRUE },
  { UNDO, NULL, NULL, "0", NULL, "a", FALSE },
  { .command = STOP },
};

static const Row merged_back[] = {
  { PUT, "1", "a", "1", "a", NULL, TRUE },
  { MERGE, "2", "b", "2", "b", NULL, TRUE },
  { MERGE, "1", "b", "1", "a", NULL, TRUE },
  { UNDO, NULL, NULL, "0", NULL, "a", FALSE },
  { .command = STOP },
};

static const Row barrier[] = {
  { MERGE, "1", "a", "1", "a", NULL, TRUE },
  { BARRIER, NULL, NULL, "1", "a", NULL, TRUE },
  { MERGE, "2", "a", "2", "a", NULL, TRUE },
  { UNDO, NULL, NULL, "1", "a", "a", TRUE },
  { .command = STOP },
};

static const Row no_merging_after_undo[] = {
  { MERGE, "1", "a", "1", "a", NULL, TRUE },
  { PUT, "2", "b", "2", "b", NULL, TRUE },
  { UNDO, NULL, NULL, "1", "a", "b", TRUE },
  { MERGE, "3", "a", "3", "a", NULL, TRUE },
  { UNDO, NULL, NULL, "1", "a", "a", TRUE },
  { .command = STOP },
};

static const Row group[] = {
  { BEGIN, NULL, "drag", "0", NULL, NULL, FALSE },
  { PUT, "1", "x", "1", NULL, NULL, TRUE },
  { MERGE, "2", "x", "2", NULL, NULL, TRUE },
  { UNDO, NULL, NULL, "2", NULL, NULL, TRUE },
  { END, NULL, NULL, "2", "drag", NULL, TRUE },
  { UNDO, NULL, NULL, "0", NULL, "drag", FALSE },
  { REDO, NULL, NULL, "2", "drag", NULL, TRUE },
  { .command = STOP },
};

static const Row group_without_change[] = {
  { PUT, "1", "a", "1", "a", NULL, TRUE },
  { UNDO, NULL, NULL, "0", NULL, "a", FALSE },
  { BEGIN, NULL, "drag", "0", NULL, NULL, FALSE },
  { PUT, "5", "x", "5", NULL, NULL, TRUE },
  { PUT, "0", "x", "0", NULL, NULL, FALSE },
  { END, NULL, NULL, "0", NULL, "a", FALSE },
  { REDO, NULL, NULL, "1", "a", NULL, TRUE },
  { .command = STOP },
};

static const Row cancelled[] = {
  { PUT, "1", "a", "1", "a", NULL, TRUE },
  { PUT, "2", "b", "2", "b", NULL, TRUE },
  { UNDO, NULL, NULL, "1", "a", "b", TRUE },
  { BEGIN, NULL, "drag", "1", NULL, NULL, TRUE },
  { PUT, "9", "x", "9", NULL, NULL, TRUE },
  { CANCEL, NULL, NULL, "1", "a", "b", TRUE },
  { REDO, NULL, NULL, "2", "b", NULL, TRUE },
  { .command = STOP },
};

static const Row nested[] = {
  { BEGIN, NULL, "outer", "0", NULL, NULL, FALSE },
  { PUT, "1", "x", "1", NULL, NULL, TRUE },
  { BEGIN, NULL, "inner", "1", NULL, NULL, TRUE },
  { PUT, "2", "x", "2", NULL, NULL, TRUE },
  { END, NULL, NULL, "2", NULL, NULL, TRUE },
  { END, NULL, NULL, "2", "outer", NULL, TRUE },
  { UNDO, NULL, NULL, "0", NULL, "outer", FALSE },
  { .command = STOP },
};

static const Row no_merging_across_group[] = {
  { MERGE, "1", "a", "1", "a", NULL, TRUE },
  { BEGIN, NULL, "drag", "1", NULL, NULL, TRUE },
  { END, NULL, NULL, "1", "a", NULL, TRUE },
  { MERGE, "2", "a", "2", "a", NULL, TRUE },
  { UNDO, NULL, NULL, "1", "a", "a", TRUE },
  { .command = STOP },
};

static const Row save_point[] = {
  { MERGE, "1", "a", "1", "a", NULL, TRUE },
  { SAVED, NULL, NULL, "1", "a", NULL, FALSE },
  { MERGE, "2", "a", "2", "a", NULL, TRUE },
  { UNDO, NULL, NULL, "1", "a", "a", FALSE },
  { UNDO, NULL, NULL, "0", NULL, "a", TRUE },
  { REDO, NULL, NULL, "1", "a", "a", FALSE },
  { PUT, "3", "b", "3", "b", NULL, TRUE },
  { PUT, "1", "c", "1", "c", NULL, FALSE },
  { .command = STOP },
};

static const Row save_point_lost[] = {
  { PUT, "1", "a", "1", "a", NULL, TRUE },
  { SAVED, NULL, NULL, "1", "a", NULL, FALSE },
  { UNDO, NULL, NULL, "0", NULL, "a", TRUE },
  { PUT, "2", "b", "2", "b", NULL, TRUE },
  { UNDO, NULL, NULL, "0", NULL, "b", TRUE },
  { .command = STOP },
};

static const struct
{
  const char *path;
  const Row  *rows;
} scenarios[] = {
  { "/history/plain", plain },
  { "/history/same-state-is-no-step", same_state },
  { "/history/merge/by-key", merging },
  { "/history/merge/back-to-the-start", merged_back },
  { "/history/merge/barrier", barrier },
  { "/history/merge/not-after-undo", no_merging_after_undo },
  { "/history/group/one-step", group },
  { "/history/group/without-change", group_without_change },
  { "/history/group/cancelled", cancelled },
  { "/history/group/nested", nested },
  { "/history/group/closes-merging", no_merging_across_group },
  { "/history/saved/modified-by-content", save_point },
  { "/history/saved/state-dropped", save_point_lost },
};

static RwProject *
state_called (const char *name)
{
  RwProject *project = rw_project_new ();

  g_free (project->name);
  project->name = g_strdup (name);
  return project;
}

static void
run (RwHistory *history, const Row *row)
{
  switch (row->command)
    {
    case PUT:
      rw_history_put (history, state_called (row->state), row->step, NULL);
      break;
    case MERGE:
      rw_history_put (history, state_called (row->state), row->step, row->step);
      break;
    case BEGIN:
      rw_history_begin (history, row->step);
      break;
    case END:
      rw_history_end (history);
      break;
    case CANCEL:
      rw_history_cancel (history);
      break;
    case BARRIER:
      rw_history_barrier (history);
      break;
    case UNDO:
      rw_history_undo (history);
      break;
    case REDO:
      rw_history_redo (history);
      break;
    case SAVED:
      rw_history_mark_saved (history);
      break;
    case STOP:
    default:
      g_assert_not_reached ();
    }
}

static void
test_scenario (gconstpointer data)
{
  RwHistory *history = rw_history_new (state_called ("0"));

  for (const Row *row = data; row->command != STOP; row++)
    {
      run (history, row);
      g_test_message ("row %d", (int) (row - (const Row *) data));
      g_assert_cmpstr (rw_history_present (history)->name, ==, row->present);
      g_assert_cmpstr (rw_history_undo_name (history), ==, row->undo);
      g_assert_cmpstr (rw_history_redo_name (history), ==, row->redo);
      g_assert_cmpint (rw_history_modified (history), ==, row->modified);
    }
  rw_history_free (history);
}

/* Undo and redo say whether there was anything to do. */
static void
test_answers (void)
{
  RwHistory *history = rw_history_new (state_called ("0"));

  g_assert_false (rw_history_undo (history));
  g_assert_false (rw_history_redo (history));
  rw_history_put (history, state_called ("1"), "a", NULL);
  g_assert_false (rw_history_redo (history));
  g_assert_true (rw_history_undo (history));
  g_assert_true (rw_history_redo (history));
  rw_history_free (history);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (scenarios); i++)
    g_test_add_data_func (scenarios[i].path, scenarios[i].rows, test_scenario);
  g_test_add_func ("/history/answers", test_answers);
  return g_test_run ();
}
