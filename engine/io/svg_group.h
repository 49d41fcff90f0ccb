/* Sorts what stands on a page into one group for each layer, without changing what covers what.
 *
 * Groups stand in the order that agrees best with the order of painting.  Where a layer lies partly under and
 * partly over another one, what has come to be painted too late, over something that it belongs under, is
 * masked by that.
 */
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
  int       mask;   /* of the picture's; -1: none.  Paths alone have one */
} RwSvgElement;

typedef struct
{
  RwLayer layer;
  GArray *elements; /* of RwSvgElement, in order of painting */
} RwSvgGroup;

typedef struct
{
  GPtrArray *groups; /* of RwSvgGroup, in order of painting: one for each layer that has anything */
  GPtrArray *masks;  /* of GArray of RwSvgElement: what covers those that have this mask */
} RwSvgPicture;

RwSvgPicture *rw_svg_picture_new  (const RwPage *page);
void          rw_svg_picture_free (RwSvgPicture *picture);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwSvgPicture, rw_svg_picture_free)
