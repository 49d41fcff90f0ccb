#include "help_picture.h"

#include "base/canvas_view.h"
#include "base/theme.h"
#include "draw/detail.h"
#include "io/paint_cairo.h"

#define HEIGHT 132     /* px */
#define ROOM 1.45      /* of the picture over what it shows */
#define LEAST_MM 36.0  /* of the thing drawn: some of its surroundings are always seen */
#define LETTERS_MM 2.2 /* of paper: small, as there is one figure alone */

struct _RwHelpPicture
{
  GtkWidget parent;

  RwDocument *document;
  RwDetail   *detail; /* NULL: nothing to show */
  RwLayout   *layout; /* for the width below; NULL: to be laid out */
  int         width;
};

G_DEFINE_FINAL_TYPE (RwHelpPicture, rw_help_picture, GTK_TYPE_WIDGET)

/* ---- where to look ---- */

/* Paper mm per mm of the thing, so that all of the box is in the picture with something round it. */
static double
scale_for (const RwBox *box, int width)
{
  double wide = MAX ((box->x1 - box->x0) * ROOM, LEAST_MM), high = MAX ((box->y1 - box->y0) * ROOM, LEAST_MM * 0.5);

  return MIN (width / wide, HEIGHT / high) / RW_PX_PER_PAPER_MM;
}

/* The middle of what is marked, its dimension lines and figure included, paper mm. */
static RwPoint
middle_of (const RwLayout *layout, const RwDetail *detail)
{
  const RwBox *box = &detail->box;
  double k = layout->scale;
  RwBox all = { box->x0 * k, box->y0 * k, box->x1 * k, box->y1 * k };

  /* All lettering left on the sheet is the subject's. */
  for (guint i = 0; i < layout->texts->len; i++)
    {
      const RwBox *text = &g_array_index (layout->texts, RwPlacedText, i).box;

      all = (RwBox){ MIN (all.x0, text->x0), MIN (all.y0, text->y0), MAX (all.x1, text->x1), MAX (all.y1, text->y1) };
    }
  return (RwPoint){ (all.x0 + all.x1) / 2, (all.y0 + all.y1) / 2 };
}

/* ---- painting ---- */

static void
paint (RwHelpPicture *self, cairo_t *cr, const RwPalette *palette)
{
  double pixel = 1 / (RW_PX_PER_PAPER_MM * gtk_widget_get_scale_factor (GTK_WIDGET (self)));
  RwPoint middle = middle_of (self->layout, self->detail);

  cairo_set_source_rgb (cr, palette->paper.r, palette->paper.g, palette->paper.b);
  cairo_paint (cr);
  cairo_translate (cr, self->width / 2.0, HEIGHT / 2.0);
  cairo_scale (cr, RW_PX_PER_PAPER_MM, RW_PX_PER_PAPER_MM);
  cairo_translate (cr, -middle.x, middle.y);
  rw_paint (cr, self->layout, palette, pixel);
  for (guint i = 0; i < self->detail->items->len; i++)
    rw_paint_item (cr, self->layout, g_array_index (self->detail->items, int, i), &palette->accent, pixel);
}

static void
rw_help_picture_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  RwHelpPicture *self = RW_HELP_PICTURE (widget);
  const RwPalette *palette = rw_theme_palette (widget);
  int width = gtk_widget_get_width (widget);
  graphene_rect_t bounds = GRAPHENE_RECT_INIT (0, 0, (float) width, HEIGHT);
  cairo_t *cr;

  if (self->detail == NULL || width <= 0)
    return;
  if (self->layout == NULL || width != self->width)
    {
      g_clear_pointer (&self->layout, rw_layout_free);
      self->width = width;
      self->layout = rw_layout_new (self->detail->sheet, scale_for (&self->detail->box, width),
                                    LETTERS_MM * rw_theme_text_scale (widget));
    }
  gtk_snapshot_push_clip (snapshot, &bounds);
  cr = gtk_snapshot_append_cairo (snapshot, &bounds);
  paint (self, cr, palette);
  cairo_destroy (cr);
  gtk_snapshot_pop (snapshot);
}

static void
rw_help_picture_measure (GtkWidget      *widget,
                         GtkOrientation  orientation,
                         int             for_size,
                         int            *minimum,
                         int            *natural,
                         int            *minimum_baseline,
                         int            *natural_baseline)
{
  *minimum = *natural = orientation == GTK_ORIENTATION_VERTICAL ? HEIGHT : 120;
}

/* ---- making and unmaking ---- */

static void
rw_help_picture_finalize (GObject *object)
{
  RwHelpPicture *self = RW_HELP_PICTURE (object);

  rw_layout_free (self->layout);
  rw_detail_free (self->detail);
  G_OBJECT_CLASS (rw_help_picture_parent_class)->finalize (object);
}

static void
rw_help_picture_class_init (RwHelpPictureClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = rw_help_picture_finalize;
  GTK_WIDGET_CLASS (klass)->snapshot = rw_help_picture_snapshot;
  GTK_WIDGET_CLASS (klass)->measure = rw_help_picture_measure;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
rw_help_picture_init (RwHelpPicture *self)
{
  gtk_widget_hide (GTK_WIDGET (self));
}

GtkWidget *
rw_help_picture_new (RwDocument *document)
{
  RwHelpPicture *self = g_object_new (RW_TYPE_HELP_PICTURE, NULL);

  self->document = document;
  return GTK_WIDGET (self);
}

void
rw_help_picture_show (RwHelpPicture *self, RwSubject subject)
{
  g_clear_pointer (&self->layout, rw_layout_free);
  g_clear_pointer (&self->detail, rw_detail_free);
  if (subject.param >= 0 || subject.slot >= 0)
    self->detail = rw_detail_new (subject, rw_document_now (self->document), rw_document_style (self->document));
  gtk_widget_set_visible (GTK_WIDGET (self), self->detail != NULL);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
