/* Papers that left for the bench: when, in which units, and what the build said then.  What has changed since is
 * found by comparing (making/since.h). */
#pragma once

#include "snapshot.h"
#include "table/quantity.h"

typedef struct
{
  char       *date;   /* ISO 8601, or empty */
  RwUnits     units;
  char      **papers; /* their ids; NULL-ended */
  RwSnapshot *values;
} RwIssue;

typedef struct
{
  GPtrArray *issues; /* of RwIssue, in the order in which they left */
} RwIssued;

RwIssued *rw_issued_new   (void);
RwIssued *rw_issued_copy  (const RwIssued *issued);
void      rw_issued_free  (RwIssued *issued);
gboolean  rw_issued_equal (const RwIssued *a, const RwIssued *b);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwIssued, rw_issued_free)

/* Both add an issue and take values over.  With rw_issued_add() an earlier issue of which every paper has left again
 * since is forgotten; rw_issued_append() is for reading a file. */
void rw_issued_add    (RwIssued *issued, const char *date, RwUnits units, const char *const *papers,
                       RwSnapshot *values);
void rw_issued_append (RwIssued *issued, const char *date, RwUnits units, const char *const *papers,
                       RwSnapshot *values);

/* The last issue that a paper was in, or the last at all for NULL; NULL where there is none. */
const RwIssue *rw_issued_last (const RwIssued *issued, const char *paper);

/* "mm", "inch", "fraction", "fraction-32" ...: the names of units in files. */
const char *rw_units_name (RwUnits units);
/* -1: no such name. */
int         rw_units_find (const char *name);
