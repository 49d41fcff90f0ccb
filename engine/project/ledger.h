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
double         rw_entry_spread (const RwEntry *entry); /* the largest reading less the least */

/* Readings as people write them, one or several with a semicolon between: "279.1; 279.3".  An array of double in the
 * unit of id; NULL with one sentence where they are none. */
GArray *rw_readings_read  (const char *id, const char *text, RwStyle style, GError **error);
/* The same back, without units.  A new string. */
char   *rw_readings_write (const RwEntry *entry, RwStyle style);
/* Puts or replaces the entry of id; refused as rw_measured_set() refuses. */
gboolean rw_ledger_put    (RwLedger *ledger, const char *id, const double *readings, guint count,
                           const char *date, const char *note, GError **error);
gboolean rw_ledger_remove (RwLedger *ledger, const char *id);
void     rw_ledger_fill   (const RwLedger *ledger, RwMeasured *measured);
