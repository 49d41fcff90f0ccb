/* Parameters as text: what param.c, param_text.c and string_set.c share. */
#pragma once

#include "param.h"

typedef struct
{
  double      min, max;
  const char *unit;
} RwRange;

extern const RwRange rw_course_range;

/* Whether a number may stand for something called label, or for a parameter; if not, the error says why with
 * its numbers in style. */
gboolean rw_range_accepts (const RwRange *range,
                           double         value,
                           RwStyle        style,
                           const char    *label,
                           GError       **error);
gboolean rw_param_accepts (const RwParam *param, double value, RwStyle style, GError **error);

/* A number as text that reads back: to the last bit, but for lengths in inches to six digits, or as the
 * fraction that it is.  With the unit after it where it has one. */
char *rw_number_in_style  (double value, const char *unit, RwStyle style);
char *rw_number_with_unit (double value, const char *unit, RwStyle style);

/* A quantity typed for something called label, which begins the error.  Bare lengths are in the unit of the
 * style. */
gboolean rw_number_read (const char *text,
                         const char *unit,
                         RwStyle     style,
                         const char *label,
                         double     *value,
                         GError    **error);

/* The same, and in the range.  An end of the range in inches is taken as it is shown, in six digits. */
gboolean rw_range_read (const RwRange *range,
                        const char    *text,
                        RwStyle        style,
                        const char    *label,
                        double        *value,
                        GError       **error);

/* Lists: items between semicolons, no item empty.  NULL with an error unless there are min to max. */
char **rw_items_read (const char *text, const char *label, int min, int max, GError **error);

/* A set of strings: the name of one (named_set.h), or items "note outer p" or "note outer w core", then in any order
 * "short", "nylon" or "gut" where it is not steel, "rho=density" and "mass=mass per length":
 * D3 0.559 w 0.305 rho=8900 */
gboolean rw_string_set_read (RwStringSet *set,
                             const char  *text,
                             RwStyle      style,
                             const char  *label,
                             GError     **error);
char *rw_string_set_write (const RwStringSet *set, RwStyle style);
