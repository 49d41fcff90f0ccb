#include "canvas_private.h"

#include <math.h>

#include "frame_trace.h"
#include "grip_words.h"

/* Pixels. */
#define RING 5.5        /* radius of a grip */
#define NEAR 90.0       /* grips show when the pointer is as near as that */
#define GAP 12.0        /* between grip and bubble */
#define PAD_X 8.0       /* inside the bubble */
#define PAD_Y 5.0

static void
set_colour (cairo_t *cr, RwColour colour, double alpha)
{
  cairo_set_source_rgba (cr, colour.r, colour.g, colour.b, alpha);
}

static GdkRGBA
rgba (RwColour colour, double alpha)
{
  return (GdkRGBA){ (float) colour.r, (float) colour.g, (float) colour.b, (float) alpha };
}

/* ---- what is selected, and what the pointer is at ---- */

/* A tint under the lettering of an item. */
static void
underlay_texts (RwCanvas *self, cairo_t *cr, int item)
{
  const RwLayout *layout = rw_canvas_layout (self);
  double k = RW_PX_PER_PAPER_MM;

  for (guint i = 0; i < layout->texts->len; i++)
    {
      const RwPlacedText *text = &g_array_index (layout->texts, RwPlacedText, i);

      if (text->item == item)
        cairo_rectangle (cr, text->box.x0 * k - 3, -text->box.y1 * k - 2,
                         (text->box.x1 - text->box.x0) * k + 6, (text->box.y1 - text->box.y0) * k + 4);
    }
  cairo_fill (cr);
}

static void
mark_item (RwCanvas *self, cairo_t *cr, const RwPalette *palette, int item)
{
  double k = RW_PX_PER_PAPER_MM, pixel = 1.0 / (k * gtk_widget_get_scale_factor (GTK_WIDGET (self)));

  set_colour (cr, palette->accent, 0.16);
  underlay_texts (self, cr, item);
  cairo_save (cr);
  cairo_scale (cr, k, k);
  rw_paint_item (cr, rw_canvas_layout (self), item, &palette->accent, pixel);
  cairo_restore (cr);
}

static gboolean
anything_selected (RwCanvas *self, RwSubject subject)
{
  const GArray *items = rw_canvas_sheet (self)->items;

  for (guint i = 0; i < items->len; i++)
    if (rw_subject_same (g_array_index (items, RwItem, i).subject, subject))
      return TRUE;
  return FALSE;
}

static GskRenderNode *
paint_marks (RwCanvas *self, const RwPalette *palette, RwSubject selected)
{
  const RwLayout *layout = rw_canvas_layout (self);
  double k = RW_PX_PER_PAPER_MM;
  RwBox box = layout->extent;
  GskRenderNode *node = gsk_cairo_node_new (&GRAPHENE_RECT_INIT (floor (box.x0 * k) - 4, floor (-box.y1 * k) - 4,
                                                                 ceil ((box.x1 - box.x0) * k) + 9,
                                                                 ceil ((box.y1 - box.y0) * k) + 9));
  cairo_t *cr = gsk_cairo_node_get_draw_context (node);

  for (guint i = 0; i < layout->sheet->items->len; i++)
    if (rw_subject_same (g_array_index (layout->sheet->items, RwItem, i).subject, selected))
      mark_item (self, cr, palette, (int) i);
  cairo_destroy (cr);
  return node;
}

void
rw_canvas_append_marks (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette)
{
  RwSubject selected = rw_document_selection (self->document);

  if ((selected.param < 0 && selected.slot < 0) || self->drag != NULL || !anything_selected (self, selected))
    return;
  if (self->marks == NULL)
    self->marks = paint_marks (self, palette, selected);
  gtk_snapshot_save (snapshot);
  gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (self->place.x, self->place.y));
  gtk_snapshot_append_node (snapshot, self->marks);
  gtk_snapshot_restore (snapshot);
}

/* ---- grips ---- */

gboolean
rw_canvas_grip_at (RwCanvas *self, const RwGrip *grip, RwPoint *screen)
{
  RwPoint place;

  if (!rw_grip_place (grip, self->view, rw_document_now (self->document), &place))
    return FALSE;
  *screen = rw_canvas_view_to_screen (&self->place, place);
  return TRUE;
}

/* Fully there at the pointer, gone at NEAR; all of them faintly while keys walk them. */
static double
presence (RwCanvas *self, const RwGrip *grip, RwPoint at)
{
  double distance;

  if (grip == self->grip)
    return 1;
  if (self->drag != NULL)
    return 0;
  if (rw_document_selection (self->document).param == (int) grip->param)
    return 1;
  if (self->grip_keyed)
    return 0.6;
  if (!self->over)
    return 0;
  distance = hypot (at.x - self->pointer.x, at.y - self->pointer.y);
  return CLAMP (2 - 2 * distance / NEAR, 0, 1);
}

static void
append_grip (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette, const RwGrip *grip, RwPoint at,
             double alpha)
{
  gboolean held = grip == self->grip;
  double radius = held ? RING + 1.5 : RING, reach = ceil (radius + 2);
  RwGripScene scene = rw_canvas_scene (self);
  gboolean fact = rw_grip_is_fact (grip, &scene);
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (floor (at.x) - reach,
                                                                         floor (at.y) - reach,
                                                                         2 * reach + 1, 2 * reach + 1));

  cairo_arc (cr, at.x, at.y, radius, 0, 2 * G_PI);
  set_colour (cr, palette->paper, alpha);
  cairo_fill_preserve (cr);
  set_colour (cr, fact ? palette->pale : palette->accent, alpha);
  cairo_set_line_width (cr, 2);
  cairo_stroke (cr);
  if (held && !fact)
    {
      cairo_arc (cr, at.x, at.y, 2.5, 0, 2 * G_PI);
      cairo_fill (cr);
    }
  cairo_destroy (cr);
}

/* Where grips and figures stand, for whoever drives the window. */
static void
trace_places (RwCanvas *self)
{
  const RwLayout *layout = rw_canvas_layout (self);
  double k = RW_PX_PER_PAPER_MM;
  RwPoint at;

  for (guint i = 0; i < layout->texts->len; i++)
    {
      const RwPlacedText *text = &g_array_index (layout->texts, RwPlacedText, i);

      rw_frame_trace_say ("figure,%s,%s,%.2f,%.2f\n", rw_view_id (self->view), text->text,
                          self->place.x + (text->box.x0 + text->box.x1) / 2 * k,
                          self->place.y - (text->box.y0 + text->box.y1) / 2 * k);
    }

  for (int i = 0; i < rw_grips_count; i++)
    if (rw_canvas_grip_at (self, &rw_grips[i], &at))
      rw_frame_trace_say ("grip,%s,%s,%.2f,%.2f\n", rw_view_id (self->view), rw_grips[i].id, at.x, at.y);
}

void
rw_canvas_append_grips (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette)
{
  RwPoint at;

  if (rw_frame_trace_is_on () && self->drag == NULL)
    trace_places (self);
  for (int i = 0; i < rw_grips_count; i++)
    {
      double alpha;

      if (&rw_grips[i] == self->grip || !rw_canvas_grip_at (self, &rw_grips[i], &at))
        continue;
      alpha = presence (self, &rw_grips[i], at);
      if (alpha > 0)
        append_grip (self, snapshot, palette, &rw_grips[i], at, alpha);
    }
  if (self->grip != NULL && rw_canvas_grip_at (self, self->grip, &at))
    append_grip (self, snapshot, palette, self->grip, at, 1);
}

/* ---- the bubble ---- */

static PangoLayout *
bubble_line (RwCanvas *self, const char *text, gboolean strong)
{
  PangoLayout *layout = gtk_widget_create_pango_layout (GTK_WIDGET (self), text);
  PangoAttrList *attributes = pango_attr_list_new ();

  pango_attr_list_insert (attributes, pango_attr_font_features_new ("tnum=1"));
  pango_attr_list_insert (attributes, strong ? pango_attr_weight_new (PANGO_WEIGHT_BOLD)
                                             : pango_attr_scale_new (0.9));
  pango_layout_set_attributes (layout, attributes);
  pango_attr_list_unref (attributes);
  return layout;
}

/* The value with its change; then what is dragged in its place, or what it is called while only looked at. */
static char *
value_words (RwCanvas *self, const RwResult *before)
{
  const RwResult *now = rw_document_now (self->document);
  RwStyle style = rw_document_style (self->document);
  g_autofree char *value = rw_grip_value (self->grip, now, style);
  g_autofree char *change = before != NULL ? rw_grip_change (self->grip, before, now, style) : NULL;

  return change != NULL ? g_strconcat (value, "  ", change, NULL) : g_steal_pointer (&value);
}

static char *
name_words (RwCanvas *self)
{
  g_autofree char *name = rw_grip_name (self->grip);
  g_autofree char *by = rw_grip_by (self->grip, rw_document_now (self->document),
                                    rw_document_style (self->document));

  return by != NULL ? g_strdup_printf ("%s \342\206\220 %s", name, by) : g_steal_pointer (&name);
}

/* Right of the grip and above it; on the other side where there is no room. */
static graphene_rect_t
bubble_place (RwCanvas *self, RwPoint at, double width, double height)
{
  double room = gtk_widget_get_width (GTK_WIDGET (self));
  double x = at.x + GAP, y = at.y - GAP - height;

  if (x + width > room)
    x = at.x - GAP - width;
  if (y < 0)
    y = at.y + GAP;
  return GRAPHENE_RECT_INIT (round (CLAMP (x, 0, MAX (room - width, 0))), round (y), ceil (width),
                             ceil (height));
}

static void
append_line (GtkSnapshot *snapshot, PangoLayout *line, RwColour colour, double x, double y)
{
  GdkRGBA ink = rgba (colour, 1);

  gtk_snapshot_save (snapshot);
  gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (x, y));
  gtk_snapshot_append_layout (snapshot, line, &ink);
  gtk_snapshot_restore (snapshot);
}

static void
append_box (GtkSnapshot *snapshot, const RwPalette *palette, graphene_rect_t box)
{
  GdkRGBA paper = rgba (palette->paper, 1), line = rgba (palette->accent, 0.5);
  GskRoundedRect frame;

  gsk_rounded_rect_init_from_rect (&frame, &box, 3);
  gtk_snapshot_push_rounded_clip (snapshot, &frame);
  gtk_snapshot_append_color (snapshot, &paper, &box);
  gtk_snapshot_pop (snapshot);
  gtk_snapshot_append_border (snapshot, &frame, (float[4]){ 1, 1, 1, 1 },
                              (GdkRGBA[4]){ line, line, line, line });
}

void
rw_canvas_append_bubble (RwCanvas *self, GtkSnapshot *snapshot, const RwPalette *palette)
{
  const RwResult *before = self->drag != NULL ? self->drag->scene.result : self->grip_start;
  g_autofree char *words = NULL, *name = NULL;
  g_autoptr (PangoLayout) value_line = NULL, name_line = NULL;
  int value_width, value_height, name_width, name_height;
  graphene_rect_t box;
  RwPoint at;

  if (self->grip == NULL || !rw_canvas_grip_at (self, self->grip, &at))
    return;
  words = value_words (self, before);
  name = name_words (self);
  value_line = bubble_line (self, words, TRUE);
  name_line = bubble_line (self, name, FALSE);
  pango_layout_get_pixel_size (value_line, &value_width, &value_height);
  pango_layout_get_pixel_size (name_line, &name_width, &name_height);
  self->bubble_width = MAX (self->bubble_width, MAX (value_width, name_width) + 2 * PAD_X);

  box = bubble_place (self, at, self->bubble_width, value_height + name_height + 2 * PAD_Y);
  append_box (snapshot, palette, box);
  append_line (snapshot, name_line, palette->pale, box.origin.x + PAD_X, box.origin.y + PAD_Y);
  append_line (snapshot, value_line, palette->accent, box.origin.x + PAD_X,
               box.origin.y + PAD_Y + name_height);
}
