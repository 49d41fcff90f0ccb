#include "unit.h"

#include <string.h>

/* Exact by definition: international yard and pound agreement, 1959; standard gravity 9.80665 m/s2 (3rd
 * CGPM, 1901); US gallon of 231 cubic inches, 128 US fluid ounces. */
#define MM_PER_INCH 25.4
#define MM_PER_FOOT 304.8
#define G_PER_POUND 453.59237
#define N_PER_POUND 4.4482216152605
#define ML_PER_GALLON 3785.411784

#define PA_PER_PSI (N_PER_POUND / (MM_PER_INCH * MM_PER_INCH) * 1e6)
#define KG_M3_PER_LB_IN3 (G_PER_POUND / (MM_PER_INCH * MM_PER_INCH * MM_PER_INCH) * 1e6)

static const RwUnit units[] = {
  { "mm", RW_UNIT_LENGTH, 1, 0 },
  { "cm", RW_UNIT_LENGTH, 10, 0 },
  { "m", RW_UNIT_LENGTH, 1000, 0 },
  { "in", RW_UNIT_LENGTH, MM_PER_INCH, 0 },
  { "inch", RW_UNIT_LENGTH, MM_PER_INCH, 0 },
  { "inches", RW_UNIT_LENGTH, MM_PER_INCH, 0 },
  { "\"", RW_UNIT_LENGTH, MM_PER_INCH, 0 },
  { "″", RW_UNIT_LENGTH, MM_PER_INCH, 0 },
  { "”", RW_UNIT_LENGTH, MM_PER_INCH, 0 },
  { "''", RW_UNIT_LENGTH, MM_PER_INCH, 0 },
  { "ft", RW_UNIT_LENGTH, MM_PER_FOOT, 0 },
  { "foot", RW_UNIT_LENGTH, MM_PER_FOOT, 0 },
  { "feet", RW_UNIT_LENGTH, MM_PER_FOOT, 0 },
  { "'", RW_UNIT_LENGTH, MM_PER_FOOT, 0 },
  { "′", RW_UNIT_LENGTH, MM_PER_FOOT, 0 },
  { "’", RW_UNIT_LENGTH, MM_PER_FOOT, 0 },

  { "deg", RW_UNIT_ANGLE, 1, 0 },
  { "°", RW_UNIT_ANGLE, 1, 0 },
  { "rad", RW_UNIT_ANGLE, 180 / G_PI, 0 },

  { "", RW_UNIT_RATIO, 1, 0 },
  { "%", RW_UNIT_RATIO, 0.01, 0 },

  { "g", RW_UNIT_MASS, 1, 0 },
  { "kg", RW_UNIT_MASS, 1000, 0 },
  { "oz", RW_UNIT_MASS, G_PER_POUND / 16, 0 },
  { "lb", RW_UNIT_MASS, G_PER_POUND, 0 },

  { "kg/m", RW_UNIT_LINEAR_MASS, 1, 0 },
  { "g/m", RW_UNIT_LINEAR_MASS, 0.001, 0 },
  { "lb/in", RW_UNIT_LINEAR_MASS, G_PER_POUND / MM_PER_INCH, 0 },

  { "kg/m3", RW_UNIT_DENSITY, 1, 0 },
  { "kg/m³", RW_UNIT_DENSITY, 1, 0 },
  { "g/cm3", RW_UNIT_DENSITY, 1000, 0 },
  { "g/cm³", RW_UNIT_DENSITY, 1000, 0 },
  { "g/ml", RW_UNIT_DENSITY, 1000, 0 },
  { "lb/ft3", RW_UNIT_DENSITY, KG_M3_PER_LB_IN3 / 1728, 0 },
  { "lb/ft³", RW_UNIT_DENSITY, KG_M3_PER_LB_IN3 / 1728, 0 },
  { "lb/in3", RW_UNIT_DENSITY, KG_M3_PER_LB_IN3, 0 },
  { "lb/in³", RW_UNIT_DENSITY, KG_M3_PER_LB_IN3, 0 },

  { "lb/gal", RW_UNIT_CONCENTRATION, 1, 0 },
  { "g/l", RW_UNIT_CONCENTRATION, ML_PER_GALLON / 1000 / G_PER_POUND, 0 },

  { "N", RW_UNIT_FORCE, 1, 0 },
  { "kN", RW_UNIT_FORCE, 1000, 0 },
  { "lbf", RW_UNIT_FORCE, N_PER_POUND, 0 },
  { "kgf", RW_UNIT_FORCE, 9.80665, 0 },

  { "N/m", RW_UNIT_TENSION, 1, 0 },
  { "N/mm", RW_UNIT_TENSION, 1000, 0 },
  { "kN/m", RW_UNIT_TENSION, 1000, 0 },
  { "lbf/in", RW_UNIT_TENSION, N_PER_POUND / MM_PER_INCH * 1000, 0 },

  { "N mm", RW_UNIT_MOMENT, 1, 0 },
  { "N·mm", RW_UNIT_MOMENT, 1, 0 },
  { "N m", RW_UNIT_MOMENT, 1000, 0 },
  { "N·m", RW_UNIT_MOMENT, 1000, 0 },

  { "GPa", RW_UNIT_PRESSURE, 1e9, 0 },
  { "MPa", RW_UNIT_PRESSURE, 1e6, 0 },
  { "N/mm2", RW_UNIT_PRESSURE, 1e6, 0 },
  { "N/mm²", RW_UNIT_PRESSURE, 1e6, 0 },
  { "psi", RW_UNIT_PRESSURE, PA_PER_PSI, 0 },
  { "ksi", RW_UNIT_PRESSURE, PA_PER_PSI * 1000, 0 },

  { "Hz", RW_UNIT_FREQUENCY, 1, 0 },
  { "kHz", RW_UNIT_FREQUENCY, 1000, 0 },

  { "1/min", RW_UNIT_TURNING, 1, 0 },
  { "rpm", RW_UNIT_TURNING, 1, 0 },

  { "cent", RW_UNIT_INTERVAL, 1, 0 },
  { "cents", RW_UNIT_INTERVAL, 1, 0 },

  { "degC", RW_UNIT_TEMPERATURE, 1, 0 },
  { "°C", RW_UNIT_TEMPERATURE, 1, 0 },
  { "C", RW_UNIT_TEMPERATURE, 1, 0 },
  { "degF", RW_UNIT_TEMPERATURE, 5.0 / 9, -160.0 / 9 },
  { "°F", RW_UNIT_TEMPERATURE, 5.0 / 9, -160.0 / 9 },
  { "F", RW_UNIT_TEMPERATURE, 5.0 / 9, -160.0 / 9 },
  { "K", RW_UNIT_TEMPERATURE, 1, -273.15 },

  { "m/s", RW_UNIT_SPEED, 1, 0 },
  { "m/min", RW_UNIT_SPEED, 1.0 / 60, 0 },
  { "ft/s", RW_UNIT_SPEED, MM_PER_FOOT / 1000, 0 },
  { "ft/min", RW_UNIT_SPEED, MM_PER_FOOT / 60000, 0 },

  { "ml", RW_UNIT_VOLUME, 1, 0 },
  { "cl", RW_UNIT_VOLUME, 10, 0 },
  { "l", RW_UNIT_VOLUME, 1000, 0 },
  { "cm3", RW_UNIT_VOLUME, 1, 0 },
  { "cm³", RW_UNIT_VOLUME, 1, 0 },
  { "fl oz", RW_UNIT_VOLUME, ML_PER_GALLON / 128, 0 },
  { "gal", RW_UNIT_VOLUME, ML_PER_GALLON, 0 },
};

const RwUnit *
rw_unit_find (const char *symbol)
{
  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    if (strcmp (units[i].symbol, symbol) == 0)
      return &units[i];
  return NULL;
}

/* Whether a symbol of that length ends at a place where a word may end. */
static gboolean
ends_word (const char *text, size_t length)
{
  const char *end = text + length;

  return !g_ascii_isalnum (end[-1]) || !g_unichar_isalnum (g_utf8_get_char (end));
}

const RwUnit *
rw_unit_match (const char *text, const RwUnit *like, size_t *length)
{
  const RwUnit *best = NULL;

  *length = 0;
  if (*text == '\0') /* as mostly */
    return NULL;
  for (guint i = 0; i < G_N_ELEMENTS (units); i++)
    {
      size_t size = strlen (units[i].symbol);

      if (size <= *length || (like != NULL && units[i].kind != like->kind))
        continue;
      if (g_ascii_strncasecmp (text, units[i].symbol, size) == 0 && ends_word (text, size))
        {
          best = &units[i];
          *length = size;
        }
    }
  return best;
}

gboolean
rw_unit_is_inch (const RwUnit *unit)
{
  return unit->kind == RW_UNIT_LENGTH && unit->factor == MM_PER_INCH;
}

gboolean
rw_unit_is_foot (const RwUnit *unit)
{
  return unit->kind == RW_UNIT_LENGTH && unit->factor == MM_PER_FOOT;
}
