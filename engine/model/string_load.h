/* Mass, pitch and pull of the strings. */
#pragma once

#include "model.h"

/* Mass per length, kg/m: measured, or from the diameters. */
double rw_string_mass (const RwString *string);
/* Diameter of what carries the string, mm: all of a plain one, the core of a wound one. */
double rw_string_wire (const RwString *string);
