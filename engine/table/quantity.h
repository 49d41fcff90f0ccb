/* Numbers as people write them: arithmetic, units, fractions of an inch.
 *
 * The reader takes + - * / and parentheses, mixed numbers ("11 3/8 in"), and units after any number or
 * parenthesis.  Lengths know mm, cm, m, in, ft, " and '.  Other kinds know their own unit and its usual
 * relatives (deg and rad; N and lbf; g, oz; Hz; GPa; degC, degF ...).  A bare number is in the unit that
 * the caller names.
 */
#pragma once

#include <glib.h>

/* How lengths are shown. */
typedef enum
{
  RW_UNITS_MM,
  RW_UNITS_INCH,     /* decimal inches */
  RW_UNITS_FRACTION, /* inches and the nearest 1/64 */
  RW_UNITS_FRACTION_32,
  RW_UNITS_FRACTION_16,
} RwUnits;

/* Parts of an inch that lengths are rounded to: 64, 32, 16; 0 where they are no fractions. */
int rw_units_parts (RwUnits units);

#define RW_MM_PER_INCH 25.4

#define RW_QUANTITY_ERROR (rw_quantity_error_quark ())
GQuark rw_quantity_error_quark (void);

typedef enum
{
  RW_QUANTITY_ERROR_SYNTAX, /* not a quantity */
  RW_QUANTITY_ERROR_UNIT,   /* a unit that is unknown, or of another kind */
  RW_QUANTITY_ERROR_VALUE,  /* division by zero, overflow, not finite */
} RwQuantityError;

/* rw_quantity_read: the value of text, in unit.
 *
 * Given     text     what was typed; UTF-8
 *           unit     the unit of the result, as the tables name it: "mm", "deg", "N/m", "%", "" ...
 *           bare     the unit of a number without one; NULL means the same as unit.  Only "in" differs
 *           decimal  the decimal mark that the locale has besides the point: ',' or '.'.  With ',' both
 *                    "27,5" and "27.5" are read; there is no thousands mark
 * Returned  TRUE and *value, finite; or FALSE and an error in RW_QUANTITY_ERROR whose message is one
 *           sentence that quotes the offending part.
 * Source    1 in = 25.4 mm exactly, 1 lb = 453.59237 g, 1 lbf = 4.4482216152605 N (international yard
 *           and pound agreement, 1959).
 */
gboolean rw_quantity_read (const char  *text,
                           const char  *unit,
                           const char  *bare,
                           char         decimal,
                           double      *value,
                           GError     **error);

/* rw_quantity_write: a value as text for people, without its unit unless it is a fraction of an inch.
 *
 * Given     value     in unit
 *           unit      as the tables name it; only "mm" is changed by units
 *           units     how lengths are shown
 *           decimals  digits after the point for millimetres and all else; inches get two more
 *           decimal   the decimal mark, ',' or '.'
 * Returned  a new string.  Fractions are the nearest part of an inch, reduced: "11 3/8", "-5/64".  Never
 * "-0".
 */
char *rw_quantity_write (double value, const char *unit, RwUnits units, int decimals, char decimal);

/* Fractions that are farther off than this say by how much. */
#define RW_FRACTION_ERROR_TOLD 0.1 /* mm */

/* rw_quantity_figure: the same for a figure that is worked to: a fraction farther off than
 * RW_FRACTION_ERROR_TOLD has the millimetres beside it that the true length is more or less: "3 5/8 (+0.2)".
 */
char *rw_quantity_figure (double value, const char *unit, RwUnits units, int decimals, char decimal);

/* How much longer a length in mm is than the fraction it is shown as, mm; 0 where lengths are no fractions.
 */
double rw_fraction_error (double value, RwUnits units);

/* rw_quantity_show: the same with the digits that mean something to a hand: hundredths of a millimetre and of
 * a degree, tenths of a newton, whole N/m; a number without a unit has two digits, or none where it is whole.
 */
char *rw_quantity_show (double value, const char *unit, RwUnits units, char decimal);

/* The unit that rw_quantity_write() writes unit in: "in" for "mm" under inches, else unit itself, with
 * the signs that people expect ("deg" is "°", "degC" is "°C", "kg/m3" is "kg/m³"). */
const char *rw_quantity_unit (const char *unit, RwUnits units);

/* The shortest decimal that reads back to the same double, with a point: what files hold. */
char *rw_number_write (double value);
