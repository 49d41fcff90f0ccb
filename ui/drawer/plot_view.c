#include "plot_view.h"

#include <glib/gi18n.h>
#include <math.h>
#include <string.h>

#include "base/access.h"
#include "base/theme.h"
#include "base/words.h"
#include "io/paint_cairo.h"
#include "sheet/layout.h"

/* Pixels. */
#define LEAST_WIDTH 360
#define LEAST_HEIGHT 110
#define MARGIN 8
#define RING 5.5f      /* radius round the number that is told */
#define LABEL_AWAY 10  /* of the label from the number */
#define LABEL_PAD 4

struct _RwPlotView
{
  GtkWidget parent;

  const RwStudy *study; /* not owned */
  RwStyle        style;
  char          *summary;

  /* The picture, kept until study, size or look are others. */
  GskRenderNode   *picture;
  int              width, height;
  double           k; /* pixels to a mm of paper */
  const RwPalette *palette;
  GArray          *spots; /* of RwStudySpot, of the picture */

  int          told;        /* the spot that is told; -1: none */
  guint        row, column; /* where it is in the table, through new studies */
  PangoLayout *label;
};

G_DEFINE_FINAL_TYPE (RwPlotView, rw_plot_view, GTK_TYPE_WIDGET)

/* ---- the picture ---- */

static void
paint (RwPlotView *self, cairo_t *cr, const RwLayout *layout)
{
  const RwPalette *palette = self->palette;
  int device_scale = gtk_widget_get_scale_factor (GTK_WIDGET (self));

  cairo_set_source_rgb (cr, palette->paper.r, palette->paper.g, palette->paper.b);
  cairo_paint (cr);
  cairo_translate (cr, MARGIN, self->height - MARGIN);
  cairo_scale (cr, self->k, self->k);
  rw_paint (cr, layout, palette, 1 / (self->k * device_scale));
}

static int
find_spot (RwPlotView *self, guint column, guint row)
{
  for (guint i = 0; i < self->spots->len; i++)
    {
      const RwStudySpot *spot = &g_array_index (self->spots, RwStudySpot, i);

      if (spot->column == column && spot->row == row)
        return (int) i;
    }
  return -1;
}

static void
draw_picture (RwPlotView *self)
{
  g_autoptr (RwSheet) sheet = NULL;
  g_autoptr (RwLayout) layout = NULL;
  cairo_t *cr;

  g_clear_pointer (&self->picture, gsk_render_node_unref);
  g_array_set_size (self->spots, 0);
  sheet = rw_study_draw (self->study, (self->width - 2 * MARGIN) / self->k,
                         (self->height - 2 * MARGIN) / self->k, self->style, self->spots);
  layout = rw_layout_new (sheet, 1, 0);
  self->picture = gsk_cairo_node_new (&GRAPHENE_RECT_INIT (0, 0, self->width, self->height));
  cr = gsk_cairo_node_get_draw_context (self->picture);
  paint (self, cr, layout);
  cairo_destroy (cr);
  if (self->told >= 0)
    self->told = find_spot (self, self->column, self->row);
}

static void
keep_picture (RwPlotView *self)
{
  int width = gtk_widget_get_width (GTK_WIDGET (self)), height = gtk_widget_get_height (GTK_WIDGET (self));
  double k = rw_theme_paper_scale (GTK_WIDGET (self));
  const RwPalette *palette = rw_theme_palette (GTK_WIDGET (self));

  if (self->picture != NULL && width == self->width && height == self->height && k == self->k
      && palette == self->palette)
    return;
  self->width = width;
  self->height = height;
  self->k = k;
  self->palette = palette;
  draw_picture (self);
}

/* ---- the number that is told ---- */

static graphene_point_t
on_screen (RwPlotView *self, double x, double y)
{
  return GRAPHENE_POINT_INIT ((float) (MARGIN + x * self->k),
                              (float) (self->height - MARGIN - y * self->k));
}

/* "Fret 7 · 2 B3: 3.2 cent". */
static char *
spot_words (RwPlotView *self, const RwStudySpot *spot)
{
  const RwStudyColumn *column = rw_study_column_at (self->study, spot->column);
  const char *row_unit = self->study->row_unit;
  g_autofree char *value = rw_number_words (column->values[spot->row], column->unit, self->style);
  g_autofree char *row = NULL;
  g_autofree char *place = NULL;

  if (row_unit == NULL)
    row = rw_study_row_name (self->study, spot->row, self->style);
  else
    {
      place = rw_number_words (g_array_index (self->study->rows, RwStudyRow, spot->row).at, row_unit, self->style);
      row = g_strdup_printf (C_("place in a plot", "%s %s"), self->study->row_title, place);
    }
  return g_strdup_printf (C_("number in a plot", "%s · %s: %s"), row, column->title, value);
}

static void
describe (RwPlotView *self)
{
  g_autofree char *words = NULL;

  if (self->told >= 0)
    words = spot_words (self, &g_array_index (self->spots, RwStudySpot, self->told));
  rw_access_describe (GTK_WIDGET (self), words != NULL ? words : self->summary);
}

static void
tell (RwPlotView *self, int spot)
{
  if (spot == self->told)
    return;
  self->told = spot;
  if (spot >= 0)
    {
      self->row = g_array_index (self->spots, RwStudySpot, spot).row;
      self->column = g_array_index (self->spots, RwStudySpot, spot).column;
    }
  describe (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static GdkRGBA
rgba (const RwColour *colour)
{
  return (GdkRGBA){ (float) colour->r, (float) colour->g, (float) colour->b, 1 };
}

static void
append_border (GtkSnapshot *snapshot, const GskRoundedRect *box, const GdkRGBA *ink, float width)
{
  gtk_snapshot_append_border (snapshot, box, (float[4]){ width, width, width, width },
                              (GdkRGBA[4]){ *ink, *ink, *ink, *ink });
}

static void
append_crosshair (RwPlotView *self, GtkSnapshot *snapshot, const RwStudySpot *spot)
{
  GdkRGBA accent = rgba (&self->palette->accent);
  graphene_point_t at = on_screen (self, spot->at.x, spot->at.y);
  graphene_point_t low = on_screen (self, spot->frame.x0, spot->frame.y0);
  graphene_point_t high = on_screen (self, spot->frame.x1, spot->frame.y1);
  GskRoundedRect ring;

  gtk_snapshot_append_color (snapshot, &accent, &GRAPHENE_RECT_INIT (floorf (at.x), high.y, 1, low.y - high.y));
  gtk_snapshot_append_color (snapshot, &accent, &GRAPHENE_RECT_INIT (low.x, floorf (at.y), high.x - low.x, 1));
  gsk_rounded_rect_init_from_rect (&ring, &GRAPHENE_RECT_INIT (at.x - RING, at.y - RING, 2 * RING, 2 * RING), RING);
  append_border (snapshot, &ring, &accent, 1.5f);
}

/* Beside the number, on the side that has room, over it where it can be. */
static void
append_label (RwPlotView *self, GtkSnapshot *snapshot, const RwStudySpot *spot)
{
  graphene_point_t at = on_screen (self, spot->at.x, spot->at.y);
  GdkRGBA ink = rgba (&self->palette->ink), paper = rgba (&self->palette->paper);
  GdkRGBA accent = rgba (&self->palette->accent);
  float x, y;
  g_autofree char *words = spot_words (self, spot);
  GskRoundedRect box;
  int wide, high;

  pango_layout_set_text (self->label, words, -1);
  pango_layout_get_pixel_size (self->label, &wide, &high);
  wide += 2 * LABEL_PAD;
  high += 2 * LABEL_PAD;
  x = at.x + LABEL_AWAY + (float) wide < (float) self->width ? at.x + LABEL_AWAY : at.x - LABEL_AWAY - (float) wide;
  y = at.y - LABEL_AWAY - (float) high > 0 ? at.y - LABEL_AWAY - (float) high : at.y + LABEL_AWAY;
  x = floorf (CLAMP (x, 0, fmaxf (0, (float) (self->width - wide))));
  y = floorf (CLAMP (y, 0, fmaxf (0, (float) (self->height - high))));
  gsk_rounded_rect_init_from_rect (&box, &GRAPHENE_RECT_INIT (x, y, (float) wide, (float) high), 0);
  gtk_snapshot_append_color (snapshot, &paper, &box.bounds);
  append_border (snapshot, &box, &accent, 1);
  gtk_snapshot_save (snapshot);
  gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (x + LABEL_PAD, y + LABEL_PAD));
  gtk_snapshot_append_layout (snapshot, self->label, &ink);
  gtk_snapshot_restore (snapshot);
}

static void
append_focus (RwPlotView *self, GtkSnapshot *snapshot)
{
  GdkRGBA accent = rgba (&self->palette->accent);
  GskRoundedRect box;

  gsk_rounded_rect_init_from_rect (&box, &GRAPHENE_RECT_INIT (0, 0, (float) self->width, (float) self->height), 0);
  append_border (snapshot, &box, &accent, 2);
}

static void
rw_plot_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  RwPlotView *self = RW_PLOT_VIEW (widget);

  if (self->study == NULL)
    return;
  keep_picture (self);
  gtk_snapshot_append_node (snapshot, self->picture);
  if (self->told >= 0)
    {
      const RwStudySpot *spot = &g_array_index (self->spots, RwStudySpot, self->told);

      append_crosshair (self, snapshot, spot);
      append_label (self, snapshot, spot);
    }
  if (gtk_widget_has_visible_focus (widget))
    append_focus (self, snapshot);
}

/* ---- pointer and keys ---- */

static void
on_motion (RwPlotView *self, double x, double y)
{
  RwPoint at = { (x - MARGIN) / self->k, (self->height - MARGIN - y) / self->k };

  if (self->study == NULL)
    return;
  keep_picture (self);
  tell (self, rw_study_nearest (self->spots, at));
}

static void
on_leave (RwPlotView *self)
{
  tell (self, -1);
}

static void
on_press (RwPlotView *self)
{
  gtk_widget_grab_focus (GTK_WIDGET (self));
}

static gboolean
on_key (GtkEventControllerKey *keys, guint key, guint code, GdkModifierType state, RwPlotView *self)
{
  static const struct
  {
    guint key;
    int   dx, dy;
  } steps[] = {
    { GDK_KEY_Right, 1, 0 }, { GDK_KEY_Left, -1, 0 }, { GDK_KEY_Down, 0, 1 }, { GDK_KEY_Up, 0, -1 },
    { GDK_KEY_Page_Down, 10, 0 }, { GDK_KEY_Page_Up, -10, 0 }, { GDK_KEY_End, G_MAXINT16, 0 },
    { GDK_KEY_Home, -G_MAXINT16, 0 },
  };

  if (state & (GDK_CONTROL_MASK | GDK_ALT_MASK) || self->study == NULL)
    return FALSE;
  keep_picture (self);
  if (key == GDK_KEY_Escape && self->told >= 0)
    {
      tell (self, -1);
      return TRUE;
    }
  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    if (steps[i].key == key)
      {
        tell (self, rw_study_step (self->spots, self->told, steps[i].dx, steps[i].dy));
        return TRUE;
      }
  return FALSE;
}

static void
add_controllers (RwPlotView *self)
{
  GtkEventController *motion = gtk_event_controller_motion_new (), *keys = gtk_event_controller_key_new ();
  GtkGesture *press = gtk_gesture_click_new ();

  g_signal_connect_swapped (motion, "motion", G_CALLBACK (on_motion), self);
  g_signal_connect_swapped (motion, "leave", G_CALLBACK (on_leave), self);
  g_signal_connect (keys, "key-pressed", G_CALLBACK (on_key), self);
  g_signal_connect_swapped (press, "pressed", G_CALLBACK (on_press), self);
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
  gtk_widget_add_controller (GTK_WIDGET (self), keys);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (press));
}

/* ---- making and unmaking ---- */

static void
rw_plot_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                      int *least_baseline, int *natural_baseline)
{
  *least = *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? LEAST_WIDTH : LEAST_HEIGHT;
}

static void
rw_plot_view_finalize (GObject *object)
{
  RwPlotView *self = RW_PLOT_VIEW (object);

  g_clear_pointer (&self->picture, gsk_render_node_unref);
  g_array_unref (self->spots);
  g_object_unref (self->label);
  g_free (self->summary);
  G_OBJECT_CLASS (rw_plot_view_parent_class)->finalize (object);
}

static void
rw_plot_view_class_init (RwPlotViewClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = rw_plot_view_finalize;
  GTK_WIDGET_CLASS (klass)->snapshot = rw_plot_view_snapshot;
  GTK_WIDGET_CLASS (klass)->measure = rw_plot_view_measure;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_IMG);
}

static void
rw_plot_view_init (RwPlotView *self)
{
  self->told = -1;
  self->spots = g_array_new (FALSE, FALSE, sizeof (RwStudySpot));
  self->label = gtk_widget_create_pango_layout (GTK_WIDGET (self), NULL);
  gtk_widget_set_hexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_vexpand (GTK_WIDGET (self), TRUE);
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  add_controllers (self);
}

GtkWidget *
rw_plot_view_new (void)
{
  return g_object_new (RW_TYPE_PLOT_VIEW, NULL);
}

void
rw_plot_view_show (RwPlotView *self, const RwStudy *study, RwStyle style, const char *summary)
{
  gboolean same = self->study != NULL && study != NULL && strcmp (self->study->id, study->id) == 0;

  g_free (self->summary);
  self->summary = g_strdup (summary);
  self->study = study;
  self->style = style;
  g_clear_pointer (&self->picture, gsk_render_node_unref);
  if (!same)
    self->told = -1;
  if (self->told >= 0)
    keep_picture (self);
  describe (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
