#include "history.h"

/* One state of the project and the step that led to it. */
typedef struct
{
  RwProject *project;
  char      *name;      /* NULL for the first state */
  char      *merge_key; /* NULL: nothing is merged into this step */
} State;

struct _RwHistory
{
  GPtrArray *states; /* of State; those after `at` are for redo */
  guint      at;
  RwProject *saved;  /* a copy of what was last saved */

  /* The open group: depth of nesting, and the state as it is now if anything was put.  It becomes a state
   * when the group ends, so that a cancelled drag leaves everything as it was, redo included. */
  guint      depth;
  char      *group_name;
  RwProject *group_now;
};

static void
state_free (State *state)
{
  rw_project_free (state->project);
  g_free (state->name);
  g_free (state->merge_key);
  g_free (state);
}

static State *
state_at (const RwHistory *history, guint i)
{
  return g_ptr_array_index (history->states, i);
}

static State *
state_now (const RwHistory *history)
{
  return state_at (history, history->at);
}

static void
add_state (RwHistory *history, RwProject *project, const char *name, const char *merge_key)
{
  State *state = g_new (State, 1);

  state->project = project;
  state->name = g_strdup (name);
  state->merge_key = g_strdup (merge_key);
  g_ptr_array_add (history->states, state);
}

RwHistory *
rw_history_new (RwProject *start)
{
  RwHistory *history = g_new0 (RwHistory, 1);

  history->states = g_ptr_array_new_with_free_func ((GDestroyNotify) state_free);
  history->saved = rw_project_copy (start);
  add_state (history, start, NULL, NULL);
  return history;
}

void
rw_history_free (RwHistory *history)
{
  if (history == NULL)
    return;
  g_ptr_array_unref (history->states);
  rw_project_free (history->saved);
  g_free (history->group_name);
  rw_project_free (history->group_now);
  g_free (history);
}

const RwProject *
rw_history_present (const RwHistory *history)
{
  return history->group_now != NULL ? history->group_now : state_now (history)->project;
}

/* ---- steps ---- */

/* A new step from the present state; what could be redone is gone. */
static void
push (RwHistory *history, RwProject *next, const char *name, const char *merge_key)
{
  g_ptr_array_set_size (history->states, (int) history->at + 1);
  add_state (history, next, name, merge_key);
  history->at++;
}

/* More of the present step.  A step that has come back to where it began is none. */
static void
merge (RwHistory *history, RwProject *next)
{
  State *now = state_now (history);

  rw_project_free (now->project);
  now->project = next;
  if (rw_project_equal (next, state_at (history, history->at - 1)->project))
    {
      g_ptr_array_set_size (history->states, (int) history->at);
      history->at--;
    }
}

void
rw_history_put (RwHistory *history, RwProject *next, const char *name, const char *merge_key)
{
  if (rw_project_equal (next, rw_history_present (history)))
    rw_project_free (next);
  else if (history->depth > 0)
    {
      rw_project_free (history->group_now);
      history->group_now = next;
    }
  else if (merge_key != NULL && g_strcmp0 (merge_key, state_now (history)->merge_key) == 0)
    merge (history, next);
  else
    push (history, next, name, merge_key);
}

void
rw_history_barrier (RwHistory *history)
{
  g_clear_pointer (&state_now (history)->merge_key, g_free);
}

/* ---- groups ---- */

void
rw_history_begin (RwHistory *history, const char *name)
{
  if (history->depth++ > 0)
    return;
  rw_history_barrier (history);
  history->group_name = g_strdup (name);
}

static void
close_group (RwHistory *history)
{
  history->depth = 0;
  g_clear_pointer (&history->group_name, g_free);
  g_clear_pointer (&history->group_now, rw_project_free);
}

void
rw_history_end (RwHistory *history)
{
  g_return_if_fail (history->depth > 0);

  if (--history->depth > 0)
    return;
  if (history->group_now != NULL && !rw_project_equal (history->group_now, state_now (history)->project))
    push (history, g_steal_pointer (&history->group_now), history->group_name, NULL);
  close_group (history);
}

void
rw_history_cancel (RwHistory *history)
{
  g_return_if_fail (history->depth > 0);

  close_group (history);
}

/* ---- undo and redo ---- */

/* Neither is to be had while a group is open. */
const char *
rw_history_undo_name (const RwHistory *history)
{
  return history->depth == 0 ? state_now (history)->name : NULL;
}

const char *
rw_history_redo_name (const RwHistory *history)
{
  if (history->depth > 0 || history->at + 1 == history->states->len)
    return NULL;
  return state_at (history, history->at + 1)->name;
}

gboolean
rw_history_undo (RwHistory *history)
{
  if (history->depth > 0 || history->at == 0)
    return FALSE;
  rw_history_barrier (history);
  history->at--;
  rw_history_barrier (history);
  return TRUE;
}

gboolean
rw_history_redo (RwHistory *history)
{
  if (history->depth > 0 || history->at + 1 == history->states->len)
    return FALSE;
  rw_history_barrier (history);
  history->at++;
  rw_history_barrier (history);
  return TRUE;
}

/* ---- the save point ---- */

void
rw_history_mark_saved (RwHistory *history)
{
  rw_project_free (history->saved);
  history->saved = rw_project_copy (rw_history_present (history));
  rw_history_barrier (history);
}

gboolean
rw_history_modified (const RwHistory *history)
{
  return !rw_project_equal (rw_history_present (history), history->saved);
}
