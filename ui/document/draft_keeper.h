/* Keeps a draft of a document's unsaved work, never more than five seconds behind.  The draft goes when the work
 * is saved, and when the keeper goes: the window has asked by then. */
#pragma once

#include "io/draft.h"
#include "document.h"

typedef struct _RwDraftKeeper RwDraftKeeper;

RwDraftKeeper *rw_draft_keeper_new  (RwDocument *document);
void           rw_draft_keeper_free (RwDraftKeeper *keeper);

/* Goes on with a draft that was left behind, whose work the document holds by now. */
void rw_draft_keeper_adopt (RwDraftKeeper *keeper, const RwDraft *draft);

/* Where all drafts are kept; in the user's state folder.  A new string. */
char *rw_draft_folder (void);
