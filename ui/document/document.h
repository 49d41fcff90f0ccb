/* The document: the open project with its history, its file and everything that follows from it.
 *
 * Solving takes far less than a frame, so a change is solved at once and inside the call that makes it:
 * whoever hears "changed" finds new numbers.  Widgets read from here and never keep numbers of their own.
 * The selection is shared too, so that form, drawing and lists mark the same thing.
 *
 * Signals
 *   changed      (RwChange what)  numbers, units or the project are others: for the drawing, which follows a
 *                                 drag frame by frame
 *   noted        (RwChange what)  the same for forms and lists: while something is dragged only when the hand
 *                                 rests, as nobody reads them meanwhile and laying them out takes longer than
 *                                 the drawing; at once otherwise
 *   selected     ()               rw_document_selection() is another
 *   reference    ()               what it is compared with is another
 *   saved-state  ()               name, path, modified, or what can be undone is another
 * Property
 *   modified     gboolean         there is something that is not in the file; notifies
 */
#pragma once

#include <gio/gio.h>

#include "check/finding.h"
#include "check/listing.h"
#include "project/history.h"
#include "sheet/sheet.h"

typedef enum
{
  RW_CHANGE_DESIGN = 1 << 0,   /* parameters, and with them the results and findings */
  RW_CHANGE_MEASURED = 1 << 1, /* measured values, and with them the same */
  RW_CHANGE_UNITS = 1 << 2,    /* how numbers are shown */
  RW_CHANGE_PROJECT = 1 << 3,  /* another project has been opened */
} RwChange;

#define RW_CHANGE_NUMBERS (RW_CHANGE_DESIGN | RW_CHANGE_MEASURED)
#define RW_CHANGE_ALL (RW_CHANGE_NUMBERS | RW_CHANGE_UNITS | RW_CHANGE_PROJECT)

#define RW_TYPE_DOCUMENT (rw_document_get_type ())
G_DECLARE_FINAL_TYPE (RwDocument, rw_document, RW, DOCUMENT, GObject)

/* The built-in build, without a file. */
RwDocument *rw_document_new (void);

/* What there is now.  All pointers are good until the next change. */
const RwProject  *rw_document_project  (RwDocument *self);
const RwDesign   *rw_document_design   (RwDocument *self); /* as planned */
const RwMeasured *rw_document_measured (RwDocument *self);
const RwResult   *rw_document_now      (RwDocument *self); /* measured values in their places */
const RwResult   *rw_document_planned  (RwDocument *self); /* as if nothing had been measured */
const GPtrArray  *rw_document_findings (RwDocument *self); /* of RwFinding, worst first, accepted ones last */
/* The worst finding that is not accepted and concerns a parameter or dimension, by its id (indices written out); NULL
 * if none.  A note concerns only what it names first. */
const RwFinding  *rw_document_finding_for (RwDocument *self, const char *id);

/* The remedies of a finding, an array of RwRemedy: worked out when first asked for, good until the next change. */
const GPtrArray  *rw_document_remedies (RwDocument *self, const RwFinding *finding);
/* Shows on the drawing, as a ghost, how the build would be; NULL: no more.  Ends by itself with the next change. */
void              rw_document_preview        (RwDocument *self, const RwDesign *design);
const RwResult   *rw_document_preview_result (RwDocument *self); /* NULL: nothing is previewed */
/* Each one step of undo; name (translated) is what the step is called.  An acceptance is dated today. */
void              rw_document_apply    (RwDocument *self, const RwDesign *design, const char *name);
void              rw_document_accept   (RwDocument *self, const RwFinding *finding, const char *reason);
void              rw_document_unaccept (RwDocument *self, const RwFinding *finding);

/* How numbers are shown and read: units by choice, decimal mark by locale. */
RwStyle rw_document_style     (RwDocument *self);
void    rw_document_set_units (RwDocument *self, RwUnits units);

/* One parameter.  Changes of the same one in a row are one step of undo until rw_document_settle() or a
 * change of anything else.  Refused with a sentence to show, the design being left as it was. */
gboolean rw_document_set_text   (RwDocument *self, RwParamId id, const char *text, GError **error);
gboolean rw_document_set_number (RwDocument *self, RwParamId id, double value, GError **error);
void     rw_document_put_back   (RwDocument *self, RwParamId id, const RwDesign *from); /* as in from */
void     rw_document_settle     (RwDocument *self);

/* A drag: one step of undo called name (translated), from begin to end; cancel puts everything back.
 * drag_number holds the value to the parameter's range, a count to whole numbers, and returns what it
 * became. */
void            rw_document_begin_drag  (RwDocument *self, const char *name);
double          rw_document_drag_number (RwDocument *self, RwParamId id, double value);
void            rw_document_end_drag    (RwDocument *self);
void            rw_document_cancel_drag (RwDocument *self);
/* The results as they were when the drag began, for the ghost; NULL while nothing is dragged. */
const RwResult *rw_document_drag_start  (RwDocument *self);

/* What was measured: id as in the ledger, text one reading or several with a semicolon between, dated today.  An empty
 * text takes the entry away.  Then the date and the note of an entry that there is. */
gboolean rw_document_measure  (RwDocument *self, const char *id, const char *text, GError **error);
gboolean rw_document_annotate (RwDocument *self, const char *id, const char *date, const char *note, GError **error);

/* Steps of the making: each call is one step of undo.  A step is marked as made today. */
gboolean rw_document_mark_made   (RwDocument *self, RwStep step, GError **error);
void     rw_document_unmark_made (RwDocument *self, RwStep step);

/* Remembers that papers (ids, NULL-ended) left today as the build is now, in the units that they are printed in; no
 * step of undo where the same is remembered already. */
void rw_document_record_papers (RwDocument *self, const char *const *papers, RwUnits units);

void        rw_document_undo      (RwDocument *self);
void        rw_document_redo      (RwDocument *self);
const char *rw_document_undo_name (RwDocument *self); /* NULL: nothing to undo */
const char *rw_document_redo_name (RwDocument *self);

/* The file.  On an error the open project stays as it was, and so does the file. */
void        rw_document_new_project (RwDocument *self);
gboolean    rw_document_load        (RwDocument *self, const char *path, GError **error);
gboolean    rw_document_save        (RwDocument *self, const char *path, GError **error);
const char *rw_document_path        (RwDocument *self); /* NULL: not saved yet */
/* The project's name; without one the file's; without either "New build", translated.  A new string. */
char       *rw_document_title       (RwDocument *self);
gboolean    rw_document_modified    (RwDocument *self);
void        rw_document_rename      (RwDocument *self, const char *name);
/* Whether the file is another than the one opened or last saved: some other program has written it, or taken it
 * away. */
gboolean    rw_document_file_changed (RwDocument *self);
/* Another state of the same work as one step of undo, called name (translated): the version before the last save,
 * or a draft.  Takes project over. */
void        rw_document_put_project (RwDocument *self, RwProject *project, const char *name);

/* Comparing: the present state is kept as it is, or another project's is taken; NULL: nothing to compare
 * with. */
void            rw_document_keep_reference (RwDocument *self);
gboolean        rw_document_load_reference (RwDocument *self, const char *path, GError **error);
void            rw_document_drop_reference (RwDocument *self);
const RwResult *rw_document_reference      (RwDocument *self);
const char     *rw_document_reference_name (RwDocument *self);

/* The selection: a parameter, a dimension, or nothing. */
void      rw_document_select    (RwDocument *self, RwSubject subject);
RwSubject rw_document_selection (RwDocument *self);
