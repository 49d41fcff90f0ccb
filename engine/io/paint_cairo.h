/* Paints a laid-out sheet on a cairo context: screen, print, PDF and PNG alike. */
#pragma once

#include <cairo.h>

#include "layout.h"

typedef struct
{
  double r, g, b;
} RwColour;

/* The inks and tints of one look. */
typedef struct
{
  RwColour paper;
  RwColour ink;    /* wide lines, lettering */
  RwColour pale;   /* dimension lines, grain; keeps 4.5 : 1 against paper where it carries text */
  RwColour accent; /* selection */
  RwColour tint[RW_TINT_COUNT];
} RwPalette;

extern const RwPalette rw_palette_light;
extern const RwPalette rw_palette_dark;

/* rw_paint: paints layout with cr's unit being one millimetre of paper, y down, the sheet's origin at the
 * current origin.  min_line: no line thinner than this, in paper mm (a pixel on screens; 0 on paper). */
void rw_paint (cairo_t *cr, const RwLayout *layout, const RwPalette *palette, double min_line);
