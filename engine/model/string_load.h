/* Mass, pitch and pull of the strings. */
#pragma once

#include "model.h"

/* Mass per length, kg/m: measured, or from the diameters. */
double rw_string_mass (const RwString *string);
