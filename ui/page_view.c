#include "page_view.h"

#define AIR 18 /* px round the page */
#define LEAST 240

struct _RwPageView
{
  GtkWidget parent;

  const RwPaperSet  *set;
  const RwPaperPage *page;
  GskRenderNode     *node; /* the page, painted for the present size; NULL: to be painted */
};

G_DEFINE_FINAL_TYPE (RwPageView, rw_page_view, GTK_TYPE_WIDGET)

/* Where the page lies: as large as it goes, its corner on a whole pixel. */
static graphene_rect_t
place_of_page (RwPageView *self)
{
  double width = gtk_widget_get_width (GTK_WIDGET (self)), height = gtk_widget_get_height (GTK_WIDGET (self));
  double scale = MIN ((width - 2 * AIR) / self->page->width, (height - 2 * AIR) / self->page->height);
  double w = MAX (scale, 0.1) * self->page->width, h = MAX (scale, 0.1) * self->page->height;

  return GRAPHENE_RECT_INIT ((float) (int) ((width - w) / 2), (float) (int) ((height - h) / 2), (float) w,
                             (float) h);
}

static void
paint_page (RwPageView *self, const graphene_rect_t *place)
{
  double scale = (double) place->size.width / self->page->width;
  cairo_t *cr;

  self->node = gsk_cairo_node_new (place);
  cr = gsk_cairo_node_get_draw_context (self->node);
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  cairo_translate (cr, (double) place->origin.x, (double) place->origin.y);
  cairo_scale (cr, scale, scale);
  rw_paper_set_paint (self->set, self->page, cr);
  cairo_destroy (cr);
}

/* Paper is white in any look; a thin shadow tells it from what it lies on. */
static void
append_shadow (GtkSnapshot *snapshot, const graphene_rect_t *place)
{
  GskRoundedRect outline;
  const GdkRGBA colour = { 0, 0, 0, 0.4f };

  gsk_rounded_rect_init_from_rect (&outline, place, 0);
  gtk_snapshot_append_outset_shadow (snapshot, &outline, &colour, 0, 1, 1, 5);
}

static void
rw_page_view_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  RwPageView *self = RW_PAGE_VIEW (widget);
  graphene_rect_t place;

  if (self->page == NULL)
    return;
  place = place_of_page (self);
  if (self->node == NULL)
    paint_page (self, &place);
  append_shadow (snapshot, &place);
  gtk_snapshot_append_node (snapshot, self->node);
}

static void
rw_page_view_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  g_clear_pointer (&RW_PAGE_VIEW (widget)->node, gsk_render_node_unref);
}

static void
rw_page_view_measure (GtkWidget     *widget,
                      GtkOrientation orientation,
                      int            for_size,
                      int           *minimum,
                      int           *natural,
                      int           *minimum_baseline,
                      int           *natural_baseline)
{
  *minimum = LEAST;
  *natural = 2 * LEAST;
}

static void
rw_page_view_dispose (GObject *object)
{
  g_clear_pointer (&RW_PAGE_VIEW (object)->node, gsk_render_node_unref);
  G_OBJECT_CLASS (rw_page_view_parent_class)->dispose (object);
}

static void
rw_page_view_class_init (RwPageViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = rw_page_view_dispose;
  widget_class->snapshot = rw_page_view_snapshot;
  widget_class->size_allocate = rw_page_view_size_allocate;
  widget_class->measure = rw_page_view_measure;
  gtk_widget_class_set_css_name (widget_class, "pageview");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
rw_page_view_init (RwPageView *self)
{
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
}

GtkWidget *
rw_page_view_new (void)
{
  return g_object_new (RW_TYPE_PAGE_VIEW, NULL);
}

void
rw_page_view_show (RwPageView *self, const RwPaperSet *set, const RwPaperPage *page)
{
  self->set = set;
  self->page = page;
  g_clear_pointer (&self->node, gsk_render_node_unref);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
