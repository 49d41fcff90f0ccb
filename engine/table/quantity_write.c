/* Quantities as text: the other half of quantity.h. */
#include "quantity.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

/* From here on a double has no sixty-fourths left, and a 64-bit integer no room. */
#define FRACTION_MAX 1e12

/* "-0.00" is "0.00". */
static void
drop_sign_of_zero (char *text)
{
  if (text[0] == '-' && strpbrk (text, "123456789") == NULL)
    memmove (text, text + 1, strlen (text));
}

static char *
write_decimal (double value, int decimals, char decimal)
{
  char format[16];
  char text[400]; /* the largest double has 309 digits before the point */

  snprintf (format, sizeof format, "%%.%df", CLAMP (decimals, 0, 17));
  g_ascii_formatd (text, sizeof text, format, value);
  drop_sign_of_zero (text);
  if (decimal != '.')
    g_strdelimit (text, ".", decimal);
  return g_strdup (text);
}

int
rw_units_parts (RwUnits units)
{
  switch (units)
    {
    case RW_UNITS_FRACTION:
      return 64;
    case RW_UNITS_FRACTION_32:
      return 32;
    case RW_UNITS_FRACTION_16:
      return 16;
    case RW_UNITS_MM:
    case RW_UNITS_INCH:
    default:
      return 0;
    }
}

static char *
write_fraction (double inches, int parts_per_inch)
{
  gint64      parts = (gint64) llround (fabs (inches) * parts_per_inch);
  gint64      whole = parts / parts_per_inch;
  gint64      above = parts % parts_per_inch;
  gint64      below = parts_per_inch;
  const char *sign = inches < 0 && parts != 0 ? "-" : "";

  while (above != 0 && above % 2 == 0)
    {
      above /= 2;
      below /= 2;
    }
  if (above == 0)
    return g_strdup_printf ("%s%" G_GINT64_FORMAT, sign, whole);
  if (whole == 0)
    return g_strdup_printf ("%s%" G_GINT64_FORMAT "/%" G_GINT64_FORMAT, sign, above, below);
  return g_strdup_printf ("%s%" G_GINT64_FORMAT " %" G_GINT64_FORMAT "/%" G_GINT64_FORMAT, sign, whole, above,
                          below);
}

char *
rw_quantity_write (double value, const char *unit, RwUnits units, int decimals, char decimal)
{
  double inches = value / RW_MM_PER_INCH;

  if (units == RW_UNITS_MM || strcmp (unit, "mm") != 0)
    return write_decimal (value, decimals, decimal);
  if (rw_units_parts (units) > 0 && fabs (inches) < FRACTION_MAX)
    return write_fraction (inches, rw_units_parts (units));
  return write_decimal (inches, decimals + 2, decimal);
}

double
rw_fraction_error (double value, RwUnits units)
{
  double parts = rw_units_parts (units), step;

  if (!(parts > 0))
    return 0;
  step = RW_MM_PER_INCH / parts;
  return value - step * round (value / step);
}

char *
rw_quantity_figure (double value, const char *unit, RwUnits units, int decimals, char decimal)
{
  g_autofree char *figure = rw_quantity_write (value, unit, units, decimals, decimal);
  double error = strcmp (unit, "mm") == 0 ? rw_fraction_error (value, units) : 0;

  if (fabs (error) > RW_FRACTION_ERROR_TOLD)
    {
      g_autofree char *millimetres = write_decimal (fabs (error), 1, decimal);

      return g_strdup_printf ("%s (%s%s)", figure, error > 0 ? "+" : "−", millimetres);
    }
  return g_steal_pointer (&figure);
}

const char *
rw_quantity_unit (const char *unit, RwUnits units)
{
  static const struct
  {
    const char *unit, *sign;
  } signs[] = {
    { "deg", "°" }, { "degC", "°C" }, { "kg/m3", "kg/m³" }, { "N/mm2", "N/mm²" }, { "N mm", "N·mm" },
    { "N m", "N·m" },
  };

  if (units != RW_UNITS_MM && strcmp (unit, "mm") == 0)
    return "in";
  for (guint i = 0; i < G_N_ELEMENTS (signs); i++)
    if (strcmp (unit, signs[i].unit) == 0)
      return signs[i].sign;
  return unit;
}

char *
rw_number_write (double value)
{
  static const char *const formats[] = { "%.15g", "%.16g", "%.17g" };
  char                     text[G_ASCII_DTOSTR_BUF_SIZE];

  for (guint i = 0; i < G_N_ELEMENTS (formats); i++)
    {
      g_ascii_formatd (text, sizeof text, formats[i], value);
      if (g_ascii_strtod (text, NULL) == value)
        break;
    }
  return g_strdup (text);
}

char *
rw_quantity_show (double value, const char *unit, RwUnits units, char decimal)
{
  static const char *const whole[] = { "N/m", "1/min", "N mm", NULL };
  static const char *const hundredths[] = { "mm", "deg", "N m", NULL };
  int decimals = 1;

  if (g_strv_contains (whole, unit) || (*unit == '\0' && fabs (value - round (value)) < 1e-9))
    decimals = 0;
  else if (g_strv_contains (hundredths, unit) || *unit == '\0')
    decimals = 2;
  return rw_quantity_write (value, unit, units, decimals, decimal);
}
