/* Undo and redo without limit: states of a project, each with a name for the menu.  A drag is one step:
 * begin, many changes, end; or cancel, which puts the state back. */
#pragma once

#include "project.h"

typedef struct _RwHistory RwHistory;

RwHistory *rw_history_new  (RwProject *start); /* takes it over */
void       rw_history_free (RwHistory *history);

/* The present state; changed only through the functions below. */
const RwProject *rw_history_present (const RwHistory *history);

/* Makes next (taken over) the present state, under a name such as "Bridge beyond the rim's centre".  A
 * state equal to the present is no step.  With an open group all of its changes are one step; with a
 * merge key that is the same as that of the step before, so are they. */
void     rw_history_put    (RwHistory *history, RwProject *next, const char *name, const char *merge_key);
void     rw_history_begin  (RwHistory *history, const char *name);
void     rw_history_end    (RwHistory *history);
void     rw_history_cancel (RwHistory *history);
/* Closes merging: what comes next is a step of its own. */
void     rw_history_barrier (RwHistory *history);

gboolean    rw_history_undo (RwHistory *history);
gboolean    rw_history_redo (RwHistory *history);
const char *rw_history_undo_name (const RwHistory *history); /* NULL: nothing to undo */
const char *rw_history_redo_name (const RwHistory *history);

/* The save point. */
void     rw_history_mark_saved (RwHistory *history);
gboolean rw_history_modified   (const RwHistory *history);
