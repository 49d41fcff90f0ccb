/* A project: the design as planned, what was measured and made, what papers left, what there is to build from, and the
 * maker's notes.  What a project file holds. */
#pragma once

#include "accepted.h"
#include "issued.h"
#include "ledger.h"
#include "made.h"
#include "shelf.h"

typedef struct
{
  char     *name;
  char     *notes;
  RwDesign  design;
  RwLedger *ledger;
  RwMade   *made;
  RwIssued *issued;
  RwShelf  *shelf;
  RwAccepted *accepted;
  GHashTable *unknown; /* members of the file that this version does not know: JSON text by path (io/project_file.h) */
} RwProject;

RwProject *rw_project_new   (void); /* the built-in build */
RwProject *rw_project_copy  (const RwProject *project);
gboolean   rw_project_equal (const RwProject *a, const RwProject *b);
void       rw_project_free  (RwProject *project);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwProject, rw_project_free)

/* The facts for the solver: what made parts hold, and over it what was measured. */
void rw_project_measured (const RwProject *project, RwMeasured *measured);
