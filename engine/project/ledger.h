/* The ledger: what was measured, when, and what was said of it.  Kept in the project file; turned into an
 * RwMeasured for the solver. */
#pragma once

#include "measured.h"

typedef struct
{
  char  *id;
  GArray *readings; /* of double, in the id's unit; their mean is used */
  char  *date;      /* ISO 8601, "2026-05-04", or empty */
  char  *note;
} RwEntry;

typedef struct
{
  GPtrArray *entries; /* of RwEntry, in order of entering; one for an id */
} RwLedger;

RwLedger *rw_ledger_new  (void);
RwLedger *rw_ledger_copy (const RwLedger *ledger);
void      rw_ledger_free (RwLedger *ledger);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwLedger, rw_ledger_free)
gboolean  rw_ledger_equal (const RwLedger *a, const RwLedger *b);

const RwEntry *rw_ledger_find (const RwLedger *ledger, const char *id);
double         rw_entry_mean  (const RwEntry *entry);
/* Puts or replaces the entry of id; refused as rw_measured_set() refuses. */
gboolean rw_ledger_put    (RwLedger *ledger, const char *id, const double *readings, guint count,
                           const char *date, const char *note, GError **error);
gboolean rw_ledger_remove (RwLedger *ledger, const char *id);
void     rw_ledger_fill   (const RwLedger *ledger, RwMeasured *measured);
