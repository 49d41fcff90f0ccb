/* Lettering on a cairo context: set in "Sans", sized by its capitals, with figures of even width. */
#pragma once

#include "paint_cairo.h"

typedef struct _RwLetterer RwLetterer;

/* For one context, whose unit is a millimetre of paper, y down. */
RwLetterer *rw_letterer_new  (cairo_t *cr);
void        rw_letterer_free (RwLetterer *letterer);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwLetterer, rw_letterer_free)

/* Shows a placed text in the source colour of the context: worked-out figures slanted, measured ones
 * underlined.  It never comes out wider than the layout says. */
void rw_letterer_show (RwLetterer *letterer, const RwPlacedText *text);
