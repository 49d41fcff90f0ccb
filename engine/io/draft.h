/* Drafts: unsaved work, kept outside the project's folder so that it outlasts a crash or a power cut.
 *
 * A draft is a file of its own in the folder of drafts:
 *
 *   rimwright-draft 1
 *   of file:///srv/builds/banjo.rimwright     nothing after "of " where the work was never saved
 *   kept 2026-05-04T17:12:09+02:00
 *   the project as in a project file
 *
 * Beside it stands a lock, which the program that keeps the draft holds as long as it runs.  A draft whose
 * lock nobody holds was left behind.
 */
#pragma once

#include "project/project.h"
#include "file_error.h"

/* ---- keeping ---- */

/* The place of one document's draft.  Nothing is on the disk until the first draft is kept. */
typedef struct _RwDraftPlace RwDraftPlace;

RwDraftPlace *rw_draft_place_new  (const char *folder);
void          rw_draft_place_free (RwDraftPlace *place); /* the draft stays */

/* rw_draft_keep: keeps a draft in the place of the one before; on a failure that one is as it was.
 *
 * Given  text  the project as rw_project_to_text() writes it
 *        of    the path of its file, NULL where it has none yet
 *        kept  the moment, ISO 8601
 * Not for two threads at a time on one place.
 */
gboolean rw_draft_keep (RwDraftPlace *place, const char *text, const char *of, const char *kept, GError **error);

/* The work is saved, or given up: the draft goes. */
void     rw_draft_drop (RwDraftPlace *place);

/* ---- finding ---- */

typedef struct
{
  char      *file;    /* of the draft itself */
  char      *of;      /* path of the project's file, NULL where it was never saved */
  char      *kept;    /* ISO 8601, or whatever words stand in its place; UTF-8 */
  RwProject *project;
} RwDraft;

/* The drafts left behind in a folder, the latest first; of RwDraft, freed with the array.  One that can't be
 * read is left where it is and not listed. */
GPtrArray *rw_drafts_left (const char *folder);

/* The place goes on with a draft that was left behind: it stays on the disk until its work is kept anew or dropped.
 * FALSE where another program has taken it up meanwhile. */
gboolean   rw_draft_adopt (RwDraftPlace *place, const RwDraft *draft);

/* Deletes a draft that was left behind. */
void       rw_draft_forget (const RwDraft *draft);
