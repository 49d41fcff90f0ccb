/* Findings that the maker accepts, each with a reason.
 *
 * A finding is known by its rule and by what it is about, the first of its ids.  It stays accepted while it
 * is no more severe than it was.  What is accepted changes nothing in the build.
 */
#pragma once

#include <glib.h>

typedef struct
{
  char *rule;     /* "hooks.stress" */
  char *about;    /* "hooks.count" */
  int   severity; /* as it was: a place in RwSeverity, 0 the worst */
  char *date;     /* ISO 8601, or empty */
  char *reason;
} RwAcceptance;

typedef struct
{
  GPtrArray *items; /* of RwAcceptance, in the order in which they were accepted */
} RwAccepted;

RwAccepted *rw_accepted_new   (void);
RwAccepted *rw_accepted_copy  (const RwAccepted *accepted);
void        rw_accepted_free  (RwAccepted *accepted);
gboolean    rw_accepted_equal (const RwAccepted *a, const RwAccepted *b);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwAccepted, rw_accepted_free)

/* NULL: not accepted, however severe. */
const RwAcceptance *rw_accepted_find (const RwAccepted *accepted, const char *rule, const char *about);

/* One that was accepted before gets the new severity, date and reason.  date and reason may be NULL: empty.
 */
void     rw_accepted_add    (RwAccepted *accepted,
                             const char *rule,
                             const char *about,
                             int         severity,
                             const char *date,
                             const char *reason);
gboolean rw_accepted_remove (RwAccepted *accepted, const char *rule, const char *about);
