/* Paints a laid-out sheet on a cairo context: screen, print, PDF and PNG alike. */
#pragma once

#include <cairo.h>

#include "sheet/layout.h"

typedef struct
{
  double r, g, b;
} RwColour;

/* The inks and tints of one look (palette.c says why they are as they are). */
typedef struct
{
  RwColour paper;
  RwColour ink;    /* wide lines, lettering */
  RwColour pale;   /* dimension lines, axes, grain */
  RwColour accent; /* selection */
  RwColour tint[RW_TINT_COUNT];
  double   weight; /* of lines on a screen: times so wide, in whole pixels */
} RwPalette;

extern const RwPalette rw_palette_light;
extern const RwPalette rw_palette_dark;
extern const RwPalette rw_palette_print; /* the light one on white */
extern const RwPalette rw_palette_contrast; /* high contrast, dark on light */
extern const RwPalette rw_palette_contrast_dark;

/* How a pen draws, for painters of every kind. */
typedef struct
{
  double   width;   /* paper mm */
  gboolean is_pale; /* in the palette's pale ink */
  double   opacity;
  double   dash[6]; /* paper mm: line, gap, line ... */
  int      dashes;  /* how many of them; 0: continuous */
} RwPenStyle;

const RwPenStyle *rw_pen_style (RwPen pen); /* any but RW_PEN_NONE */

/* rw_paint: paints layout with cr's unit being one millimetre of paper, y down, the sheet's origin at the
 * current origin.
 *
 * min_line: the size of a pixel in paper mm on screens: lines are then whole pixels wide, narrow ones at
 * least one and wide ones at least two, and those along the axes lie on whole pixels.  0 on paper.
 *
 * Lettering is set in the family "Sans" so that its capitals have the size that the layout gives.  The paper
 * itself is not painted. */
void rw_paint (cairo_t *cr, const RwLayout *layout, const RwPalette *palette, double min_line);

/* The same with a ghost, or NULL: a sheet at the layout's scale whose shapes are painted over the layout's and under
 * its dimensions, for what was before. */
void rw_paint_with_ghost (cairo_t         *cr,
                          const RwLayout  *layout,
                          const RwSheet   *ghost,
                          const RwPalette *palette,
                          double           min_line);

/* Dimensions, leaders and lettering alone: rw_paint() paints them over the shapes. */
void rw_paint_dimensions (cairo_t *cr, const RwLayout *layout, const RwPalette *palette, double min_line);

/* One item alone, all in one ink and without fills: a selection over a drawing painted before. */
void rw_paint_item (cairo_t *cr, const RwLayout *layout, int item, const RwColour *ink, double min_line);
