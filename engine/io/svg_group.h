/* Sorts what stands on a page into groups by layer, without changing what covers what. */
#pragma once

#include "page.h"

typedef enum
{
  RW_SVG_PATH,
  RW_SVG_MARK,
  RW_SVG_TEXT,
} RwSvgKind;

typedef struct
{
  RwSvgKind kind;
  int       part;   /* of the page */
  int       index;  /* of the sheet's items, or of the layout's marks or texts */
  RwBox     box;    /* page mm with y up; a little too large does no harm */
  gboolean  covers; /* has a fill */
} RwSvgElement;

typedef struct
{
  RwLayer layer;
  int     number, of; /* counted from 1 within the layer, and how many it has */
  GArray *elements; /* of RwSvgElement, in order of painting */
} RwSvgGroup;

/* Groups in order of painting, in an array that frees them: one for each layer where that can be.  A layer
 * that lies both under and over another has as few as it takes.  Elements change places only where they don't
 * touch or neither has a fill. */
GPtrArray *rw_svg_groups (const RwPage *page);
