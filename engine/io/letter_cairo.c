#include "letter_cairo.h"

#include <pango/pangocairo.h>

/* All text is set in one large size and scaled down: the same shapes at every size, and one font to load. */
#define EM 100.0
#define UNDERLINE_DEPTH 0.22 /* of the lettering size, under the base line */
#define UNDERLINE_WIDTH 0.09

struct _RwLetterer
{
  cairo_t              *cr;
  PangoLayout          *layout;
  PangoFontDescription *upright, *slanted;
  double                capitals; /* their height at EM */
};

static PangoFontDescription *
describe (PangoStyle style)
{
  PangoFontDescription *font = pango_font_description_from_string ("Sans");

  pango_font_description_set_absolute_size (font, EM * PANGO_SCALE);
  pango_font_description_set_style (font, style);
  return font;
}

RwLetterer *
rw_letterer_new (cairo_t *cr)
{
  RwLetterer *letterer = g_new0 (RwLetterer, 1);
  cairo_font_options_t *options = cairo_font_options_create ();
  PangoAttrList *attributes = pango_attr_list_new ();
  PangoRectangle ink;

  letterer->cr = cr;
  letterer->layout = pango_cairo_create_layout (cr);
  letterer->upright = describe (PANGO_STYLE_NORMAL);
  letterer->slanted = describe (PANGO_STYLE_OBLIQUE);

  /* True shapes, not ones bent to the pixels: print and screen alike. */
  cairo_font_options_set_hint_style (options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics (options, CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options (pango_layout_get_context (letterer->layout), options);
  pango_context_set_round_glyph_positions (pango_layout_get_context (letterer->layout), FALSE);
  cairo_font_options_destroy (options);

  pango_attr_list_insert (attributes, pango_attr_font_features_new ("tnum=1"));
  pango_layout_set_attributes (letterer->layout, attributes);
  pango_attr_list_unref (attributes);

  pango_layout_set_font_description (letterer->layout, letterer->upright);
  pango_layout_set_text (letterer->layout, "H", -1);
  pango_layout_get_extents (letterer->layout, &ink, NULL);
  letterer->capitals = (double) ink.height / PANGO_SCALE;
  return letterer;
}

void
rw_letterer_free (RwLetterer *letterer)
{
  g_object_unref (letterer->layout);
  pango_font_description_free (letterer->upright);
  pango_font_description_free (letterer->slanted);
  g_free (letterer);
}

static void
underline (const RwLetterer *letterer, const RwPlacedText *text)
{
  cairo_rectangle (letterer->cr, 0, UNDERLINE_DEPTH * text->size, text->width, UNDERLINE_WIDTH * text->size);
  cairo_fill (letterer->cr);
}

void
rw_letterer_show (RwLetterer *letterer, const RwPlacedText *text)
{
  gboolean slanted = text->figure == RW_FIGURE_WORKED_OUT;
  double scale = text->size / letterer->capitals, narrowed = scale;
  PangoRectangle logical;
  cairo_t *cr = letterer->cr;

  pango_layout_set_font_description (letterer->layout, slanted ? letterer->slanted : letterer->upright);
  pango_layout_set_text (letterer->layout, text->text, -1);
  pango_layout_get_extents (letterer->layout, NULL, &logical);
  if (logical.width * scale > text->width * PANGO_SCALE)
    narrowed = text->width * PANGO_SCALE / logical.width;

  cairo_save (cr);
  cairo_translate (cr, text->at.x, -text->at.y);
  cairo_rotate (cr, -text->turn);
  if (text->figure == RW_FIGURE_MEASURED)
    underline (letterer, text);
  cairo_scale (cr, narrowed, scale);
  cairo_move_to (cr, 0, 0);
  pango_cairo_show_layout_line (cr, pango_layout_get_line_readonly (letterer->layout, 0));
  cairo_restore (cr);
}
