#include "export_svg.h"

#include "svg_group.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

/* The em of the lettering over its size; as in the table of widths (lettering.c). */
#define EM_PER_SIZE (2048.0 / 1493)

typedef struct
{
  GString         *out;
  const RwPage    *page;
  const RwPalette *palette;
  gboolean         is_mask; /* names and masks are for what is seen */
} Writer;

/* Four decimals are a tenth of a micrometre; without trailing noughts, and never "-0". */
static void
put_number (GString *out, double value)
{
  char digits[G_ASCII_DTOSTR_BUF_SIZE];
  char *end;

  g_ascii_formatd (digits, sizeof digits, "%.4f", value);
  end = digits + strlen (digits);
  while (end[-1] == '0')
    *--end = '\0';
  if (end[-1] == '.')
    *--end = '\0';
  g_string_append (out, g_str_equal (digits, "-0") ? "0" : digits);
}

static void
put_attribute (GString *out, const char *name, double value)
{
  g_string_append_printf (out, " %s=\"", name);
  put_number (out, value);
  g_string_append_c (out, '"');
}

static void
put_colour (GString *out, const char *name, const RwColour *colour)
{
  g_string_append_printf (out, " %s=\"#%02x%02x%02x\"", name, (int) round (colour->r * 255),
                          (int) round (colour->g * 255), (int) round (colour->b * 255));
}

static void
put_escaped (GString *out, const char *text)
{
  g_autofree char *escaped = g_markup_escape_text (text, -1);

  g_string_append (out, escaped);
}

/* Paths: paper mm with y up become page mm with y down. */

static void
put_point (GString *out, const RwPagePart *part, RwPoint p)
{
  put_number (out, part->origin.x + p.x);
  g_string_append_c (out, ' ');
  put_number (out, part->origin.y - p.y);
}

static void
put_verb (GString *out, char verb, const RwPagePart *part, RwPoint p)
{
  g_string_append_c (out, verb);
  put_point (out, part, p);
}

static RwPoint
on_circle (RwPoint centre, double radius, double angle)
{
  return (RwPoint){ centre.x + radius * cos (angle), centre.y + radius * sin (angle) };
}

/* In pieces of a third of a turn at most: an arc command tells nothing of whole turns. */
static void
put_arc (GString *out, const RwPagePart *part, RwPoint centre, double radius, double a0, double a1)
{
  int pieces = MAX (1, (int) ceil (fabs (a1 - a0) / (2 * G_PI / 3) - 1e-9));

  for (int i = 1; i <= pieces; i++)
    {
      g_string_append_c (out, 'A');
      put_number (out, radius);
      g_string_append_c (out, ' ');
      put_number (out, radius);
      g_string_append (out, a1 >= a0 ? " 0 0 0 " : " 0 0 1 ");
      put_point (out, part, on_circle (centre, radius, a0 + (a1 - a0) * i / pieces));
    }
}

static void
put_path_data (GString *out, const RwPagePart *part, const RwItem *item)
{
  double scale = part->layout->scale;
  gboolean drawing = FALSE;

  for (int i = 0; i < item->op_count; i++)
    {
      const RwPathOp *op = &g_array_index (part->layout->sheet->ops, RwPathOp, item->op_first + i);
      RwPoint p[3], start;

      for (int k = 0; k < 3; k++)
        p[k] = (RwPoint){ op->p[k].x * scale, op->p[k].y * scale };
      switch (op->verb)
        {
        case RW_VERB_MOVE:
        case RW_VERB_LINE:
          put_verb (out, op->verb == RW_VERB_MOVE || !drawing ? 'M' : 'L', part, p[0]);
          break;
        case RW_VERB_CURVE:
          put_verb (out, 'C', part, p[0]);
          put_verb (out, ' ', part, p[1]);
          put_verb (out, ' ', part, p[2]);
          break;
        case RW_VERB_ARC:
          start = on_circle (p[0], op->radius * scale, op->a0);
          put_verb (out, drawing ? 'L' : 'M', part, start);
          put_arc (out, part, p[0], op->radius * scale, op->a0, op->a1);
          break;
        case RW_VERB_CLOSE:
          g_string_append_c (out, 'Z');
          break;
        }
      drawing = TRUE;
    }
}

static void
put_stroke (const Writer *writer, RwPen pen)
{
  if (pen == RW_PEN_NONE)
    return;

  const RwPenStyle *style = rw_pen_style (pen);

  put_colour (writer->out, "stroke", style->is_pale ? &writer->palette->pale : &writer->palette->ink);
  put_attribute (writer->out, "stroke-width", style->width);
  if (style->opacity < 1)
    put_attribute (writer->out, "stroke-opacity", style->opacity);
  if (style->dashes > 0)
    {
      g_string_append (writer->out, " stroke-dasharray=\"");
      for (int i = 0; i < style->dashes; i++)
        {
          if (i > 0)
            g_string_append_c (writer->out, ' ');
          put_number (writer->out, style->dash[i]);
        }
      g_string_append_c (writer->out, '"');
    }
}

static void
put_fill (const Writer *writer, RwTint tint)
{
  if (tint == RW_TINT_NONE)
    g_string_append (writer->out, " fill=\"none\"");
  else
    put_colour (writer->out, "fill", &writer->palette->tint[tint]);
}

static void
put_path (const Writer *writer, const RwPagePart *part, const RwItem *item, int mask)
{
  g_string_append (writer->out, "<path d=\"");
  put_path_data (writer->out, part, item);
  g_string_append_c (writer->out, '"');
  put_fill (writer, item->tint);
  put_stroke (writer, item->pen);
  if (mask >= 0 && !writer->is_mask)
    g_string_append_printf (writer->out, " mask=\"url(#mask-%d)\"", mask + 1);
  if (item->name != NULL && !writer->is_mask)
    {
      g_string_append (writer->out, "><title>");
      put_escaped (writer->out, _(item->name));
      g_string_append (writer->out, "</title></path>\n");
    }
  else
    g_string_append (writer->out, "/>\n");
}

/* Dimensions and lettering */

static void
put_mark (const Writer *writer, const RwPagePart *part, const RwPlacedMark *mark)
{
  GString *out = writer->out;
  const RwPoint *p = mark->p;

  g_string_append (out, "<path d=\"");
  if (mark->kind == RW_MARK_ARC)
    {
      put_verb (out, 'M', part, on_circle (p[0], mark->radius, mark->a0));
      put_arc (out, part, p[0], mark->radius, mark->a0, mark->a1);
    }
  else
    {
      put_verb (out, 'M', part, p[0]);
      put_verb (out, 'L', part, p[1]);
    }
  if (mark->kind == RW_MARK_HEAD)
    {
      put_verb (out, 'L', part, p[2]);
      g_string_append (out, "Z\"");
      put_colour (out, "fill", &writer->palette->pale);
    }
  else
    {
      g_string_append (out, "\" fill=\"none\"");
      put_stroke (writer, RW_PEN_CONSTRUCTION);
    }
  g_string_append (out, "/>\n");
}

static void
put_text (const Writer *writer, const RwPagePart *part, const RwPlacedText *text)
{
  GString *out = writer->out;

  g_string_append (out, "<text");
  if (text->turn == 0)
    {
      put_attribute (out, "x", part->origin.x + text->at.x);
      put_attribute (out, "y", part->origin.y - text->at.y);
    }
  else
    {
      g_string_append (out, " transform=\"translate(");
      put_point (out, part, text->at);
      g_string_append (out, ") rotate(");
      put_number (out, -text->turn * 180 / G_PI);
      g_string_append (out, ")\"");
    }
  put_attribute (out, "font-size", text->size * EM_PER_SIZE);
  put_attribute (out, "textLength", text->width);
  g_string_append (out, " lengthAdjust=\"spacingAndGlyphs\"");
  if (text->figure == RW_FIGURE_WORKED_OUT)
    g_string_append (out, " font-style=\"oblique\"");
  if (text->figure == RW_FIGURE_MEASURED)
    g_string_append (out, " text-decoration=\"underline\"");
  g_string_append_c (out, '>');
  put_escaped (out, text->text);
  g_string_append (out, "</text>\n");
}

static void
put_element (const Writer *writer, const RwSvgElement *element)
{
  const RwPagePart *part = &writer->page->parts[element->part];
  const RwLayout *layout = part->layout;

  switch (element->kind)
    {
    case RW_SVG_PATH:
      put_path (writer, part, &g_array_index (layout->sheet->items, RwItem, element->index), element->mask);
      break;
    case RW_SVG_MARK:
      put_mark (writer, part, &g_array_index (layout->marks, RwPlacedMark, element->index));
      break;
    case RW_SVG_TEXT:
      put_text (writer, part, &g_array_index (layout->texts, RwPlacedText, element->index));
      break;
    }
}

static void
put_elements (const Writer *writer, const GArray *elements)
{
  for (guint i = 0; i < elements->len; i++)
    put_element (writer, &g_array_index (elements, RwSvgElement, i));
}

static void
put_group (const Writer *writer, const RwSvgGroup *group)
{
  GString *out = writer->out;

  g_string_append_printf (out, "<g id=\"%s\"", rw_layer_id (group->layer));
  put_colour (out, "fill", &writer->palette->ink);
  g_string_append (out, ">\n<title>");
  put_escaped (out, _(rw_layer_title (group->layer)));
  g_string_append (out, "</title>\n");
  put_elements (writer, group->elements);
  g_string_append (out, "</g>\n");
}

/* Masks: white is seen, black is not.  A black palette is one of zeros. */
static void
put_masks (const Writer *writer, const GPtrArray *masks)
{
  static const RwPalette black = { 0 };
  const Writer blackener = { writer->out, writer->page, &black, TRUE };
  GString *out = writer->out;

  if (masks->len == 0)
    return;

  g_string_append (out, "<defs>\n");
  for (guint i = 0; i < masks->len; i++)
    {
      g_string_append_printf (out, "<mask id=\"mask-%u\" maskUnits=\"userSpaceOnUse\" x=\"0\" y=\"0\"",
                              i + 1);
      put_attribute (out, "width", writer->page->width);
      put_attribute (out, "height", writer->page->height);
      g_string_append (out, ">\n<rect");
      put_attribute (out, "width", writer->page->width);
      put_attribute (out, "height", writer->page->height);
      g_string_append (out, " fill=\"#ffffff\"/>\n");
      put_elements (&blackener, g_ptr_array_index (masks, i));
      g_string_append (out, "</mask>\n");
    }
  g_string_append (out, "</defs>\n");
}

char *
rw_svg_write (const RwPage *page, const RwPalette *palette)
{
  g_autoptr (RwSvgPicture) picture = rw_svg_picture_new (page);
  GString *out = g_string_new ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                               "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" width=\"");
  Writer writer = { out, page, palette, FALSE };

  put_number (out, page->width);
  g_string_append (out, "mm\" height=\"");
  put_number (out, page->height);
  g_string_append (out, "mm\" viewBox=\"0 0 ");
  put_number (out, page->width);
  g_string_append_c (out, ' ');
  put_number (out, page->height);
  g_string_append (out, "\" font-family=\"'DejaVu Sans', sans-serif\" stroke-linejoin=\"round\">\n<title>");
  put_escaped (out, page->title);
  g_string_append (out, "</title>\n");
  put_masks (&writer, picture->masks);
  for (guint i = 0; i < picture->groups->len; i++)
    put_group (&writer, g_ptr_array_index (picture->groups, i));
  g_string_append (out, "</svg>\n");
  return g_string_free (out, FALSE);
}
