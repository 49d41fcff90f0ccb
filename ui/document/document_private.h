/* The document's inside, for document*.c only. */
#pragma once

#include "io/file_mark.h"
#include "document.h"

struct _RwDocument
{
  GObject parent;

  RwHistory *history;
  char      *path;
  RwFileMark file; /* as it was opened or last saved */
  RwStyle    style;
  RwSubject  selection;

  /* What follows from the present project.  On the heap: an instance of a type is limited to 64 KiB. */
  RwMeasured *measured;
  RwResult   *now, *planned;
  GPtrArray  *findings;

  gboolean  modified;
  gboolean  dragging;
  RwResult *drag_start;
  RwResult *reference; /* what is compared with */
  char     *reference_name;
  RwResult *preview;
  GHashTable *remedies; /* arrays of RwRemedy by the finding */
  RwChange  unnoted; /* changed, and "noted" not yet said */
  guint     noting;
};

/* Starts again with another project (taken over) that came from path; NULL: from nowhere. */
void rw_document_take_project     (RwDocument *self, RwProject *project, const char *path);
/* Name, path or modified may be others: says so. */
void rw_document_tell_saved_state (RwDocument *self);
/* The file is now as the document knows it. */
void rw_document_mark_file        (RwDocument *self);
void rw_document_tell_reference   (RwDocument *self);
/* What was worked out for findings that are no more. */
void rw_document_forget_remedies  (RwDocument *self);
