/* A page as SVG 1.1, in millimetres, for cutters and other programs.
 *
 * Width and height are in mm and the viewBox is in the same mm, so that one unit is one millimetre.  What
 * belongs to a layer of the drawing stands in one group with the layer's id and title; where a layer lies
 * partly under and partly over another one, masks keep the picture true.  Items carry their names as titles.
 * Text is text.  Numbers have a point and up to four decimals.
 */
#pragma once

#include "page.h"

/* A new string.  The paper itself is not painted. */
char *rw_svg_write (const RwPage *page, const RwPalette *palette);
